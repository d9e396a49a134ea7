package dev.hingepoint.fit;

import dev.hingepoint.pattern.Length;
import java.util.Optional;

/**
 * What was seen on a toile at the back waist.
 *
 * @param folds how much cloth can be pinched out there
 * @param run where the folds run
 * @param hem what the back hem does
 * @param onAltered whether the toile was of the altered pattern: else what was seen is answered by the alterations made since
 */
public record Observed(Length folds, Optional<Run> run, Optional<Hem> hem, boolean onAltered) {
    /** Where folds run. */
    public enum Run {
        BACK_ONLY("back only"),
        ALL_ROUND("all round"),
        BELOW_THE_SEAT("below the seat");

        private final String words;

        Run(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** What a back hem does. */
    public enum Hem {
        LEVEL("level"),
        DROPS("drops"),
        RIDES_UP("rides up");

        private final String words;

        Hem(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
