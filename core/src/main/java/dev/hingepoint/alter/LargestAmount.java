package dev.hingepoint.alter;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Finding;
import dev.hingepoint.check.Law;
import dev.hingepoint.pattern.Draft;
import java.util.function.DoubleFunction;
import org.locationtech.jts.geom.TopologyException;

/** An amount that would break a law, or the paper, is refused with the largest that would not: found by trying. */
final class LargestAmount {
    /** An amount is told to so many parts of a mm, and what is told works. */
    private static final double TOLD = 100;

    private LargestAmount() {}

    /**
     * The alteration by {@code amount} mm.
     *
     * @throws Refusal where it does not hold up, naming the largest amount that does, where there is one
     */
    static Altered orRefusal(Draft draft, double amount, DoubleFunction<Altered> attempt) {
        Altered altered;
        try {
            altered = attempt.apply(amount);
        } catch (Refusal refused) {
            throw refused.reason() instanceof Reason.BeyondLimit || refused.reason() instanceof Reason.Unsound
                    ? refusal(draft, refused.reason(), amount, attempt)
                    : refused;
        } catch (IllegalArgumentException | TopologyException wrong) {
            Reason reason = new Reason.Unsound("the piece is too small for that", Where.UNKNOWN.size(draft.size()));
            throw new Refusal(refusal(draft, reason, amount, attempt).reason(), wrong);
        }
        for (Law law : altered.laws()) {
            Finding finding = law.on(draft, altered.draft());
            if (!finding.holds()) {
                throw refusal(draft, finding.reason(), amount, attempt);
            }
        }
        return altered;
    }

    private static Refusal refusal(Draft draft, Reason why, double amount, DoubleFunction<Altered> attempt) {
        double found = Bisection.largest(0, amount, smaller -> holds(draft, smaller, attempt));
        double largest = Math.copySign(Math.floor(Math.abs(found) * TOLD) / TOLD, found);
        return largest == 0
                ? new Refusal(why)
                : new Refusal(Reason.BeyondLimit.of(why.what(), why.where(), amount, largest));
    }

    private static boolean holds(Draft draft, double amount, DoubleFunction<Altered> attempt) {
        try {
            return attempt.apply(amount).holds(draft);
        } catch (Refusal | IllegalArgumentException | TopologyException wrong) {
            return false;
        }
    }
}
