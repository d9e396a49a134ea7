package dev.hingepoint.fit;

import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Pattern;
import java.util.List;
import java.util.Map;

/** Whether a size, as it is drawn or altered, has its ease on a body: in mm of the whole girth, measured on the pieces with their darts closed. Nothing is changed. */
public final class FitCheck {
    /** The levels that a body is measured at, from above. */
    public static final List<String> LEVELS = List.of("bust", "waist", "high hip", "hip");

    private FitCheck() {}

    /**
     * The ease at every level that body, chart and drawing have.
     *
     * @throws dev.hingepoint.Refusal where the card has no body chart
     */
    public static List<Ease> ease(Draft garment, Body body, FitRules rules) {
        return ease(garment, garment, new SizeChart(garment.pattern()), body, rules);
    }

    /**
     * The ease of a garment altered from a size.
     *
     * @param drafted the size that the chart speaks of
     */
    public static List<Ease> ease(Draft garment, Draft drafted, Body body, FitRules rules) {
        return ease(garment, drafted, new SizeChart(drafted.pattern()), body, rules);
    }

    static List<Ease> ease(Draft garment, Draft drafted, SizeChart chart, Body body, FitRules rules) {
        EaseRule rule = new EaseRule(drafted, chart, body, rules);
        List<String> drawn = garment.levels();
        return LEVELS.stream()
                .filter(drawn::contains)
                .flatMap(level -> rule.at(level, garment).stream())
                .toList();
    }

    /** The body that a size is drafted for, or that it fits since it was altered; nothing where the card does not say. */
    public static Body charted(Pattern pattern, String size) {
        return pattern.card()
                .altered()
                .filter(altered ->
                        altered.size().equals(size) && !altered.fits().isEmpty())
                .map(altered -> Body.of(altered.fits()))
                .or(() -> pattern.card().bodyChart().body(size).map(Body::of))
                .orElseGet(() -> Body.of(Map.of()));
    }
}
