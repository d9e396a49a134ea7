package dev.hingepoint.alter;

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

/** The amounts and choices of one ordered alteration, read as the alteration asks for them. Every refusal names the alteration. */
public final class Options {
    private final String alteration;
    private final Map<String, Object> written;
    private final Map<String, Length> body;

    private Options(String alteration, Map<String, Object> written, Map<String, Length> body) {
        this.alteration = alteration;
        this.written = written;
        this.body = body;
    }

    public static Options of(AlterationRequest request) {
        return of(request, Map.of());
    }

    /** @param body the measurements of the body that is to be fitted, by name, as far as they are known */
    public static Options of(AlterationRequest request, Map<String, Length> body) {
        return new Options(request.name(), request.options(), Map.copyOf(body));
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
                throw refuse("there is no option '" + name + "'; it knows " + String.join(", ", names));
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

    /** A length; a bare number is mm. */
    public Optional<Length> length(String name) {
        return raw(name).map(value -> {
            try {
                return Length.parse(value.toString(), Unit.MILLIMETRE);
            } catch (Refusal refusal) {
                throw refuse(name + ": " + refusal.reason().what());
            }
        });
    }

    /** @throws Refusal where it is not given */
    public Length requiredLength(String name, String example) {
        return length(name).orElseThrow(() -> refuse("it needs an amount; write for example " + example));
    }

    /**
     * An amount in mm above nothing.
     *
     * @param otherwise what to order where it should go the other way
     * @throws Refusal where it is not given, or is nothing or less
     */
    public double positive(String name, String example, String otherwise) {
        double amount = requiredLength(name, example).mm();
        if (!(amount > 0)) {
            throw refuse(name + " must be more than 0 mm, as in " + example + "; for the other way " + otherwise);
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
            throw refuse(name + " cannot be '" + chosen.get() + "'; it can be " + String.join(" or ", choices));
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
            default -> throw refuse(name + " must be yes or no, not '" + value.get() + "'");
        };
    }

    /** A refusal of what was ordered. */
    public Refusal refuse(String what) {
        return new Refusal(new Reason.Unreadable(alteration + ": " + what, Where.UNKNOWN));
    }
}
