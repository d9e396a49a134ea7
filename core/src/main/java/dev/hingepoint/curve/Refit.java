package dev.hingepoint.curve;

import java.util.List;
import java.util.stream.IntStream;

/** Stands one cubic in for a stretch of path, keeping both ends and both end tangents. */
public final class Refit {
    private static final int SAMPLES = 48;
    private static final int ROUNDS = 6;

    private Refit() {}

    /**
     * One cubic for {@code stretch}. A single segment is returned exactly. Several are fitted by least squares over the lengths of
     * the two handles; where that leaves the stretch by more than {@link Tolerance#REFIT}, the handles are a third of the
     * stretch's length.
     *
     * @see <a href="https://doi.org/10.1016/B978-0-08-050753-8.50132-7">Schneider, An algorithm for automatically fitting
     *     digitized curves, Graphics Gems (1990)</a>
     */
    public static Cubic cubic(Path stretch) {
        if (stretch.segments().size() == 1) {
            return asCubic(stretch.segments().get(0));
        }
        double third = stretch.length() / 3;
        Cubic plain = withHandles(stretch, third, third);
        Cubic fitted = leastSquares(stretch, plain);
        return deviation(fitted, stretch) <= Tolerance.REFIT ? fitted : plain;
    }

    public static Cubic asCubic(Segment segment) {
        return segment instanceof Cubic cubic ? cubic : Cubic.straight(segment.start(), segment.end());
    }

    /** The largest distance in mm between the two, measured at even steps of the stretch's length. */
    public static double deviation(Cubic cubic, Path stretch) {
        Path curve = Path.of(cubic);
        return samples(stretch).stream().mapToDouble(curve::distanceTo).max().orElseThrow();
    }

    private static Cubic withHandles(Path stretch, double atStart, double atEnd) {
        return new Cubic(
                stretch.start(),
                stretch.start().plus(stretch.startTangent().times(atStart)),
                stretch.end().minus(stretch.endTangent().times(atEnd)),
                stretch.end());
    }

    private static List<Point> samples(Path stretch) {
        double length = stretch.length();
        return IntStream.range(1, SAMPLES)
                .mapToObj(i -> stretch.at(length * i / SAMPLES))
                .toList();
    }

    private static Cubic leastSquares(Path stretch, Cubic first) {
        List<Point> points = samples(stretch);
        Cubic fitted = first;
        for (int round = 0; round < ROUNDS; round++) {
            // normal equations for the two handle lengths, with each sample at its foot on the last fit
            double aa = 0;
            double ab = 0;
            double bb = 0;
            double ar = 0;
            double br = 0;
            for (Point point : points) {
                double t = fitted.nearest(point);
                double u = 1 - t;
                Vector a = stretch.startTangent().times(3 * u * u * t);
                Vector b = stretch.endTangent().times(-3 * u * t * t);
                Point ends = stretch.start().towards(stretch.end(), t * t * (3 - 2 * t));
                Vector rest = point.minus(ends);
                aa += a.dot(a);
                ab += a.dot(b);
                bb += b.dot(b);
                ar += a.dot(rest);
                br += b.dot(rest);
            }
            double det = aa * bb - ab * ab;
            double atStart = (ar * bb - br * ab) / det;
            double atEnd = (aa * br - ab * ar) / det;
            if (!(atStart > 0 && atEnd > 0)) {
                return first;
            }
            fitted = withHandles(stretch, atStart, atEnd);
        }
        return fitted;
    }
}
