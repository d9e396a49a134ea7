package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.fit.Body;
import dev.hingepoint.fit.FitCheck;
import dev.hingepoint.fit.FitRules;
import dev.hingepoint.fit.GettingIn;
import dev.hingepoint.fit.GettingIn.Narrow;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Whether the body that a size fits still gets into it, once it is made up in another way. */
final class Entry {
    private Entry() {}

    /** The body that the size fits, as far as the card says. */
    static Body body(Draft draft) {
        return FitCheck.charted(draft.pattern(), draft.size());
    }

    /** Where it is narrow, in the cloth that the draft counts on. */
    static List<Narrow> into(Draft draft) {
        return GettingIn.into(draft, body(draft), FitRules.USUAL);
    }

    /** The same where each piece has its own cloth's stretch, as a fraction. */
    static List<Narrow> into(Draft draft, ToDoubleFunction<Piece> stretch) {
        return GettingIn.into(draft, body(draft), FitRules.USUAL, stretch);
    }

    /**
     * What was too narrow already is not the choice's fault.
     *
     * @throws Refusal with the numbers, where a place is too narrow that was not
     */
    static void requireNoNarrower(List<Narrow> before, List<Narrow> after) {
        List<String> already = before.stream()
                .filter(narrow -> !narrow.isWideEnough())
                .map(Narrow::place)
                .toList();
        after.stream()
                .filter(narrow -> !narrow.isWideEnough() && !already.contains(narrow.place()))
                .findFirst()
                .ifPresent(narrow -> {
                    throw new Refusal(Reason.BeyondLimit.of(
                            Message.of("make.entry.too-narrow", narrow.message()), Where.UNKNOWN));
                });
    }
}
