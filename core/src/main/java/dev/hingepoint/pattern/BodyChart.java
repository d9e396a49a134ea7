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

    /** The chart's column for each level that a body is measured at. */
    private static final Map<String, String> COLUMNS =
            Map.of("bust", "full bust", "waist", "waist", "high hip", "high hip", "hip", "hip");

    public BodyChart {
        Map<String, Map<String, Length>> copy = new LinkedHashMap<>();
        bySize.forEach((size, body) -> copy.put(size, Collections.unmodifiableMap(new LinkedHashMap<>(body))));
        bySize = Collections.unmodifiableMap(copy);
    }

    /** The column, in body.yaml's words, that a level is measured by; empty where bodies are not measured there. */
    public static Optional<String> column(String level) {
        return Optional.ofNullable(COLUMNS.get(level));
    }

    public List<String> sizes() {
        return List.copyOf(bySize.keySet());
    }

    public Optional<Map<String, Length>> body(String size) {
        return Optional.ofNullable(bySize.get(size));
    }
}
