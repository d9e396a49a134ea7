package dev.hingepoint.pattern;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One size of a pattern as it is sewn together: the pieces of that size, with one front.
 *
 * @param front the name of a second front, where that one is sewn
 * @param drawn the pattern as it was before anything was altered: other sizes, and this one, "as drawn"
 */
public record Draft(Pattern pattern, String size, Optional<String> front, Pattern drawn) {
    /** @throws Refusal where the front is not drawn in this size */
    public Draft {
        if (front.isPresent()
                && pattern.nest().stream()
                        .noneMatch(piece ->
                                piece.size().equals(size) && piece.front().equals(front))) {
            throw new Refusal(new Reason.Missing(
                    Message.of("pattern.draft.no-such-front", front.get()), Where.UNKNOWN.size(size)));
        }
    }

    /** Each piece once: of those that are drawn in several fronts, the chosen one. */
    public List<Piece> pieces() {
        return pattern.nest().stream()
                .filter(piece -> piece.size().equals(size))
                .filter(piece -> piece.front().equals(wanted(piece.name())))
                .toList();
    }

    private Optional<String> wanted(String name) {
        return front.filter(
                chosen -> named(name).anyMatch(piece -> piece.front().equals(front)));
    }

    private Stream<Piece> named(String name) {
        return pattern.nest().stream()
                .filter(piece -> piece.size().equals(size) && piece.name().equals(name));
    }

    public Optional<Piece> find(String name) {
        return pieces().stream().filter(piece -> piece.name().equals(name)).findFirst();
    }

    /** @throws Refusal where there is no such piece */
    public Piece piece(String name) {
        return find(name)
                .orElseThrow(() -> new Refusal(new Reason.Missing(
                        Message.of(
                                "pattern.draft.no-such-piece",
                                name,
                                size,
                                pieces().stream().map(Piece::name).toList()),
                        Where.UNKNOWN.size(size))));
    }

    /** The pieces that have all of these edges. */
    public List<Piece> piecesWithEdges(String... edges) {
        return pieces().stream()
                .filter(piece -> Stream.of(edges).allMatch(piece::hasEdge))
                .toList();
    }

    /** The sewn length of an edge in mm. */
    public double sewnLength(EdgeRef edge) {
        return piece(edge.piece()).sewnLength(edge.edge());
    }

    /** The sewn length in mm of edges that make up one side of a seam. */
    public double sewnLength(List<EdgeRef> edges) {
        return edges.stream().mapToDouble(this::sewnLength).sum();
    }

    /**
     * The finished girth in mm round the body at a level: every piece that the level crosses as often as it is cut, darts closed.
     *
     * @throws Refusal where no piece draws the level
     */
    public double girth(String level) {
        List<Piece> crossed =
                pieces().stream().filter(piece -> piece.hasLevel(level)).toList();
        if (crossed.isEmpty()) {
            throw new Refusal(
                    new Reason.Missing(Message.of("pattern.draft.no-such-level", level), Where.UNKNOWN.size(size)));
        }
        return crossed.stream()
                .mapToDouble(piece -> piece.widths() * piece.width(level))
                .sum();
    }

    /** The levels that any piece draws, in the order of the pieces. */
    public List<String> levels() {
        return pieces().stream()
                .flatMap(piece -> piece.marks(Level.class))
                .map(Level::name)
                .distinct()
                .toList();
    }

    /** The same size with these pieces changed. */
    public Draft with(Piece... changed) {
        return with(List.of(changed));
    }

    public Draft with(List<Piece> changed) {
        return with(pattern.with(changed));
    }

    /** How this size is put together. */
    public Construction construction() {
        return pattern.card().construction(size, front);
    }

    /** What was done to this size with this front; empty where nothing was. */
    public Optional<Card.Altered> altered() {
        return pattern.card().altered().filter(done -> done.isOf(size, front));
    }

    /** The seams of this size. */
    public List<Seam> seams() {
        return construction().seams();
    }

    /** The allowances of this size. */
    public Allowances allowances() {
        return construction().allowances();
    }

    /** The openings of this size. */
    public List<Opening> openings() {
        return construction().openings();
    }

    /** The same size put together in another way; all other sizes stay as the card says. */
    public Draft with(Construction changed) {
        return with(pattern.with(pattern.card().withConstruction(size, front, changed)));
    }

    /** The same size without some of its pieces. */
    public Draft without(List<Piece> dropped) {
        return with(new Pattern(
                pattern.card(),
                pattern.nest().stream()
                        .filter(piece -> !dropped.contains(piece))
                        .toList()));
    }

    /** The same size of a changed pattern. */
    public Draft with(Pattern changed) {
        return new Draft(changed, size, front, drawn);
    }

    /**
     * A piece as it is drawn in a size, unaltered.
     *
     * @throws Refusal where it is not drawn in that size
     */
    public Piece asDrawn(Piece piece, String inSize) {
        return drawn.nest().stream()
                .filter(other -> other.name().equals(piece.name())
                        && other.size().equals(inSize)
                        && other.front().equals(piece.front()))
                .findFirst()
                .orElseThrow(() -> new Refusal(
                        new Reason.Missing(Message.of("pattern.draft.not-in-size", inSize), piece.where())));
    }
}
