package dev.hingepoint.pattern;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * An alteration as it is ordered, and as an altered card remembers it.
 *
 * @param name as in the catalogue
 * @param options as written: each value a String, a Number or a Boolean
 */
public record AlterationRequest(String name, Map<String, Object> options) {
    public AlterationRequest {
        options = Collections.unmodifiableMap(new LinkedHashMap<>(options));
    }

    /** An alteration with no options yet. */
    public static AlterationRequest of(String name) {
        return new AlterationRequest(name, Map.of());
    }

    /** The same with one option more, after those that there are: {@code of("hip blend").with("waist", "42").with("hip", "44")}. */
    public AlterationRequest with(String option, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(options);
        more.put(option, value);
        return new AlterationRequest(name, more);
    }
}
