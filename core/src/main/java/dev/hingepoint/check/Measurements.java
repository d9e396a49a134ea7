package dev.hingepoint.check;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The finished measurements of one size, from the geometry of its pieces: in mm, darts and overlaps closed, every piece as often as it is
 * cut.
 */
public final class Measurements {
    private Measurements() {}

    /** By name, girths first, in the order of the drawing; what the pieces do not draw is left out. */
    public static Map<String, Double> of(Draft draft) {
        Map<String, Double> finished = new LinkedHashMap<>();
        draft.levels().forEach(level -> finished.put(level + " girth", draft.girth(level)));
        put(finished, "neckline girth", girth(draft, "neckline"));
        put(finished, "hem sweep", sweep(draft));
        put(finished, "upper arm girth", upperArm(draft));
        put(finished, "centre back length", centre(draft, "centre back"));
        put(finished, "centre front length", centre(draft, "centre front"));
        put(finished, "side length", length(draft, "side seam"));
        put(finished, "shoulder length", length(draft, "shoulder"));
        put(finished, "sleeve length", sleeveLength(draft));
        return finished;
    }

    private static void put(Map<String, Double> finished, String name, OptionalDouble mm) {
        if (mm.isPresent()) {
            finished.put(name, mm.getAsDouble());
        }
    }

    /** Every edge of that name round the body, in mm. */
    public static OptionalDouble girth(Draft draft, String edge) {
        return draft.piecesWithEdges(edge).stream()
                .filter(piece -> piece.widths() > 0)
                .mapToDouble(piece -> piece.widths() * piece.sewnLength(edge))
                .reduce(Double::sum);
    }

    /** The hems of the pieces that hang on the centre line or a side seam: not of sleeves. */
    private static OptionalDouble sweep(Draft draft) {
        return draft.piecesWithEdges("hem").stream()
                .filter(piece -> piece.widths() > 0)
                .filter(piece -> piece.centre().isPresent() || piece.hasEdge("side seam"))
                .mapToDouble(piece -> piece.widths() * piece.sewnLength("hem"))
                .reduce(Double::sum);
    }

    /** All the way down: a piece that was divided has it in parts. */
    private static OptionalDouble centre(Draft draft, String edge) {
        return draft.piecesWithEdges(edge).stream()
                .filter(piece -> piece.widths() > 0)
                .mapToDouble(piece -> piece.sewnLength(edge))
                .reduce(Double::sum);
    }

    /** Of two edges that are sewn together the shorter: the other is eased in. */
    private static OptionalDouble length(Draft draft, String edge) {
        return draft.piecesWithEdges(edge).stream()
                .filter(piece -> piece.widths() > 0)
                .mapToDouble(piece -> piece.sewnLength(edge))
                .min();
    }

    private static Optional<Piece> sleeve(Draft draft) {
        return draft.piecesWithEdges("cap").stream()
                .filter(piece -> piece.widths() > 0)
                .findFirst();
    }

    /** Round one arm, where the cap ends. */
    private static OptionalDouble upperArm(Draft draft) {
        return sleeve(draft)
                .map(sleeve -> {
                    Path cap = sleeve.edge("cap").path();
                    return OptionalDouble.of(cap.start().distanceTo(cap.end()) * sleeve.widths() / 2);
                })
                .orElse(OptionalDouble.empty());
    }

    /** Along the grain from the top of the cap to the hem. */
    private static OptionalDouble sleeveLength(Draft draft) {
        return sleeve(draft)
                .filter(sleeve -> sleeve.hasEdge("hem"))
                .flatMap(sleeve -> {
                    Vector down = sleeve.grain().down();
                    Path cap = sleeve.edge("cap").path();
                    Point top = cap.at(cap.farthest(down.negated()));
                    Path hem = sleeve.edge("hem").path();
                    return hem.crossings(top, down).stream()
                            .map(position -> hem.at(position).minus(top).dot(down))
                            .findFirst();
                })
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}
