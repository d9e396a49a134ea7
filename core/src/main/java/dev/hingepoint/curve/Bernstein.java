package dev.hingepoint.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * A polynomial on [0, 1] in Bernstein form, and its roots there.
 *
 * <p>Roots are isolated by halving with the variation-diminishing property (no more roots than sign changes of the
 * coefficients), then bisected: nothing is missed, whatever the shape of the curve, which a search from sampled starting
 * points cannot promise.
 *
 * @see <a href="https://doi.org/10.1016/j.cagd.2012.03.001">Farouki, The Bernstein polynomial basis: a centennial
 *     retrospective (2012), sections 5 and 7</a>
 */
final class Bernstein {
    /** Parameters nearer than this are one root: the last bits of a double near 1. */
    private static final double PARAMETER_RESOLUTION = 1e-15;

    private final double[] coefficients;

    Bernstein(double... coefficients) {
        this.coefficients = coefficients;
    }

    /** The product, by the convolution formula for scaled coefficients. */
    Bernstein times(Bernstein other) {
        int m = coefficients.length - 1;
        int n = other.coefficients.length - 1;
        double[] product = new double[m + n + 1];
        for (int i = 0; i <= m; i++) {
            for (int j = 0; j <= n; j++) {
                product[i + j] += binomial(m, i)
                        * binomial(n, j)
                        / binomial(m + n, i + j)
                        * coefficients[i]
                        * other.coefficients[j];
            }
        }
        return new Bernstein(product);
    }

    Bernstein plus(Bernstein other) {
        double[] sum = coefficients.clone();
        for (int i = 0; i < sum.length; i++) {
            sum[i] += other.coefficients[i];
        }
        return new Bernstein(sum);
    }

    private static double binomial(int n, int k) {
        double result = 1;
        for (int i = 1; i <= k; i++) {
            result = result * (n - k + i) / i;
        }
        return result;
    }

    /** The roots in [0, 1], ascending; a double root once; none for the zero polynomial. */
    List<Double> roots() {
        List<Double> found = new ArrayList<>();
        collect(coefficients, 0, 1, found);
        return found;
    }

    private void collect(double[] c, double from, double to, List<Double> found) {
        int changes = signChanges(c);
        if (c[0] == 0 && from == 0 && !isZero(c)) {
            add(found, 0);
        }
        if (changes == 1 && c[0] != 0 && c[c.length - 1] != 0) {
            add(found, bisect(from, to, c[0] < 0));
        } else if (changes >= 1) {
            double middle = (from + to) / 2;
            if (to - from <= PARAMETER_RESOLUTION) {
                add(found, middle);
            } else {
                double[][] halves = halve(c);
                collect(halves[0], from, middle, found);
                if (halves[1][0] == 0) {
                    add(found, middle);
                }
                collect(halves[1], middle, to, found);
            }
        }
        if (to == 1 && c[c.length - 1] == 0 && !isZero(c)) {
            add(found, 1);
        }
    }

    /** The one root between two places of different sign: regula falsi (Illinois), kept honest by halving every third time. */
    private double bisect(double from, double to, boolean rising) {
        double low = from;
        double high = to;
        double[] row = new double[coefficients.length];
        double atLow = rising ? -Math.abs(at(low, row)) : Math.abs(at(low, row));
        double atHigh = rising ? Math.abs(at(high, row)) : -Math.abs(at(high, row));
        for (int step = 1; high - low > PARAMETER_RESOLUTION; step++) {
            double next = step % 3 == 0 || atHigh == atLow
                    ? (low + high) / 2
                    : (low * atHigh - high * atLow) / (atHigh - atLow);
            if (!(next > low && next < high)) {
                next = (low + high) / 2;
                if (next == low || next == high) {
                    break;
                }
            }
            double value = at(next, row);
            if (value == 0) {
                return next;
            }
            if (value < 0 == rising) {
                low = next;
                atLow = value;
                atHigh /= 2;
            } else {
                high = next;
                atHigh = value;
                atLow /= 2;
            }
        }
        return (low + high) / 2;
    }

    private double at(double t, double[] row) {
        System.arraycopy(coefficients, 0, row, 0, row.length);
        for (int k = row.length - 1; k > 0; k--) {
            for (int i = 0; i < k; i++) {
                row[i] += t * (row[i + 1] - row[i]);
            }
        }
        return row[0];
    }

    private static void add(List<Double> found, double root) {
        if (found.isEmpty() || root - found.get(found.size() - 1) > PARAMETER_RESOLUTION) {
            found.add(root);
        }
    }

    private static boolean isZero(double[] c) {
        for (double value : c) {
            if (value != 0) {
                return false;
            }
        }
        return true;
    }

    private static int signChanges(double[] c) {
        int changes = 0;
        double last = 0;
        for (double value : c) {
            if (value != 0) {
                if (last != 0 && value < 0 != last < 0) {
                    changes++;
                }
                last = value;
            }
        }
        return changes;
    }

    private static double[][] halve(double[] c) {
        int n = c.length;
        double[] left = new double[n];
        double[] right = new double[n];
        double[] row = c.clone();
        for (int k = 0; k < n; k++) {
            left[k] = row[0];
            right[n - 1 - k] = row[n - 1 - k];
            for (int i = 0; i < n - 1 - k; i++) {
                row[i] = (row[i] + row[i + 1]) / 2;
            }
        }
        return new double[][] {left, right};
    }
}
