package dev.hingepoint.fit;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
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
            throw refusal(Message.of("fit.body.swapped", told(full), told(upper)));
        }
    }

    public static Body of(Map<String, Length> lengths) {
        return new Body(lengths, Optional.empty(), Optional.empty());
    }

    private static void requirePlausible(String name, Length length) {
        if (!(length.mm() > 0 && length.mm() <= MOST)) {
            throw refusal(Message.of("fit.body.impossible", name, told(length)));
        }
    }

    private static Refusal implausible(Measure measure, Length length, Map<String, Length> all) {
        Message said = Message.of(
                "fit.body.implausible",
                measure.words(),
                told(length),
                Quantity.millimetres(measure.least()),
                Quantity.millimetres(measure.most()));
        for (Slip slip : Slip.values()) {
            if (slip.explains(all)) {
                return refusal(Message.of("fit.body.all-slipped", said, slip.words));
            }
        }
        for (Slip slip : Slip.values()) {
            if (measure.isPlausible(length.mm() * slip.factor)) {
                return refusal(Message.of("fit.body.one-slipped", said, slip.words));
            }
        }
        return refusal(Message.of("fit.body.measure-again", said));
    }

    private static Quantity told(Length length) {
        return Quantity.millimetres(length.mm());
    }

    private static Refusal refusal(Message why) {
        return new Refusal(new Reason.Unreadable(why, Where.UNKNOWN));
    }

    /** What people get wrong with units, and by which factor the values are then off. */
    private enum Slip {
        INCHES_AS_CENTIMETRES(2.54, Message.of("fit.body.inches-as-centimetres")),
        CENTIMETRES_AS_MILLIMETRES(10, Message.of("fit.body.centimetres-as-millimetres")),
        INCHES_AS_MILLIMETRES(25.4, Message.of("fit.body.inches-as-millimetres")),
        CENTIMETRES_AS_INCHES(1 / 2.54, Message.of("fit.body.centimetres-as-inches")),
        MILLIMETRES_AS_CENTIMETRES(0.1, Message.of("fit.body.millimetres-as-centimetres"));

        private final double factor;
        private final Message words;

        Slip(double factor, Message words) {
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
