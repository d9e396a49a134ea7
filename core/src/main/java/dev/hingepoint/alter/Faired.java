package dev.hingepoint.alter;

import dev.hingepoint.pattern.Draft;
import java.util.function.DoubleFunction;

/** The last clause of the fairing rule: its reach is halved until the laws hold. */
public final class Faired {
    /** A fairing shorter than a pencil's point is none. */
    private static final double SHORTEST = 0.5;

    private Faired() {}

    /** The first attempt, from {@code reach} mm down, that keeps every law; the last one where none does. */
    public static Altered untilLawsHold(Draft before, double reach, DoubleFunction<Altered> attempt) {
        Altered altered = attempt.apply(reach);
        for (double shorter = reach / 2; shorter >= SHORTEST && !altered.holds(before); shorter /= 2) {
            altered = attempt.apply(shorter);
        }
        return altered;
    }
}
