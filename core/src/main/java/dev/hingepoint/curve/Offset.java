package dev.hingepoint.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * The parallel of a path as a polyline, from the exact normals of the path: flattening after offsetting would turn the ends, and refitting curves to a
 * parallel is where such code goes wrong.
 *
 * <p>Where the path bends towards the offset side more tightly than the distance allows (curvature times distance of 1 or more) the parallel runs back
 * on itself; whoever asks trims it.
 */
public final class Offset {
    private static final int CURVATURE_SAMPLES = 8;

    private Offset() {}

    /**
     * Points along the parallel, the first and last exactly beside the path's ends.
     *
     * @param distance mm to the left of travel; negative to the right
     * @param tolerance how far in mm the polyline may leave the true parallel
     */
    public static List<Point> polyline(Path path, double distance, double tolerance) {
        List<Point> points = new ArrayList<>();
        Vector last = null;
        for (Segment segment : path.segments()) {
            Vector start = segment.tangent(0);
            // a bend that parts the parallel by less than a drawing can say is rounding, and folds nothing
            if (last == null || Math.abs(last.cross(start) * distance) > Tolerance.LAST_DECIMAL) {
                points.add(beside(segment.start(), start, distance));
            }
            int steps = steps(segment, distance, tolerance);
            for (int i = 1; i < steps; i++) {
                points.add(((Cubic) segment).beside((double) i / steps, distance));
            }
            last = segment.tangent(1);
            points.add(beside(segment.end(), last, distance));
        }
        return points;
    }

    private static Point beside(Point point, Vector tangent, double distance) {
        return new Point(point.x() + distance * tangent.y(), point.y() - distance * tangent.x());
    }

    /** A chord's sag grows by 1 + curvature x distance from the path to its parallel. */
    private static int steps(Segment segment, double distance, double tolerance) {
        if (!(segment instanceof Cubic cubic)) {
            return 1;
        }
        double sharpest = 0;
        for (int i = 0; i <= CURVATURE_SAMPLES; i++) {
            sharpest = Math.max(sharpest, Math.abs(cubic.curvature((double) i / CURVATURE_SAMPLES)));
        }
        return cubic.flatteningSteps(tolerance / Math.min(20, 1 + sharpest * Math.abs(distance)));
    }
}
