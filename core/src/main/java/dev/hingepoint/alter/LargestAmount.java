package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Bisection;
import dev.hingepoint.pattern.Draft;
import java.util.function.DoubleFunction;
import org.locationtech.jts.geom.TopologyException;

/** An alteration by an amount that may be too much: then it is refused with the largest amount that works, found by trying. */
public final class LargestAmount {
    /** The largest amount is told to so many mm; what works with less does not work at all. */
    private static final double STEP = 0.1;

    private LargestAmount() {}

    /**
     * The alteration by {@code amount} mm, which may be negative.
     *
     * @throws Refusal where it is refused or breaks a law: with the reason and, where the amount is at fault, the largest one of its sign that
     *     works
     */
    public static Altered orRefusal(Draft before, double amount, DoubleFunction<Altered> attempt) {
        try {
            return attempt.apply(amount).lawful(before);
        } catch (Refusal refused) {
            Reason why = refused.reason();
            boolean isNoMatterOfAmount = why instanceof Reason.Missing || why instanceof Reason.Unreadable;
            throw isNoMatterOfAmount ? refused : refusal(before, why, amount, attempt);
        } catch (IllegalArgumentException | TopologyException defeated) {
            Reason why =
                    new Reason.Unsound(Message.of("alter.largest-amount.no-room"), Where.UNKNOWN.size(before.size()));
            throw new Refusal(refusal(before, why, amount, attempt).reason(), defeated);
        }
    }

    private static Refusal refusal(Draft before, Reason why, double amount, DoubleFunction<Altered> attempt) {
        double steps = Bisection.largest(
                0, Math.abs(amount) / STEP, 0.01, many -> works(before, Math.copySign(many * STEP, amount), attempt));
        double largest = Math.copySign(Math.floor(steps) * STEP, amount);
        boolean isKnown = Math.abs(largest) >= STEP && works(before, largest, attempt);
        return isKnown
                ? new Refusal(Reason.BeyondLimit.of(why.message(), why.where(), amount, largest))
                : new Refusal(why);
    }

    private static boolean works(Draft before, double amount, DoubleFunction<Altered> attempt) {
        try {
            return attempt.apply(amount).holds(before);
        } catch (Refusal | IllegalArgumentException | TopologyException wrong) {
            return false;
        }
    }
}
