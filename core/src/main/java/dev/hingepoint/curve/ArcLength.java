package dev.hingepoint.curve;

/**
 * Arc length of a cubic by adaptive Gauss-Legendre quadrature of its speed, and its inverse by a guarded Newton iteration.
 *
 * <p>A stretch is accepted once the rule of order 12 agrees with the sum of the rule on both halves; near a cusp the speed has
 * a kink and halving closes in on it, so the depth is bounded only as a stop for what cannot happen in doubles.
 */
final class ArcLength {
    private static final int MAX_DEPTH = 40;

    /** Nodes and weights of the 12-point Gauss-Legendre rule on [-1, 1] (Abramowitz and Stegun, table 25.4). */
    private static final double[] NODES = {
        0.125233408511468915, 0.367831498998180194, 0.587317954286617447,
        0.769902674194304687, 0.904117256370474857, 0.981560634246719251
    };

    private static final double[] WEIGHTS = {
        0.249147045813402785, 0.233492536538354809, 0.203167426723065922,
        0.160078328543346226, 0.106939325995318431, 0.047175336386511827
    };

    private ArcLength() {}

    static double of(Cubic curve, double t) {
        return t <= 0 ? 0 : refined(curve, 0, t, gauss(curve, 0, t), Tolerance.LENGTH, 0);
    }

    private static double between(Cubic curve, double from, double to) {
        return from < to
                ? refined(curve, from, to, gauss(curve, from, to), Tolerance.LENGTH / 8, 0)
                : -refined(curve, to, from, gauss(curve, to, from), Tolerance.LENGTH / 8, 0);
    }

    private static double refined(Cubic curve, double from, double to, double whole, double tolerance, int depth) {
        double middle = (from + to) / 2;
        double left = gauss(curve, from, middle);
        double right = gauss(curve, middle, to);
        if (Math.abs(left + right - whole) <= tolerance || depth == MAX_DEPTH) {
            return left + right;
        }
        return refined(curve, from, middle, left, tolerance / 2, depth + 1)
                + refined(curve, middle, to, right, tolerance / 2, depth + 1);
    }

    private static double gauss(Cubic curve, double from, double to) {
        double half = (to - from) / 2;
        double middle = (from + to) / 2;
        double sum = 0;
        for (int i = 0; i < NODES.length; i++) {
            sum += WEIGHTS[i] * (speed(curve, middle - half * NODES[i]) + speed(curve, middle + half * NODES[i]));
        }
        return sum * half;
    }

    /** |B'(t)| without building vectors: this is the innermost loop of every length. */
    private static double speed(Cubic c, double t) {
        double u = 1 - t;
        double a = 3 * u * u;
        double b = 6 * u * t;
        double d = 3 * t * t;
        double x = a * (c.startHandle().x() - c.start().x())
                + b * (c.endHandle().x() - c.startHandle().x())
                + d * (c.end().x() - c.endHandle().x());
        double y = a * (c.startHandle().y() - c.start().y())
                + b * (c.endHandle().y() - c.startHandle().y())
                + d * (c.end().y() - c.endHandle().y());
        return Math.sqrt(x * x + y * y);
    }

    static double parameterAt(Cubic curve, double distance) {
        double total = of(curve, 1);
        if (distance <= 0) {
            return 0;
        }
        if (distance >= total) {
            return 1;
        }
        double low = 0;
        double high = 1;
        double t = distance / total;
        double travelled = of(curve, t);
        while (Math.abs(travelled - distance) > Tolerance.LENGTH / 4 && high - low > 1e-16) {
            if (travelled < distance) {
                low = t;
            } else {
                high = t;
            }
            double newton = t - (travelled - distance) / speed(curve, t);
            double next = newton > low && newton < high ? newton : (low + high) / 2;
            travelled += between(curve, t, next);
            t = next;
        }
        return t;
    }
}
