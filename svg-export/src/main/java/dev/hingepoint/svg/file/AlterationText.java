package dev.hingepoint.svg.file;

import dev.hingepoint.pattern.AlterationRequest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One ordered alteration in YAML: {@code full bust: {spread: 20 mm}}. */
final class AlterationText {
    private AlterationText() {}

    static AlterationRequest read(Yaml item) {
        if (item.keys().size() != 1) {
            throw item.refuse("file.alteration.how-written");
        }
        String name = item.keys().get(0);
        Yaml options = item.map(name).orElseThrow(() -> item.refuse("file.alteration.needs-amounts", name));
        Map<String, Object> values = new LinkedHashMap<>();
        for (String key : options.keys()) {
            Object value = options.raw(key).orElseThrow(() -> options.refuse("file.no-value", key));
            values.put(key, value instanceof List<?> list ? words(options, key, list) : scalar(options, key, value));
        }
        return new AlterationRequest(name, values);
    }

    private static String words(Yaml options, String key, List<?> list) {
        return String.join(
                ", ",
                list.stream().map(item -> scalar(options, key, item).toString()).toList());
    }

    private static Object scalar(Yaml options, String key, Object value) {
        if (value instanceof String || value instanceof Number || value instanceof Boolean) {
            return value;
        }
        throw options.refuse("file.one-value", key);
    }

    /** In the same form, on one line. */
    static String write(AlterationRequest request) {
        List<String> options = request.options().entrySet().stream()
                .map(entry -> CardWriter.plain(entry.getKey()) + ": "
                        + (entry.getValue() instanceof String text
                                ? CardWriter.plain(text)
                                : entry.getValue().toString()))
                .toList();
        return CardWriter.plain(request.name()) + ": {" + String.join(", ", options) + "}";
    }
}
