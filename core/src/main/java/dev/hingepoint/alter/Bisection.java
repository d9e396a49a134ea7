package dev.hingepoint.alter;

import java.util.function.DoublePredicate;

/** The largest amount that still works, for a refusal that says so. */
public final class Bisection {
    private static final int HALVINGS = 60;

    private Bisection() {}

    /** The largest amount between one that works and one that does not, to the last bits. */
    public static double largest(double works, double fails, DoublePredicate doesWork) {
        double low = works;
        double high = fails;
        for (int i = 0; i < HALVINGS; i++) {
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
