package dev.hingepoint.move;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.Spot;
import java.util.List;
import java.util.Optional;

/**
 * Rotates what a dart takes up to another place of the outline: slashed from there to the pivot and along the leg of the dart, the part
 * between the two turns about the pivot until the dart is closed, by a share or to nothing, and opens by the same angle at the slash.
 *
 * <p>Of the two parts that could turn, the one without the centre line does; else the smaller. The dart has been lifted off the paper.
 *
 * <p>Kept: the angle at the pivot, in radians, which the new place takes up as far as the old gives it; every line on each part, since both move rigidly.
 *
 * @param cut the move
 * @param motion how the part turns
 * @param turned the end of the dart's leg on the part that turns, before it does
 * @param kept the end of the other leg
 * @param opened where the outline is slashed, before it opens
 */
public record Rotation(Cut cut, Motion motion, Point turned, Point kept, Spot opened) {
    /**
     * @param pivot equally far from both leg ends
     * @param one the end of one leg, on the outline
     * @param other the end of the other leg, on the same edge; between them lies the mouth
     * @param share how much of the dart's angle goes, more than 0, at most 1
     */
    public static Rotation of(
            String caption, Piece piece, Point pivot, Point one, Point other, Spot opened, double share) {
        Path slash = Path.through(opened.point(), pivot);
        Path leg = Path.through(pivot, one);
        Path otherLeg = Path.through(pivot, other);
        Parts parts = Parts.of(piece, List.of(slash, leg, otherLeg));
        Spot mouth = piece.nearest(one.midpoint(other));
        Parts.Face wedge = parts.holding(mouth);
        List<Parts.Face> sides =
                parts.faces().stream().filter(face -> face != wedge).toList();
        if (sides.size() != 2) {
            throw new IllegalArgumentException("the slash and the dart do not part the piece in three");
        }
        Parts.Face turning = holdsCentre(piece, parts, sides.get(0)) == holdsCentre(piece, parts, sides.get(1))
                ? smaller(sides.get(0), sides.get(1))
                : holdsCentre(piece, parts, sides.get(0)) ? sides.get(1) : sides.get(0);
        boolean oneTurns = turning.boundary().distanceTo(one) <= Tolerance.COINCIDENT;
        Point turned = oneTurns ? one : other;
        Point kept = oneTurns ? other : one;
        Motion motion = Motion.turn(pivot, share * turned.minus(pivot).angleTo(kept.minus(pivot)));
        Cut slashed = share < 1
                ? Cut.along(caption, slash, oneTurns ? leg : otherLeg)
                : Cut.along(caption, slash, leg, otherLeg)
                        .folding(Place.near(mouth.edge(), mouth.point()), Motion.fold(pivot, kept, turned));
        return new Rotation(slashed.moving(placeOn(parts, turning), motion), motion, turned, kept, opened);
    }

    private static boolean holdsCentre(Piece piece, Parts parts, Parts.Face face) {
        Optional<String> centre = piece.centre().map(Edge::name);
        return face.arcs().stream()
                .flatMap(arc -> parts.arcs().get(arc).stretches().stream())
                .anyMatch(stretch -> centre.isPresent() && stretch.edge().equals(centre.get()));
    }

    private static Parts.Face smaller(Parts.Face one, Parts.Face other) {
        return one.boundary().length() <= other.boundary().length() ? one : other;
    }

    private static Place placeOn(Parts parts, Parts.Face face) {
        Parts.Stretch stretch =
                parts.arcs().get(face.arcs().iterator().next()).stretches().get(0);
        return Place.near(stretch.edge(), stretch.path().at(stretch.path().length() / 2));
    }

    /** Where the leg's end on the part that turned lies afterwards. */
    public Point turnedOnto() {
        return motion.of(turned);
    }

    /** The two ends of the gap that opened, the one that stayed first. */
    public List<Point> gap() {
        return List.of(opened.point(), motion.of(opened.point()));
    }

    /** By how many radians the paper opens. */
    public double angle() {
        return Math.abs(motion.angle());
    }
}
