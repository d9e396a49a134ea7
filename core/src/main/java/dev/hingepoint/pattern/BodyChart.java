package dev.hingepoint.pattern;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The body that each size is drafted for.
 *
 * @param unit that the card is written in
 * @param bySize measurement by measurement, in body.yaml's words
 */
public record BodyChart(Unit unit, Map<String, Map<String, Length>> bySize) {
    public static final BodyChart NONE = new BodyChart(Unit.MILLIMETRE, Map.of());

    public BodyChart {
        Map<String, Map<String, Length>> copy = new LinkedHashMap<>();
        bySize.forEach((size, body) -> copy.put(size, Collections.unmodifiableMap(new LinkedHashMap<>(body))));
        bySize = Collections.unmodifiableMap(copy);
    }

    public List<String> sizes() {
        return List.copyOf(bySize.keySet());
    }

    public Optional<Map<String, Length>> body(String size) {
        return Optional.ofNullable(bySize.get(size));
    }
}
