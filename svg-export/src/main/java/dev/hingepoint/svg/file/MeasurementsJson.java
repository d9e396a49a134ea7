package dev.hingepoint.svg.file;

import dev.hingepoint.check.Measurements;
import dev.hingepoint.fit.Ease;
import dev.hingepoint.fit.GettingIn;
import dev.hingepoint.pattern.Draft;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes finished measurements as JSON: lengths in mm. */
public final class MeasurementsJson {
    private MeasurementsJson() {}

    /**
     * @param drafts by size
     * @param ease by size; empty where no body is given
     * @param narrow by size: what one must get in through
     */
    public static String write(
            String pattern,
            Map<String, Draft> drafts,
            Map<String, List<Ease>> ease,
            Map<String, List<GettingIn.Narrow>> narrow) {
        String sizes = drafts.entrySet().stream()
                .map(entry -> "  " + LedgerJson.text(entry.getKey()) + ": {\"finished\": "
                        + finished(Measurements.of(entry.getValue()))
                        + (ease.containsKey(entry.getKey()) ? ",\n    \"ease\": " + ease(ease.get(entry.getKey())) : "")
                        + ",\n    \"getting in\": " + narrow(narrow.getOrDefault(entry.getKey(), List.of())) + "}")
                .collect(Collectors.joining(",\n"));
        return "{\"pattern\": " + LedgerJson.text(pattern) + ", \"unit\": \"mm\",\n \"sizes\": {\n" + sizes + "}}\n";
    }

    private static String finished(Map<String, Double> finished) {
        return finished.entrySet().stream()
                .map(entry -> LedgerJson.text(entry.getKey()) + ": " + Numbers.of(entry.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    private static String ease(List<Ease> rows) {
        return rows.stream()
                .map(row -> "{\"level\": " + LedgerJson.text(row.level()) + ", \"body\": " + Numbers.of(row.body())
                        + ", \"garment\": " + Numbers.of(row.garment()) + ", \"ease\": " + Numbers.of(row.ease())
                        + ", \"least\": " + Numbers.of(row.least()) + ", \"most\": "
                        + (Double.isInfinite(row.most()) ? "null" : Numbers.of(row.most())) + ", \"right\": "
                        + row.isRight() + "}")
                .collect(Collectors.joining(", ", "[", "]"));
    }

    private static String narrow(List<GettingIn.Narrow> places) {
        return places.stream()
                .map(place -> "{\"place\": " + LedgerJson.text(place.place()) + ", \"opens\": "
                        + Numbers.of(place.opens()) + ", \"needed\": " + Numbers.of(place.needed())
                        + ", \"wide enough\": " + place.isWideEnough()
                        + (place.opening().isPresent()
                                ? ", \"opening\": " + Numbers.of(place.opening().getAsDouble())
                                : "")
                        + "}")
                .collect(Collectors.joining(", ", "[", "]"));
    }
}
