package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * How a seam or a free edge is finished: the allowance that it needs where none is given, and what the label says. Common practice, no source, but for the overlocked seam's 3/8 in
 * and the plain seam, which stays as the card has it.
 */
enum Finish {
    PLAIN("plain", 0, 0, a -> "stitch at " + mm(a) + ", press open", a -> "turn in " + mm(a) + ", stitch"),
    OVERLOCKED(
            "overlocked",
            10,
            0,
            a -> "stitch at " + mm(a) + ", overlock both allowances together",
            a -> a == 0 ? "overlock on the line" : "overlock, turn in " + mm(a)),
    NARROW(
            "narrow",
            10,
            8,
            a -> "stitch at " + mm(a) + ", again 2 mm beside it, trim to 3 mm",
            a -> "turn in " + mm(a / 2) + " twice, stitch"),
    FRENCH(
            "French",
            15,
            0,
            a -> "wrong sides together, stitch at " + mm(a - 6)
                    + ", trim to 3 mm; turn, right sides together, stitch at " + mm(6),
            null),
    ROLLED_EDGE("rolled edge", 0, 0, null, a -> "cut on the line, roll the edge"),
    FLAT_FELLED(
            "flat-felled",
            15,
            0,
            a -> "stitch at " + mm(a) + ", trim one side to 5 mm, fold the other over it and stitch it flat",
            null);

    /** A French seam turns well along a curve of at least this radius in mm. */
    static final double TURNS = 120;

    private final String words;
    private final double onSeam;
    private final double onFreeEdge;
    private final DoubleFunction<String> seam;
    private final DoubleFunction<String> freeEdge;

    Finish(
            String words,
            double onSeam,
            double onFreeEdge,
            DoubleFunction<String> seam,
            DoubleFunction<String> freeEdge) {
        this.words = words;
        this.onSeam = onSeam;
        this.onFreeEdge = onFreeEdge;
        this.seam = seam;
        this.freeEdge = freeEdge;
    }

    static String[] all() {
        return Arrays.stream(values()).map(finish -> finish.words).toArray(String[]::new);
    }

    static Finish named(String words) {
        return Arrays.stream(values())
                .filter(finish -> finish.words.equals(words))
                .findFirst()
                .orElseThrow();
    }

    String words() {
        return words;
    }

    /** The allowance in mm; empty where it stays. */
    Optional<Double> allowance(boolean isSeam) {
        double mm = isSeam ? onSeam : onFreeEdge;
        return mm > 0 || this == ROLLED_EDGE ? Optional.of(mm) : Optional.empty();
    }

    /** @throws Refusal where a seam, or a free edge, is not finished so */
    String told(boolean isSeam, double allowance, Where where) {
        DoubleFunction<String> words = isSeam ? seam : freeEdge;
        if (words == null) {
            throw new Refusal(Reason.BeyondLimit.of(
                    isSeam
                            ? Message.of("make.finish.not-on-seam", this.words)
                            : Message.of("make.finish.not-on-free-edge", this.words),
                    where));
        }
        if (this == FRENCH && allowance < 12) {
            throw new Refusal(Reason.BeyondLimit.of(Message.of("make.finish.french-too-narrow"), where, allowance, 12));
        }
        return words.apply(allowance);
    }

    private static String mm(double length) {
        return Reason.millimetres(length);
    }
}
