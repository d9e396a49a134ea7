package dev.hingepoint.curve;

import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;

/** Halving an interval: the largest amount that still works, the place where a value passes through nothing. */
public final class Bisection {
    private static final int HALVINGS = 60;

    private Bisection() {}

    /** The largest amount between one that works and one that does not, to the last bits. */
    public static double largest(double works, double fails, DoublePredicate doesWork) {
        return largest(works, fails, 0, doesWork);
    }

    /** The largest amount between one that works and one that does not, to {@code within}; it works itself. */
    public static double largest(double works, double fails, double within, DoublePredicate doesWork) {
        double low = works;
        double high = fails;
        for (int i = 0; i < HALVINGS && Math.abs(high - low) > within; i++) {
            double middle = (low + high) / 2;
            if (doesWork.test(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Where a value that is continuous passes through 0 between two places; empty where it has one sign at both. */
    public static OptionalDouble zero(double low, double high, DoubleUnaryOperator value) {
        double atHigh = value.applyAsDouble(high);
        if (value.applyAsDouble(low) * atHigh > 0) {
            return OptionalDouble.empty();
        }
        boolean rising = atHigh > 0;
        return OptionalDouble.of(largest(low, high, place -> value.applyAsDouble(place) > 0 != rising));
    }
}
