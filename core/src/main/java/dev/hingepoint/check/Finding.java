package dev.hingepoint.check;

import dev.hingepoint.Reason;

/** What came of holding a law against a result. Both values in the law's unit: mm, or radians where the law says so. */
public record Finding(Law law, double expected, double actual) {
    public boolean holds() {
        return Math.abs(actual - expected) <= law.tolerance();
    }

    /** Why the law is broken, for a refusal. */
    public Reason reason() {
        return new Reason.BrokenLaw(
                "it would not hold that it " + law.sentence() + ": " + Reason.millimetres(actual) + " instead of "
                        + Reason.millimetres(expected) + ", and " + Reason.millimetres(law.tolerance()) + " is allowed",
                law.where(),
                expected,
                actual,
                law.tolerance());
    }
}
