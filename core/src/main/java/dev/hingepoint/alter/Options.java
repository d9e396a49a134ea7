package dev.hingepoint.alter;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.pattern.AlterationRequest;
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

    private Options(String alteration, Map<String, Object> written) {
        this.alteration = alteration;
        this.written = written;
    }

    public static Options of(AlterationRequest request) {
        return new Options(request.name(), request.options());
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
