package dev.hingepoint.pattern;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A pattern: its card and its nest, every piece in every size. Immutable and safe to share.
 */
public record Pattern(Card card, List<Piece> nest) {
    /** What the front that is drawn without a name is called, where an order or a card has to name it. */
    public static final String STANDARD_FRONT = "standard";

    /** @throws Refusal for a nest that is empty or holds one piece twice in one size */
    public Pattern {
        nest = List.copyOf(nest);
        if (nest.isEmpty()) {
            throw new Refusal(new Reason.Missing(Message.of("pattern.no-pieces"), Where.UNKNOWN));
        }
        Set<List<Object>> seen = new HashSet<>();
        for (Piece piece : nest) {
            if (!seen.add(List.of(piece.name(), piece.size(), piece.front()))) {
                throw new Refusal(new Reason.Unsound(Message.of("pattern.drawn-twice"), piece.where()));
            }
        }
    }

    /** The sizes, in the order of the body chart, then of the drawing. */
    public List<String> sizes() {
        return Stream.concat(
                        card.bodyChart().sizes().stream().filter(this::hasSize),
                        nest.stream().map(Piece::size))
                .distinct()
                .toList();
    }

    public boolean hasSize(String size) {
        return nest.stream().anyMatch(piece -> piece.size().equals(size));
    }

    /**
     * One size with the front that is drawn without a name.
     *
     * @throws Refusal where the size is not drawn
     */
    public Draft in(String size) {
        return in(size, Optional.empty());
    }

    /**
     * One size with the front of that name; empty, or {@value #STANDARD_FRONT}, for the one that is drawn without.
     *
     * @throws Refusal where size or front is not drawn
     */
    public Draft in(String size, Optional<String> front) {
        if (!hasSize(size)) {
            throw new Refusal(
                    new Reason.Missing(Message.of("pattern.no-such-size", size, sizes()), Where.UNKNOWN.size(size)));
        }
        return new Draft(this, size, front.filter(name -> !name.equals(STANDARD_FRONT)), this);
    }

    /** The same pattern with these pieces in place of those of the same name, size and front; new ones are added at the end. */
    public Pattern with(List<Piece> changed) {
        List<Piece> pieces = new ArrayList<>(nest);
        for (Piece piece : changed) {
            boolean replaced = false;
            for (int i = 0; i < pieces.size() && !replaced; i++) {
                if (pieces.get(i).isSamePieceAs(piece)) {
                    pieces.set(i, piece);
                    replaced = true;
                }
            }
            if (!replaced) {
                pieces.add(piece);
            }
        }
        return new Pattern(card, pieces);
    }

    public Pattern with(Card changed) {
        return new Pattern(changed, nest);
    }
}
