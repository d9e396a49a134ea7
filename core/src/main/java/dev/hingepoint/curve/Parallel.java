package dev.hingepoint.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * The parallel of a path as a path of curves, for a line that is drawn and sewn by: the outer edge of a facing. Each stretch has the true parallel's ends, directions
 * and speeds there, and is halved until it leaves the parallel by no more than the tolerance. At a corner the two sides run on until they
 * meet, or are cut off where they cross.
 *
 * @see Offset for the parallel as points, which an allowance is cut by
 */
public final class Parallel {
    private static final int CHECKS = 8;
    private static final int MOST_HALVINGS = 8;

    private Parallel() {}

    /**
     * @param distance mm to the left of travel; negative to the right
     * @param tolerance how far in mm the curves may leave the true parallel
     * @throws IllegalArgumentException where the path bends so tightly towards that side that the parallel would run back on itself
     */
    public static Path of(Path path, double distance, double tolerance) {
        Path parallel = null;
        for (Segment segment : path.segments()) {
            List<Segment> beside = new ArrayList<>();
            if (segment instanceof Cubic cubic) {
                add(beside, cubic, distance, tolerance, MOST_HALVINGS);
            } else {
                Vector aside = segment.tangent(0).left().times(distance);
                beside.add(segment.moved(Motion.shift(aside)));
            }
            parallel = parallel == null ? Path.of(beside) : joined(parallel, Path.of(beside), distance);
        }
        return parallel;
    }

    private static void add(List<Segment> beside, Cubic cubic, double distance, double tolerance, int halvings) {
        Cubic stretch = stretch(beside, cubic, distance);
        Path drawn = Path.of(stretch);
        double off = 0;
        for (int i = 1; i < CHECKS; i++) {
            off = Math.max(off, drawn.distanceTo(beside(cubic, (double) i / CHECKS, distance)));
        }
        if (off <= tolerance || halvings == 0) {
            beside.add(stretch);
            return;
        }
        add(beside, cubic.part(0, 0.5), distance, tolerance, halvings - 1);
        add(beside, cubic.part(0.5, 1), distance, tolerance, halvings - 1);
    }

    private static Cubic stretch(List<Segment> before, Cubic cubic, double distance) {
        Point start = before.isEmpty()
                ? beside(cubic, 0, distance)
                : before.get(before.size() - 1).end();
        Point end = beside(cubic, 1, distance);
        double atStart = cubic.start().distanceTo(cubic.startHandle()) * growth(cubic, 0, distance);
        double atEnd = cubic.end().distanceTo(cubic.endHandle()) * growth(cubic, 1, distance);
        return new Cubic(
                start,
                start.plus(cubic.tangent(0).times(atStart)),
                end.minus(cubic.tangent(1).times(atEnd)),
                end);
    }

    private static Point beside(Cubic cubic, double t, double distance) {
        return cubic.at(t).plus(cubic.tangent(t).left().times(distance));
    }

    /** How much longer than the path its parallel is, place by place. */
    private static double growth(Cubic cubic, double t, double distance) {
        double growth = 1 + cubic.curvature(t) * distance;
        if (!(growth > 0)) {
            throw new IllegalArgumentException(
                    "no line runs beside it at " + Math.abs(distance) + " mm: it bends too tightly");
        }
        return growth;
    }

    private static Path joined(Path one, Path other, double distance) {
        if (one.end().isCloseTo(other.start(), Tolerance.LAST_DECIMAL)) {
            return one.then(other.withStart(one.end()));
        }
        Vector along = one.endTangent();
        Vector away = other.startTangent();
        if (along.cross(away) * distance > 0) {
            double reach = other.start().minus(one.end()).cross(away) / along.cross(away);
            Point corner = one.end().plus(along.times(reach));
            return one.then(Path.through(one.end(), corner, other.start())).then(other);
        }
        for (Segment chord : Path.through(other.flatten(Tolerance.FLATTENING)).segments()) {
            for (Position on : one.crossings((Line) chord)) {
                Point corner = one.at(on);
                Position from = other.nearest(corner);
                return one.part(one.startPosition(), on)
                        .then(other.part(from, other.endPosition()).withStart(corner));
            }
        }
        throw new IllegalArgumentException("no line runs beside it at " + Math.abs(distance) + " mm past its corner");
    }
}
