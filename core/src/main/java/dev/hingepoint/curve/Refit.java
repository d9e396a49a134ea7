package dev.hingepoint.curve;

import java.util.List;
import java.util.stream.IntStream;

/** Stands one cubic in for a stretch of path, keeping both ends and both end tangents. */
public final class Refit {
    private static final int SAMPLES = 48;
    private static final int ROUNDS = 60;
    private static final double FIRST_DAMPING = 0.01;
    private static final double SHORTEST_HANDLE = 0.02;

    /** Sum of squares in mm2 at which the fit is as good as the last decimal of a drawing. */
    private static final double GOOD_ENOUGH = SAMPLES * 1e-10;

    /** Keeps the equations of a straight stretch, whose handles no distance depends on, solvable. */
    private static final double TINY = 1e-12;

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

    /**
     * The two handle lengths by Levenberg and Marquardt's method on the distances square to the curve: sliding along it costs
     * nothing.
     */
    private static Cubic leastSquares(Path stretch, Cubic first) {
        List<Point> points = samples(stretch);
        Cubic best = first;
        double least = squares(best, points);
        double damping = FIRST_DAMPING;
        for (int round = 0; round < ROUNDS && least > GOOD_ENOUGH; round++) {
            Cubic next = stepped(stretch, best, points, damping);
            double squares = squares(next, points);
            if (squares < least) {
                best = next;
                least = squares;
                damping /= 4;
            } else {
                damping *= 8;
            }
        }
        return best;
    }

    private static double squares(Cubic cubic, List<Point> points) {
        return points.stream()
                .mapToDouble(point -> cubic.at(cubic.nearest(point)).distanceTo(point))
                .map(off -> off * off)
                .sum();
    }

    private static Cubic stepped(Path stretch, Cubic fitted, List<Point> points, double damping) {
        double aa = 0;
        double ab = 0;
        double bb = 0;
        double ar = 0;
        double br = 0;
        for (Point point : points) {
            double t = fitted.nearest(point);
            double u = 1 - t;
            Vector normal = fitted.tangent(t).left();
            double a = 3 * u * u * t * stretch.startTangent().dot(normal);
            double b = -3 * u * t * t * stretch.endTangent().dot(normal);
            double off = point.minus(fitted.at(t)).dot(normal);
            aa += a * a;
            ab += a * b;
            bb += b * b;
            ar += a * off;
            br += b * off;
        }
        aa += damping * aa + TINY;
        bb += damping * bb + TINY;
        double det = aa * bb - ab * ab;
        double least = stretch.length() * SHORTEST_HANDLE;
        double most = 2 * stretch.length();
        double atStart = fitted.startHandle().distanceTo(fitted.start()) + (ar * bb - br * ab) / det;
        double atEnd = fitted.endHandle().distanceTo(fitted.end()) + (aa * br - ab * ar) / det;
        return withHandles(stretch, Math.max(least, Math.min(most, atStart)), Math.max(least, Math.min(most, atEnd)));
    }
}
