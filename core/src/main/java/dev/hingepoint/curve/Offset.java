package dev.hingepoint.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * The parallel of a path as a polyline, from the exact normals of the path: flattening after offsetting would turn the ends, and refitting curves to a
 * parallel is where such code goes wrong.
 *
 * <p>Where the path bends towards the offset side more tightly than the distance allows (curvature times distance of 1 or more) the parallel runs back
 * on itself; whoever asks trims it. At a corner that opens to the offset side both parallels run on straight until they meet, cut back square beyond
 * {@link #MITRE_LIMIT} so that no spike forms.
 */
public final class Offset {
    /** A mitred corner lies at most so many times the distance from the corner of the path (as far as a corner of 47 degrees has it). */
    public static final double MITRE_LIMIT = 2.5;

    private static final int CURVATURE_SAMPLES = 8;

    /** A step of the curve is halved so often at most: at a cusp no step, however short, runs on. */
    private static final int MOST_HALVINGS = 12;

    private final Cubic curve;
    private final double distance;
    private final double tolerance;
    private final List<Point> points;

    private Offset(Cubic curve, double distance, double tolerance, List<Point> points) {
        this.curve = curve;
        this.distance = distance;
        this.tolerance = tolerance;
        this.points = points;
    }

    /**
     * Points along the parallel, the first and last exactly beside the path's ends.
     *
     * @param distance mm to the left of travel; negative to the right
     * @param tolerance how far in mm the polyline may leave the true parallel; the number of points grows with its inverse root
     */
    public static List<Point> polyline(Path path, double distance, double tolerance) {
        List<Point> points = new ArrayList<>();
        Vector last = null;
        for (Segment segment : path.segments()) {
            Vector start = segment.tangent(0);
            // a bend that parts the parallel by less than a drawing can say is rounding, and folds nothing
            if (last == null || Math.abs(last.cross(start) * distance) > Tolerance.LAST_DECIMAL) {
                if (last != null && last.cross(start) * distance > 0) {
                    mitre(segment.start(), last, start, distance, tolerance, points);
                }
                points.add(beside(segment.start(), start, distance));
            }
            if (segment instanceof Cubic cubic) {
                new Offset(cubic, distance, tolerance, points).run();
            } else {
                points.add(beside(segment.end(), start, distance));
            }
            last = segment.tangent(1);
        }
        return points;
    }

    /** What joins the parallels of two segments at a corner that opens to the offset side; nothing where that would be within the tolerance of the straight way. */
    private static void mitre(
            Point corner, Vector arriving, Vector leaving, double distance, double tolerance, List<Point> points) {
        double half = arriving.angleTo(leaving) / 2;
        double sine = Math.abs(StrictMath.sin(half));
        double cosine = StrictMath.cos(half);
        double width = Math.abs(distance);
        if (width * sine * sine <= tolerance * cosine) {
            return;
        }
        double runOn = Math.min(width * sine / cosine, width * (MITRE_LIMIT - cosine) / sine);
        points.add(beside(corner, arriving, distance).plus(arriving.times(runOn)));
        if (cosine * MITRE_LIMIT < 1) {
            points.add(beside(corner, leaving, distance).minus(leaving.times(runOn)));
        }
    }

    private static Point beside(Point point, Vector tangent, double distance) {
        return new Point(point.x() + distance * tangent.y(), point.y() - distance * tangent.x());
    }

    /** A place on the parallel, and the direction of the curve there. */
    private record Place(double t, Point at, Vector along) {}

    private Place place(double t) {
        // in plain numbers: this and the sag are the inner loops of every allowance
        double u = 1 - t;
        Point p = curve.start();
        Point q = curve.startHandle();
        Point r = curve.endHandle();
        Point s = curve.end();
        double dx = u * u * (q.x() - p.x()) + 2 * u * t * (r.x() - q.x()) + t * t * (s.x() - r.x());
        double dy = u * u * (q.y() - p.y()) + 2 * u * t * (r.y() - q.y()) + t * t * (s.y() - r.y());
        double speed = Math.sqrt(dx * dx + dy * dy);
        // where a handle lies on its end the curve knows its direction as a limit
        Vector along = speed > Tolerance.LENGTH ? new Vector(dx / speed, dy / speed) : curve.tangent(t);
        return new Place(t, beside(curve.at(t), along, distance), along);
    }

    /** Even steps as the sharpest of some bends asks for, each halved where it leaves the parallel all the same. */
    private void run() {
        double sharpest = 0;
        for (int i = 0; i <= CURVATURE_SAMPLES; i++) {
            sharpest = Math.max(sharpest, Math.abs(curve.curvature((double) i / CURVATURE_SAMPLES)));
        }
        // a chord's sag grows by 1 + curvature x distance from the curve to its parallel
        int steps = curve.flatteningSteps(tolerance / Math.min(20, 1 + sharpest * Math.abs(distance)));
        Place from = place(0);
        for (int i = 1; i <= steps; i++) {
            Place to = place((double) i / steps);
            step(from, to, MOST_HALVINGS);
            from = to;
        }
    }

    private void step(Place from, Place to, int halvings) {
        if (halvings == 0 || sag(from, to) <= tolerance) {
            points.add(to.at);
            return;
        }
        Place middle = place((from.t + to.t) / 2);
        if (sag(from, middle, to) <= tolerance) {
            points.add(to.at);
            return;
        }
        step(from, middle, halvings - 1);
        step(middle, to, halvings - 1);
    }

    /**
     * How far the parallel can lie from the chord between two of its places. An arc that bends one way lies within the triangle of its chord and its end
     * tangents; one that bends both ways stays below the steeper tangent over the chord's whole length. Derived.
     */
    private static double sag(Place from, Place to) {
        double x = to.at.x() - from.at.x();
        double y = to.at.y() - from.at.y();
        double leaving = x * from.along.x() + y * from.along.y();
        double arriving = x * to.along.x() + y * to.along.y();
        if (!(leaving * arriving > 0)) {
            return x == 0 && y == 0 && from.along.dot(to.along) > 0 ? 0 : Double.POSITIVE_INFINITY;
        }
        double first = (x * from.along.y() - y * from.along.x()) / leaving;
        double second = (to.along.x() * y - to.along.y() * x) / arriving;
        double slope =
                first * second > 0 ? first * second / (first + second) : Math.max(Math.abs(first), Math.abs(second));
        return Math.abs(slope) * Math.sqrt(x * x + y * y);
    }

    /** The same, knowing a place between: the parallel then lies within the two triangles over the two halves. */
    private static double sag(Place from, Place middle, Place to) {
        Vector chord = to.at.minus(from.at);
        double length = chord.length();
        if (length == 0 || sag(from, middle) > length || sag(middle, to) > length) {
            return Double.POSITIVE_INFINITY;
        }
        Vector unit = chord.times(1 / length);
        return Math.max(height(from, middle, from.at, unit), height(middle, to, from.at, unit));
    }

    /** How far from a line the corner lies where the end tangents of an arc meet, or the farther of its ends. */
    private static double height(Place from, Place to, Point on, Vector line) {
        double bend = from.along.cross(to.along);
        double reach = bend == 0 ? 0 : to.at.minus(from.at).cross(to.along) / bend;
        Point corner = from.at.plus(from.along.times(reach));
        return Math.max(
                Math.abs(line.cross(corner.minus(on))),
                Math.max(Math.abs(line.cross(from.at.minus(on))), Math.abs(line.cross(to.at.minus(on)))));
    }
}
