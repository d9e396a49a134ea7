package dev.hingepoint.svg.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How strokes are drawn on a page: what those have in common which a writer draws as one.
 *
 * @param width in mm
 * @param dashes dashes and gaps in mm, in turn; none for an unbroken line
 * @param offset how far in mm into its dashes a stroke begins
 */
record Look(double width, List<Double> dashes, double offset) {
    /** Strokes that look the same together, in the order of their styles. */
    static Map<Look, List<Stroke>> group(List<Stroke> strokes, double weight) {
        Map<Look, List<Stroke>> groups = new LinkedHashMap<>();
        strokes.stream()
                .sorted(Comparator.comparing(Stroke::style))
                .forEach(stroke -> groups.computeIfAbsent(of(stroke, weight), look -> new ArrayList<>())
                        .add(stroke));
        return groups;
    }

    private static Look of(Stroke stroke, double weight) {
        Style style = stroke.style();
        List<Double> dashes =
                style.dashes().stream().map(length -> length * weight).toList();
        double offset = dashes.isEmpty() ? 0 : stroke.before() % (style.dashLength() * weight);
        return new Look(style.width() * weight, dashes, offset);
    }
}
