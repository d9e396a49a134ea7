package dev.hingepoint.fit;

import dev.hingepoint.pattern.BodyChart;
import dev.hingepoint.pattern.Draft;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What ease a garment of one pattern and size should have on one body. Aimed at is the draft's own: finished girth of the size - the body it is
 * drafted for. In woven cloth it is never below the published floor, nor is the floor above the draft's own. By size the ease may lie half a
 * grade step from the aim.
 *
 * <p>Where the draft is smaller than the body, by the share e, for cloth of stretch p0, and the cloth stretches by p &lt; p0, the girth needed is
 * body (1 - e p / p0), and at bust and hip no less than leaves the usual share of the stretch unused. Derived: tension is taken to grow with the
 * share of the stretch that is used.
 */
final class EaseRule {
    /** Central Washington University costume text, ch. 16: bust 1 1/2, waist of a dress 3/4, hip 2 in, at the least; high hip as the waist, common practice. */
    private static final Map<String, Double> FLOORS =
            Map.of("bust", 1.5 * 25.4, "waist", 0.75 * 25.4, "high hip", 0.75 * 25.4, "hip", 2 * 25.4);

    /** By amount, girths are met within this many mm. */
    static final double EXACT = 2;

    /** Half a grade step in mm where there is only one size. */
    private static final double ONE_SIZE = 10;

    private final Draft drafted;
    private final SizeChart chart;
    private final Body body;
    private final FitRules rules;
    private final double needed;
    private final double stretch;

    /** @param drafted the size that the chart speaks of, with its front */
    EaseRule(Draft drafted, SizeChart chart, Body body, FitRules rules) {
        this.drafted = drafted;
        this.chart = chart;
        this.body = body;
        this.rules = rules;
        this.needed = drafted.pattern().card().stretchAcross();
        this.stretch = body.cloth().map(Cloth::across).orElse(needed);
    }

    boolean isKnit() {
        return needed > 0;
    }

    /** The ease at a level; empty where the body, the chart or the drawing does not have it. */
    Optional<Ease> at(String level, Draft garment) {
        Optional<String> column = BodyChart.column(level);
        if (column.isEmpty() || !drafted.levels().contains(level)) {
            return Optional.empty();
        }
        OptionalDouble measured = body.mm(column.get());
        OptionalDouble charted = chart.body(drafted.size(), column.get());
        if (measured.isEmpty()) {
            return Optional.empty();
        }
        double leastGirth = new Cloth(stretch, 0).leastGirth(measured.getAsDouble());
        if (charted.isEmpty()) {
            double floor = isKnit() ? leastGirth - measured.getAsDouble() : FLOORS.get(level);
            return Optional.of(new Ease(
                    level,
                    column.get(),
                    measured.getAsDouble(),
                    garment.girth(level),
                    floor,
                    floor,
                    Double.POSITIVE_INFINITY,
                    leastGirth));
        }
        double own = drafted.girth(level) - charted.getAsDouble();
        // the draft's share of stretch is that of the size as it was drafted, whatever it was altered to since
        double draftedFor = chart.unaltered(drafted.size(), column.get()).orElse(charted.getAsDouble());
        double aim = aim(level, measured.getAsDouble(), draftedFor, own);
        double within = within(level, measured.getAsDouble() + aim);
        double floor = isKnit() ? Double.NEGATIVE_INFINITY : Math.min(FLOORS.get(level), own);
        return Optional.of(new Ease(
                level,
                column.get(),
                measured.getAsDouble(),
                garment.girth(level),
                aim,
                Math.max(floor, aim - within),
                // no blend is made for the high hip: it need only be wide enough
                level.equals("high hip") ? Double.POSITIVE_INFINITY : aim + within,
                leastGirth));
    }

    private double aim(String level, double measured, double charted, double own) {
        if (own >= 0 || stretch >= needed) {
            return own;
        }
        double share = -own / charted;
        double girth = measured * (1 - share * stretch / needed);
        boolean isTight = level.equals("bust") || level.equals("hip");
        double atLeast = isTight ? measured / (1 + stretch * rules.stretchShare()) : 0;
        return Math.max(girth, atLeast) - measured;
    }

    /** How far in mm the ease may lie from the aim. */
    private double within(String level, double girth) {
        double step = rules.exact() && !level.equals("high hip") ? EXACT : halfStep(level, girth);
        return level.equals("bust") ? Math.max(step, rules.leastBust(isKnit())) : step;
    }

    /** Half of the grade step round a girth: of the two, the larger. */
    private double halfStep(String level, double girth) {
        List<Double> girths = chart.sizes().stream()
                .filter(size -> drafted.drawn().in(size).levels().contains(level))
                .map(size -> girth(level, size))
                .sorted()
                .toList();
        if (girths.size() < 2) {
            return ONE_SIZE;
        }
        double step = 0;
        for (int i = 1; i < girths.size(); i++) {
            boolean isFirst = i == 1;
            boolean isLast = i == girths.size() - 1;
            boolean isRound =
                    (isFirst || girth >= girths.get(i - 1) - EXACT) && (isLast || girth <= girths.get(i) + EXACT);
            if (isRound) {
                step = Math.max(step, girths.get(i) - girths.get(i - 1));
            }
        }
        return step / 2;
    }

    /** The girth of a size as it was drafted: one that was altered since had its own ease over the body that it was drafted for. */
    private double girth(String level, String size) {
        double girth = sized(size).girth(level);
        String column = BodyChart.column(level).orElseThrow();
        double now = chart.body(size, column).orElse(0);
        return girth - now + chart.unaltered(size, column).orElse(now);
    }

    /** Another size as drawn, with the same front where it is drawn in that size. */
    Draft sized(String size) {
        boolean hasFront = drafted.front().isEmpty()
                || drafted.drawn().nest().stream()
                        .anyMatch(piece ->
                                piece.size().equals(size) && piece.front().equals(drafted.front()));
        return drafted.drawn().in(size, hasFront ? drafted.front() : Optional.empty());
    }

    /** How much in mm more girth the bust needs than the draft gives it, since the cloth stretches less. */
    static double moreForLessStretch(Draft drafted, SizeChart chart, Body body, FitRules rules) {
        EaseRule rule = new EaseRule(drafted, chart, body, rules);
        OptionalDouble charted = chart.body(drafted.size(), "full bust");
        OptionalDouble measured = body.mm(Measure.FULL_BUST);
        if (charted.isEmpty() || measured.isEmpty() || !drafted.levels().contains("bust")) {
            return 0;
        }
        double own = drafted.girth("bust") - charted.getAsDouble();
        return rule.aim("bust", measured.getAsDouble(), charted.getAsDouble(), own) - own;
    }
}
