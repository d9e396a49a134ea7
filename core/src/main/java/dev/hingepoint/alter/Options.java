package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The amounts and choices of one ordered alteration, read as the alteration asks for them. Every refusal names the alteration.
 *
 * <p>What is asked for as an amount can be {@linkplain #carriedTo carried} to a fraction: then the recipe does so much less of the same.
 */
public final class Options {
    private final String alteration;
    private final Map<String, Object> written;
    private final Map<String, Length> body;
    private final double fraction;

    private Options(String alteration, Map<String, Object> written, Map<String, Length> body, double fraction) {
        this.alteration = alteration;
        this.written = written;
        this.body = body;
        this.fraction = fraction;
    }

    public static Options of(AlterationRequest request) {
        return of(request, Map.of());
    }

    /** @param body the measurements of the body that is to be fitted, by name, as far as they are known */
    public static Options of(AlterationRequest request, Map<String, Length> body) {
        return new Options(request.name(), request.options(), Map.copyOf(body), 1);
    }

    /**
     * The same order, by a fraction of its amounts, each of its choices as it is.
     *
     * @param part more than 0, at most 1
     * @throws IllegalArgumentException for any other
     */
    public Options carriedTo(double part) {
        if (!(part > 0 && part <= 1)) {
            throw new IllegalArgumentException(
                    "an alteration is carried to more than nothing, at most to all: " + part);
        }
        return new Options(alteration, written, body, part);
    }

    /** How much of a whole amount is done: all of it, unless the order is {@linkplain #carriedTo carried} to a fraction. */
    public double carried(double whole) {
        return whole * fraction;
    }

    /** Whether less than all is done. */
    boolean isPartOnly() {
        return fraction < 1;
    }

    /** A measurement of the body: of the one that is to be fitted, else of the one that the size is drafted for. */
    public Optional<Length> body(Draft draft, String measure) {
        return Optional.ofNullable(body.get(measure))
                .or(() -> draft.pattern().card().bodyChart().body(draft.size()).map(charted -> charted.get(measure)));
    }

    /** @throws Refusal for an option that the alteration does not know */
    public Options knowing(String... names) {
        for (String name : written.keySet()) {
            if (!Arrays.asList(names).contains(name)) {
                throw refuse("alter.options.no-such-option", name, List.of(names));
            }
        }
        return this;
    }

    public List<String> names() {
        return List.copyOf(written.keySet());
    }

    public boolean has(String name) {
        return written.containsKey(name);
    }

    /** As it was written: a String, a Number or a Boolean. */
    public Optional<Object> raw(String name) {
        return Optional.ofNullable(written.get(name));
    }

    /** A length that says how, and not how much; a bare number is mm. */
    public Optional<Length> length(String name) {
        return raw(name).map(value -> {
            try {
                return Length.parse(value.toString(), Unit.MILLIMETRE);
            } catch (Refusal refusal) {
                throw refuse("alter.options.unreadable", name, refusal.reason().message());
            }
        });
    }

    /** How much is to be done, so far as it is {@linkplain #carriedTo carried}; a bare number is mm. */
    public Optional<Length> amount(String name) {
        return length(name).map(whole -> new Length(carried(whole.mm())));
    }

    /** @throws Refusal where it is not given */
    public Length requiredAmount(String name, String example) {
        return amount(name).orElseThrow(() -> refuse("alter.options.needs-amount", example));
    }

    /**
     * An amount in mm above nothing.
     *
     * @param otherwise what to order where it should go the other way
     * @throws Refusal where it is not given, or is nothing or less
     */
    public double positive(String name, String example, Message otherwise) {
        double amount = requiredAmount(name, example).mm();
        if (!(amount > 0)) {
            throw refuse("alter.options.not-positive", name, example, otherwise);
        }
        return amount;
    }

    public Optional<String> text(String name) {
        return raw(name).map(Object::toString);
    }

    /** One of a few words. */
    public Optional<String> choice(String name, String... choices) {
        Optional<String> chosen = text(name);
        if (chosen.isPresent() && !Arrays.asList(choices).contains(chosen.get())) {
            throw refuse("options.no-such-choice", name, chosen.get(), Message.joined("list.or", List.of(choices)));
        }
        return chosen;
    }

    /** Yes or no; no where it is not given. */
    public boolean flag(String name) {
        Optional<Object> value = raw(name);
        if (value.isEmpty()) {
            return false;
        }
        return switch (value.get().toString()) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default -> throw refuse("alter.options.yes-or-no", name, value.get());
        };
    }

    /** As a person would write it: {@code wedge: 12 mm, at: waist}. */
    @Override
    public String toString() {
        return written.entrySet().stream()
                .map(option -> option.getKey() + ": " + option.getValue())
                .collect(Collectors.joining(", "));
    }

    /** A refusal of what was ordered, with the words of a {@link Message}; of an alteration of one's own the key may be the words. */
    public Refusal refuse(String key, Object... arguments) {
        Message why = Message.of(key, arguments);
        return new Refusal(new Reason.Unreadable(Message.of("alter.options.refused", alteration, why), Where.UNKNOWN));
    }
}
