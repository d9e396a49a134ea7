package dev.hingepoint.svg.file;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Lays;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Whether a card and the drawing beside it speak of the same sizes, pieces and edges: a name misspelt would else be passed over in silence. */
final class CardCheck {
    /** What an allowance may be for besides an edge. */
    private static final Set<String> GENERAL = Set.of("default", "hem");

    private final String file;
    private final Card card;

    /** Those that what the card says of every size holds for; an altered size that is put together in its own way has that from us. */
    private final List<Piece> pieces;

    private CardCheck(Pattern pattern, String file) {
        this.file = file;
        this.card = pattern.card();
        boolean hasOwn = card.altered().flatMap(Card.Altered::construction).isPresent();
        this.pieces = pattern.nest().stream()
                .filter(piece -> !(hasOwn && isAltered(piece)))
                .toList();
    }

    /** @throws Refusal in the card's name, saying what is there */
    static void check(Pattern pattern, String file) {
        new CardCheck(pattern, file).check(pattern);
    }

    private void check(Pattern pattern) {
        List<String> names = pattern.nest().stream().map(Piece::name).distinct().toList();
        card.lays().byPiece().keySet().stream()
                .filter(name -> !name.equals(Lays.DEFAULT) && !names.contains(name))
                .findFirst()
                .ifPresent(name -> {
                    throw missing("lay", Message.of("file.card.no-such-piece", name), names);
                });
        if (!card.baseSize().isEmpty() && !pattern.hasSize(card.baseSize())) {
            throw missing("base size", Message.of("file.card.no-such-size", card.baseSize()), pattern.sizes());
        }
        if (pieces.isEmpty()) {
            return;
        }
        card.seams().forEach(this::seam);
        card.allowances().byName().keySet().stream()
                .filter(name -> !GENERAL.contains(name))
                .forEach(this::allowance);
        card.openings().forEach(this::opening);
    }

    private boolean isAltered(Piece piece) {
        return card.altered()
                .filter(altered -> altered.size().equals(piece.size()))
                .isPresent();
    }

    private void seam(Seam seam) {
        Set<EdgeRef> seen = new HashSet<>();
        Stream.concat(seam.join().stream(), seam.to().stream()).forEach(edge -> {
            edges("seams", edge);
            if (!seen.add(edge)) {
                throw refusal("seams", Message.of("file.card.joined-to-itself", edge));
            }
        });
    }

    private void allowance(String name) {
        if (name.contains("/")) {
            edges("allowances", EdgeRef.parse(name));
        } else if (pieces.stream().noneMatch(piece -> piece.hasEdge(name))) {
            throw missing("allowances", noEdge(name), edgeNames(pieces));
        }
    }

    private void opening(Opening opening) {
        for (Piece piece : edges("openings", opening.edge())) {
            String edge = opening.edge().edge();
            List<String> ends =
                    List.of(piece.before(edge).name(), piece.after(edge).name());
            if (!ends.contains(opening.from())) {
                throw refusal(
                        "openings",
                        Message.of(
                                "file.card.opening-begins-elsewhere",
                                opening.edge(),
                                opening.from(),
                                ends.get(0),
                                ends.get(1)));
            }
            double most = piece.sewnLength(edge);
            // an opening all along an edge stays as the card says where an alteration has shortened that edge
            if (!isAltered(piece)
                    && !(opening.length().mm() > 0 && opening.length().mm() <= most)) {
                throw refusal(
                        "openings",
                        Message.of(
                                "file.card.opening-too-long",
                                opening.edge(),
                                Quantity.millimetres(opening.length().mm()),
                                Quantity.millimetres(most),
                                piece.size()));
            }
        }
    }

    /** The pieces, in any size, that have the edge. */
    private List<Piece> edges(String where, EdgeRef edge) {
        List<Piece> named = pieces.stream()
                .filter(piece -> piece.name().equals(edge.piece()))
                .toList();
        if (named.isEmpty()) {
            throw missing(
                    where,
                    Message.of("file.card.no-such-piece", edge.piece()),
                    pieces.stream().map(Piece::name).toList());
        }
        List<Piece> having =
                named.stream().filter(piece -> piece.hasEdge(edge.edge())).toList();
        if (having.isEmpty()) {
            throw missing(where + ": " + edge.piece(), noEdge(edge.edge()), edgeNames(named));
        }
        return having;
    }

    private static List<String> edgeNames(List<Piece> pieces) {
        return pieces.stream()
                .flatMap(piece -> piece.edges().stream())
                .map(Edge::name)
                .toList();
    }

    private static Message noEdge(String name) {
        return Message.of("pattern.piece.no-such-edge", name);
    }

    private Refusal missing(String where, Message why, List<String> there) {
        List<String> each = there.stream().distinct().toList();
        return refusal(
                where,
                each.size() == 1
                        ? Message.of("file.card.there-is", why, each)
                        : Message.of("file.card.there-are", why, each));
    }

    private Refusal refusal(String where, Message why) {
        return new Refusal(new Reason.Missing(Message.of("file.under", where, why), Where.inFile(file)));
    }
}
