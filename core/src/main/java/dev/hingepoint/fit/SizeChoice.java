package dev.hingepoint.fit;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.fit.PlanLine.Topic;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The size, by the upper bust: shoulders and armholes then fit, and the bust is a matter of the front (Cooperative Extension leaflet, "Principles of
 * Pattern Alteration"). Of two sizes equally near, the smaller for knits and the larger for wovens.
 *
 * @param more how much in mm more than its own ease the bust needs, since the cloth stretches less
 */
record SizeChoice(String size, double more, List<PlanLine> lines, List<String> problems) {
    private static final String LEAFLET = "Cooperative Extension leaflet, Principles of Pattern Alteration";

    /** A shoulder this far in mm from the chart's is far. */
    SizeChoice {
        lines = List.copyOf(lines);
        problems = List.copyOf(problems);
    }

    static SizeChoice of(Pattern pattern, SizeChart chart, Body body, FitRules rules) {
        Card card = pattern.card();
        boolean isKnit = card.isKnit();
        OptionalDouble upper = body.mm(Measure.UPPER_BUST);
        OptionalDouble full = body.mm(Measure.FULL_BUST);
        String column = "upper bust";
        String rule = "the size nearest by the upper bust; ties to the " + (isKnit ? "smaller" : "larger");
        String source = LEAFLET;
        double value;
        if (upper.isPresent() && chart.has("upper bust")) {
            value = upper.getAsDouble();
        } else if (upper.isPresent()
                && chart.has("full bust")
                && card.cupDifference().isPresent()) {
            column = "full bust";
            value = upper.getAsDouble() + card.cupDifference().get().mm();
            rule += "; the chart has no upper bust, so upper bust + cup difference is looked up as full bust";
            source += "; the sum is derived";
        } else if (full.isPresent() && chart.has("full bust")) {
            column = "full bust";
            value = full.getAsDouble();
            rule =
                    "upper bust is missing, on the body or the chart, so the size is taken by the full bust: shoulders may "
                            + "be too wide; measure the upper bust and plan again";
            source = PlanLine.COMMON_PRACTICE;
        } else {
            throw new Refusal(new Reason.Missing(Message.of("fit.size-choice.no-upper-bust"), Where.UNKNOWN));
        }
        String nearest = chart.nearest(column, value, !isKnit);
        List<PlanLine> lines = new ArrayList<>();
        // a size that was altered has been chosen, for its cloth, already
        double more = chart.altered(nearest).isPresent()
                ? 0
                : EaseRule.moreForLessStretch(pattern.in(nearest), chart, body, rules);
        String size = nearest;
        if (more > 0.5) {
            size = chart.nearest(column, value + more, !isKnit);
            lines.add(PlanLine.of(
                    Topic.CLOTH,
                    size.equals(nearest)
                            ? "nothing: the bust needs " + Planner.mm(more) + " more, less than half a size"
                            : "size " + size + " in place of " + nearest + ": the bust needs " + Planner.mm(more)
                                    + " more",
                    "this cloth stretches less than the draft asks for, so the garment must be larger",
                    "derived: body x (1 - e x stretch / stretch asked for)"));
        }
        double drafted = chart.body(size, column).orElseThrow();
        lines.add(
                0,
                PlanLine.of(Topic.SIZE, "size " + size + neighbours(chart, column, size), rule, source)
                        .comparing(column, value, drafted));
        List<String> problems = new ArrayList<>();
        if (chart.isOutside(column, value)) {
            problems.add("a body of " + Planner.mm(value) + " at the " + column + " is outside the chart; size " + size
                    + " is the nearest, and will not fit by alterations alone");
        }
        stretchDown(card, body, lines);
        return new SizeChoice(size, size.equals(nearest) ? 0 : more, lines, problems);
    }

    private static String neighbours(SizeChart chart, String column, String size) {
        List<String> told = new ArrayList<>();
        for (int steps : new int[] {-1, 1}) {
            chart.neighbour(size, steps)
                    .ifPresent(other -> told.add(
                            other + ": " + Planner.mm(chart.body(other, column).orElseThrow())));
        }
        return told.isEmpty() ? "" : " (neighbours " + String.join(", ", told) + ")";
    }

    private static void stretchDown(Card card, Body body, List<PlanLine> lines) {
        body.cloth()
                .filter(cloth -> cloth.down() > card.stretchDown())
                .ifPresent(cloth -> lines.add(PlanLine.of(
                        Topic.CLOTH,
                        "nothing: the cloth drops as it is worn; hang the garment for a day before you mark the hem",
                        "the cloth stretches " + percent(cloth.down()) + " down, and the draft expects "
                                + percent(card.stretchDown()),
                        PlanLine.COMMON_PRACTICE)));
    }

    private static String percent(double fraction) {
        return Math.round(fraction * 100) + " %";
    }
}
