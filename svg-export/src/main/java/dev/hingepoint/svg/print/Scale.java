package dev.hingepoint.svg.print;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import java.util.stream.Stream;

/** How large the pieces are printed: to be cut, or small, for a class. */
public enum Scale {
    FULL("1:1", 1),
    HALF("1:2", 0.5),
    QUARTER("1:4", 0.25);

    private final String words;
    private final double factor;

    Scale(String words, double factor) {
        this.words = words;
        this.factor = factor;
    }

    /** As people write it: "1:2". */
    public String words() {
        return words;
    }

    /** The mm on paper of one mm of the piece. */
    public double factor() {
        return factor;
    }

    /** @throws Refusal for a scale that is not printed */
    public static Scale parse(String text) {
        return Stream.of(values())
                .filter(scale -> scale.words.equals(text.replaceAll("\\s", "")))
                .findFirst()
                .orElseThrow(() -> new Refusal(new Reason.Unreadable(
                        Message.of(
                                "print.no-such-scale",
                                text,
                                Stream.of(values()).map(Scale::words).toList()),
                        Where.UNKNOWN)));
    }
}
