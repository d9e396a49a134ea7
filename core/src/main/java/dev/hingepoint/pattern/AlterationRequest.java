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
}
