package dev.hingepoint.alter;

import java.util.function.DoublePredicate;

/** The largest amount that still works, for a refusal that says so. */
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
}
