package dev.hingepoint.alter;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Finding;
import dev.hingepoint.pattern.Draft;
import java.util.Optional;
import java.util.function.DoubleFunction;

/** An alteration by an amount that may be too much: then it is refused with the largest amount that works, found by trying. */
final class Largest {
    /** What works with less than this many mm does not work at all. */
    private static final double NOTHING = 0.1;

    private Largest() {}

    /**
     * The alteration by {@code amount} mm.
     *
     * @throws Refusal where it is refused or breaks a law: with the reason, and the largest amount that does neither, to a tenth of a mm
     */
    static Altered orRefuse(Draft before, double amount, DoubleFunction<Altered> attempt) {
        Optional<Reason> why = fault(before, amount, attempt);
        if (why.isEmpty()) {
            return attempt.apply(amount);
        }
        double works = Bisection.largest(
                0, amount, by -> by > 0 && fault(before, by, attempt).isEmpty());
        double largest = Math.floor(works * 10) / 10;
        if (largest < NOTHING) {
            throw new Refusal(why.get());
        }
        throw new Refusal(Reason.BeyondLimit.of(why.get().what(), why.get().where(), amount, largest));
    }

    /** Why an amount does not work. */
    private static Optional<Reason> fault(Draft before, double amount, DoubleFunction<Altered> attempt) {
        try {
            Altered altered = attempt.apply(amount);
            return altered.laws().stream()
                    .map(law -> law.on(before, altered.draft()))
                    .filter(finding -> !finding.holds())
                    .findFirst()
                    .map(Finding::reason);
        } catch (Refusal refusal) {
            return Optional.of(refusal.reason());
        } catch (IllegalArgumentException defeated) {
            return Optional.of(new Reason.Unsound(
                    "there is no room on this piece: " + defeated.getMessage(), Where.UNKNOWN.size(before.size())));
        }
    }
}
