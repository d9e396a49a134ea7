package dev.hingepoint.fit;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.pattern.Length;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One body, what was seen on it, and the cloth that it is sewn in.
 *
 * @param lengths by name, see {@link Measure}; others are kept and not used
 * @param cloth empty for a cloth that is what the pattern asks for
 */
public record Body(Map<String, Length> lengths, Optional<Observed> observed, Optional<Cloth> cloth) {
    private static final double MOST = 3000;

    /** A full bust this much smaller in mm than the upper bust is a slip of the pen. */
    private static final double SWAPPED = 30;

    /** @throws Refusal for lengths that no body has, with a guess at the cause */
    public Body {
        lengths = Collections.unmodifiableMap(new LinkedHashMap<>(lengths));
        lengths.forEach(Body::requirePlausible);
        for (Map.Entry<String, Length> entry : lengths.entrySet()) {
            Optional<Measure> measure = Measure.named(entry.getKey());
            if (measure.isPresent()
                    && !measure.get().isPlausible(entry.getValue().mm())) {
                throw implausible(measure.get(), entry.getValue(), lengths);
            }
        }
        Length upper = lengths.get(Measure.UPPER_BUST.words());
        Length full = lengths.get(Measure.FULL_BUST.words());
        if (upper != null && full != null && full.mm() < upper.mm() - SWAPPED) {
            throw refusal("full bust " + full + " is smaller than upper bust " + upper + "; are the two swapped?");
        }
    }

    public static Body of(Map<String, Length> lengths) {
        return new Body(lengths, Optional.empty(), Optional.empty());
    }

    private static void requirePlausible(String name, Length length) {
        if (!(length.mm() > 0 && length.mm() <= MOST)) {
            throw refusal(name + " cannot be " + length + " on a body");
        }
    }

    private static Refusal implausible(Measure measure, Length length, Map<String, Length> all) {
        String range = new Length(measure.least()) + " to " + new Length(measure.most());
        String said = measure.words() + " " + length + " is not a body's, which is " + range;
        for (Slip slip : Slip.values()) {
            if (slip.explains(all)) {
                return refusal(said + "; all of it together looks like " + slip.words);
            }
        }
        for (Slip slip : Slip.values()) {
            if (measure.isPlausible(length.mm() * slip.factor)) {
                return refusal(said + "; this one looks like " + slip.words);
            }
        }
        return refusal(said + "; measure again");
    }

    private static Refusal refusal(String what) {
        return new Refusal(new Reason.Unreadable(what, Where.UNKNOWN));
    }

    /** What people get wrong with units, and by which factor the values are then off. */
    private enum Slip {
        INCHES_AS_CENTIMETRES(2.54, "inches written as cm: write unit: in"),
        CENTIMETRES_AS_MILLIMETRES(10, "cm written as mm: write unit: cm"),
        INCHES_AS_MILLIMETRES(25.4, "inches written as mm: write unit: in"),
        CENTIMETRES_AS_INCHES(1 / 2.54, "cm written as inches: write unit: cm"),
        MILLIMETRES_AS_CENTIMETRES(0.1, "mm written as cm: write unit: mm");

        private final double factor;
        private final String words;

        Slip(double factor, String words) {
            this.factor = factor;
            this.words = words;
        }

        boolean explains(Map<String, Length> lengths) {
            return lengths.entrySet().stream()
                    .allMatch(entry -> Measure.named(entry.getKey())
                            .map(measure -> measure.isPlausible(entry.getValue().mm() * factor))
                            .orElse(true));
        }
    }

    /** In mm; empty where it was not measured. */
    public OptionalDouble mm(String name) {
        Length length = lengths.get(name);
        return length == null ? OptionalDouble.empty() : OptionalDouble.of(length.mm());
    }

    /** In mm; empty where it was not measured. */
    public OptionalDouble mm(Measure measure) {
        return mm(measure.words());
    }
}
