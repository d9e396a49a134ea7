package dev.hingepoint.svg.file;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Whether a card and the drawing beside it speak of the same sizes, pieces and edges: a name misspelt would else be passed over in silence. */
final class CardCheck {
    /** What an allowance may be for besides an edge. */
    private static final Set<String> GENERAL = Set.of("default", "hem");

    private final Pattern pattern;
    private final String file;

    private CardCheck(Pattern pattern, String file) {
        this.pattern = pattern;
        this.file = file;
    }

    /** @throws Refusal in the card's name, saying what is there */
    static void check(Pattern pattern, String file) {
        new CardCheck(pattern, file).check(pattern.card());
    }

    private void check(Card card) {
        if (!card.baseSize().isEmpty() && !pattern.hasSize(card.baseSize())) {
            throw missing("base size", "size", card.baseSize(), pattern.sizes());
        }
        card.seams().forEach(this::seam);
        card.allowances().byName().keySet().stream()
                .filter(name -> !GENERAL.contains(name))
                .forEach(this::allowance);
        card.openings().forEach(this::opening);
    }

    private void seam(Seam seam) {
        Set<EdgeRef> seen = new HashSet<>();
        Stream.concat(seam.join().stream(), seam.to().stream()).forEach(edge -> {
            edges("seams", edge);
            if (!seen.add(edge)) {
                throw refusal(
                        "seams",
                        edge + " is joined to itself; a seam joins two edges, and the two halves of a pair need none");
            }
        });
    }

    private void allowance(String name) {
        if (name.contains("/")) {
            edges("allowances", EdgeRef.parse(name));
        } else if (pattern.nest().stream().noneMatch(piece -> piece.hasEdge(name))) {
            throw missing("allowances", "edge", name, edgeNames(piece -> true));
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
                        opening.edge() + " does not begin at '" + opening.from() + "'; its ends are at "
                                + String.join(" and ", ends));
            }
            double most = piece.sewnLength(edge);
            // an opening all along an edge stays as the card says where an alteration has shortened that edge
            boolean isAltered = pattern.card()
                    .altered()
                    .filter(altered -> altered.size().equals(piece.size()))
                    .isPresent();
            if (!isAltered && !(opening.length().mm() > 0 && opening.length().mm() <= most)) {
                throw refusal(
                        "openings",
                        opening.edge() + " cannot be open for " + opening.length() + ", since it is "
                                + Reason.millimetres(most) + " long in size " + piece.size());
            }
        }
    }

    /** The pieces, in any size, that have the edge. */
    private List<Piece> edges(String where, EdgeRef edge) {
        List<Piece> pieces = pattern.nest().stream()
                .filter(piece -> piece.name().equals(edge.piece()))
                .toList();
        if (pieces.isEmpty()) {
            throw missing(
                    where,
                    "piece",
                    edge.piece(),
                    pattern.nest().stream().map(Piece::name).toList());
        }
        List<Piece> having =
                pieces.stream().filter(piece -> piece.hasEdge(edge.edge())).toList();
        if (having.isEmpty()) {
            throw missing(
                    where + ": " + edge.piece(),
                    "edge",
                    edge.edge(),
                    edgeNames(piece -> piece.name().equals(edge.piece())));
        }
        return having;
    }

    private List<String> edgeNames(Predicate<Piece> which) {
        return pattern.nest().stream()
                .filter(which)
                .flatMap(piece -> piece.edges().stream())
                .map(Edge::name)
                .toList();
    }

    private Refusal missing(String where, String kind, String name, Collection<String> there) {
        List<String> each = there.stream().distinct().toList();
        return refusal(
                where,
                "there is no " + kind + " '" + name + "'; there " + (each.size() == 1 ? "is " : "are ")
                        + String.join(", ", each));
    }

    private Refusal refusal(String where, String what) {
        return new Refusal(new Reason.Missing(where + ": " + what, Where.inFile(file)));
    }
}
