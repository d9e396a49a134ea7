package dev.hingepoint.curve;

/**
 * Fairing by the one rule: a corner that a move left is replaced by two cubics with a common tangent.
 *
 * <p>With &delta; = half the bend in radians, the curve starts and ends L = min(60 mm, 3 mm/&delta;, 0.15 mm/&delta;&sup2;,
 * distance to the next corner) from the corner. Each side's L becomes one cubic of the side's own; the corner point moves
 * L sin(&delta;)/2 into the bend along the bisector, and the two handles beside it keep their lengths and turn to the common
 * tangent. On straight sides the sag is about L&delta;/2 and the length lost 2L&delta;&sup2;/3; on curved ones a further
 * &kappa;&delta;L&sup2;/3. Derived.
 */
public final class Fairing {
    private static final double LONGEST = 60;
    private static final double SAG = 3;
    private static final double LOSS = 0.15;

    /** A bend of less is rounding of the computation, not a corner. */
    private static final double NO_BEND = 1e-9;

    private Fairing() {}

    /** Half the bend in radians at the joint of two paths, signed: positive where the path turns clockwise. */
    public static double halfBend(Path before, Path after) {
        return before.endTangent().angleTo(after.startTangent()) / 2;
    }

    /** The rule's L in mm for the corner between two paths. */
    public static double reach(Path before, Path after) {
        double delta = Math.abs(halfBend(before, after));
        double rule = delta < NO_BEND ? LONGEST : Math.min(LONGEST, Math.min(SAG / delta, LOSS / (delta * delta)));
        return Math.min(rule, Math.min(toCorner(before.reversed()), toCorner(after)));
    }

    /** How far in mm a path runs from its start to its first corner, or to its end. */
    public static double toCorner(Path path) {
        return path.corners(Tolerance.CORNER).stream()
                .findFirst()
                .map(path::distanceAlong)
                .orElseGet(path::length);
    }

    /**
     * The two sides of a corner, faired over their whole lengths: two cubics with a common tangent. Sides that do not quite meet
     * are brought together half way, each end with its handle.
     *
     * @param before the side that runs into the corner, no longer than the rule's reach
     * @param after the side that leaves it
     */
    public static Path corner(Path before, Path after) {
        Point meeting = before.end().midpoint(after.start());
        Cubic in = ending(Refit.cubic(before), meeting);
        Cubic out = ending(Refit.cubic(after.reversed()), meeting).reversed();
        double halfBend = in.tangent(1).angleTo(out.tangent(0)) / 2;
        if (Math.abs(halfBend) < NO_BEND) {
            return Path.of(in, out);
        }
        Vector common = in.tangent(1).plus(out.tangent(0)).unit();
        Vector inwards = halfBend > 0 ? common.right() : common.left();
        double reach = Math.min(before.length(), after.length());
        Point corner = meeting.plus(inwards.times(reach * StrictMath.sin(Math.abs(halfBend)) / 2));
        double inHandle = in.end().distanceTo(in.endHandle());
        double outHandle = out.start().distanceTo(out.startHandle());
        return Path.of(
                new Cubic(in.start(), in.startHandle(), corner.minus(common.times(inHandle)), corner),
                new Cubic(corner, corner.plus(common.times(outHandle)), out.endHandle(), out.end()));
    }

    /**
     * A path whose end runs out in another direction, where its neighbour turned: the end stays, and over L = min(60 mm, 27/4 within / turn,
     * distance to the next corner) its last handle keeps its length and turns. The path leaves its old course by 4/27 L turn. Derived.
     *
     * @param direction of travel at the end
     * @param within how far in mm the path may leave its old course
     */
    public static Path turnedAtEnd(Path path, Vector direction, double within) {
        double turn = Math.abs(path.endTangent().angleTo(direction));
        if (turn < NO_BEND) {
            return path;
        }
        double reach = Math.min(Math.min(LONGEST, within * 27 / 4 / turn), toCorner(path.reversed()));
        double kept = path.length() - reach;
        Cubic last = Refit.cubic(path.part(Math.max(0, kept), path.length()));
        double handle = last.endHandle().distanceTo(last.end());
        Path turned = Path.of(new Cubic(
                last.start(),
                last.startHandle(),
                last.end().minus(direction.unit().times(handle)),
                last.end()));
        return kept <= Tolerance.COINCIDENT ? turned : path.part(0, kept).then(turned);
    }

    private static Cubic ending(Cubic cubic, Point end) {
        return (Cubic) Path.of(cubic).withEnd(end).segments().get(0);
    }
}
