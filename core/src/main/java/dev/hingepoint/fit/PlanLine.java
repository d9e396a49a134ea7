package dev.hingepoint.fit;

import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Length;
import java.util.Optional;

/**
 * One line of a plan: what to do first, then why.
 *
 * @param amount what to do, in a fitter's words and lengths, in both readings where there are two
 * @param compared the measurement that says so
 * @param rule what a fitter goes by
 * @param source of the rule; "common practice" where nobody published it
 * @param request the alteration that does it; empty where nothing of the catalogue is to be done
 */
public record PlanLine(
        Topic topic,
        String amount,
        Optional<Compared> compared,
        String rule,
        String source,
        Optional<AlterationRequest> request) {
    static final String COMMON_PRACTICE = "common practice";

    /** What a plan speaks of, in a fitter's order. */
    public enum Topic {
        SIZE("size"),
        CLOTH("cloth"),
        LENGTHS("lengths"),
        SHOULDERS("shoulders"),
        BUST_POINT("bust point"),
        BUST("bust"),
        WAIST_AND_HIP("waist and hip"),
        BACK_WAIST("back waist"),
        SLEEVE("sleeve"),
        GETTING_IN("getting in");

        private final String words;

        Topic(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** A measurement of the body beside what the pattern is drafted for. */
    public record Compared(String measurement, Length body, Length pattern) {
        static Compared of(String measurement, double body, double pattern) {
            return new Compared(measurement, new Length(body), new Length(pattern));
        }

        /** How much more the body measures. */
        public Length difference() {
            return new Length(body.mm() - pattern.mm());
        }
    }

    /** A line without a measurement or an alteration. */
    static PlanLine of(Topic topic, String amount, String rule, String source) {
        return new PlanLine(topic, amount, Optional.empty(), rule, source, Optional.empty());
    }

    PlanLine comparing(String measurement, double body, double pattern) {
        return new PlanLine(topic, amount, Optional.of(Compared.of(measurement, body, pattern)), rule, source, request);
    }

    PlanLine ordering(AlterationRequest ordered) {
        return new PlanLine(topic, amount, compared, rule, source, Optional.of(ordered));
    }
}
