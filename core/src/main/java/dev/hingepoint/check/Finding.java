package dev.hingepoint.check;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;

/** What came of holding a law against a result. Both values in mm, or in radians for a law of angles. */
public record Finding(Law law, double expected, double actual) {
    public boolean holds() {
        return Math.abs(actual - expected) <= law.tolerance();
    }

    /** Why the law is broken, for a refusal. */
    public Reason reason() {
        return new Reason.BrokenLaw(
                Message.of(
                        "check.broken-law",
                        law.message(),
                        law.told(actual),
                        law.told(expected),
                        law.told(law.tolerance())),
                law.where(),
                expected,
                actual,
                law.tolerance());
    }
}
