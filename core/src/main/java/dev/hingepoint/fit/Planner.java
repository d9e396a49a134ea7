package dev.hingepoint.fit;

import dev.hingepoint.Refusal;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.check.Measurements;
import dev.hingepoint.fit.PlanLine.Topic;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Pattern;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Plans as a fitter goes: size, lengths, bust, waist and hip, back waist; each alteration is done on the paper as soon as it is planned, and the
 * next one is measured on what that left. So nothing is widened twice, and what the plan promises the altered pieces have.
 */
public final class Planner {
    /** A shoulder as near as this, in mm, to the chart's is right. */
    private static final double FAR_SHOULDER = 10;

    private final List<PlanLine> lines = new ArrayList<>();
    private final List<AlterationRequest> alterations = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();
    private final Body body;
    private final FitRules rules;
    private final SizeChart chart;

    /** The chosen size as the chart speaks of it. */
    private Draft drafted;

    private Draft working;

    private Planner(Pattern pattern, Body body, FitRules rules) {
        this.body = body;
        this.rules = rules;
        this.chart = new SizeChart(pattern);
    }

    /**
     * Plans by the usual rules.
     *
     * @throws Refusal where no size can be chosen: no upper or full bust, or no chart
     */
    public static Plan plan(Pattern pattern, Body body) {
        return plan(pattern, body, FitRules.USUAL);
    }

    /** The same by rules of your own. */
    public static Plan plan(Pattern pattern, Body body, FitRules rules) {
        return new Planner(pattern, body, rules).plan(pattern);
    }

    private Plan plan(Pattern pattern) {
        SizeChoice choice = SizeChoice.of(pattern, chart, body, rules);
        lines.addAll(choice.lines());
        problems.addAll(choice.problems());
        Optional<String> alteredFront = chart.altered(choice.size()).flatMap(altered -> altered.front());
        drafted = pattern.in(choice.size(), alteredFront);
        working = drafted;
        List<Ease> before = ease();
        BackWaistPlan backWaist = new BackWaistPlan(this, before);
        backWaist.lengths();
        shoulders();
        BustPlan bust = new BustPlan(this);
        bust.plan(choice.more());
        new GirthPlan(this).plan(before, bust.given());
        backWaist.plan();
        sleeve();
        List<Ease> after = ease();
        after.stream().filter(ease -> !ease.canBeWorn()).forEach(this::cannotBeWorn);
        for (GettingIn.Narrow narrow : GettingIn.into(working, body, rules)) {
            add(PlanLine.of(
                    Topic.GETTING_IN,
                    narrow.sentence(),
                    "what is not opened must pass head, bust or hips",
                    PlanLine.COMMON_PRACTICE));
            if (!narrow.isWideEnough()) {
                problems.add(narrow.sentence());
            }
        }
        return new Plan(
                choice.size(),
                working.front(),
                lines.stream().sorted(Comparator.comparing(PlanLine::topic)).toList(),
                alterations,
                before,
                after,
                problems,
                drafted,
                working);
    }

    Body body() {
        return body;
    }

    FitRules rules() {
        return rules;
    }

    SizeChart chart() {
        return chart;
    }

    Draft drafted() {
        return drafted;
    }

    /** The size with all that is planned so far done to it. */
    Draft working() {
        return working;
    }

    boolean isKnit() {
        return drafted.pattern().card().isKnit();
    }

    void sewWithFront(String front) {
        working = working.pattern().in(working.size(), Optional.of(front));
    }

    /** The ease of what is planned so far, level by level. */
    List<Ease> ease() {
        return FitCheck.ease(working, drafted, chart, body, rules);
    }

    void add(PlanLine line) {
        lines.add(line);
    }

    void problem(String problem) {
        problems.add(problem);
    }

    /** What was not measured, and what cannot be planned without it. */
    void missing(Topic topic, String measurement, String what) {
        add(PlanLine.of(topic, "not planned: " + what, measurement + " is missing", "measure it, and plan again"));
    }

    /** Does an alteration at once, and writes its line; a refusal goes back to the caller. */
    void alter(PlanLine line, AlterationRequest request) {
        working = Catalogue.alter(working, request).draft();
        alterations.add(request);
        add(line.ordering(request));
    }

    /** Does an alteration at once; where it is refused, the plan says why, and that it does not hold up. */
    void alterOrSay(PlanLine line, AlterationRequest request) {
        try {
            alter(line, request);
        } catch (Refusal refusal) {
            String amount = "not planned: " + refusal.reason().sentence();
            add(PlanLine.of(line.topic(), amount, line.rule(), line.source()));
            problem(amount);
        }
    }

    /** Whether the chosen size was altered so before: what the chart has no column for cannot be read off the altered pattern. */
    boolean wasDone(String... names) {
        return chart.altered(drafted.size()).stream()
                .flatMap(altered -> altered.alterations().stream())
                .anyMatch(request -> List.of(names).contains(request.name()));
    }

    private void shoulders() {
        OptionalDouble measured = body.mm(Measure.SHOULDER);
        OptionalDouble charted = chart.body(drafted.size(), Measure.SHOULDER.words());
        if (measured.isEmpty() || charted.isEmpty() || wasDone("broad shoulders", "narrow shoulders")) {
            return;
        }
        double wider = Math.rint(measured.getAsDouble() - charted.getAsDouble());
        if (Math.abs(wider) <= FAR_SHOULDER) {
            return;
        }
        String name = wider > 0 ? "broad shoulders" : "narrow shoulders";
        PlanLine line = PlanLine.of(
                        Topic.SHOULDERS,
                        name + ": each shoulder " + mm(Math.abs(wider)) + (wider > 0 ? " longer" : " shorter"),
                        "a shoulder more than " + mm(FAR_SHOULDER) + " from the chart is altered",
                        PlanLine.COMMON_PRACTICE)
                .comparing(Measure.SHOULDER.words(), measured.getAsDouble(), charted.getAsDouble());
        alterOrSay(line, request(name, "by", mm(Math.abs(wider))));
    }

    private void cannotBeWorn(Ease ease) {
        problems.add(
                "the " + ease.level() + " is " + mm(ease.garment()) + " and cannot be worn: the cloth would have to "
                        + "reach " + mm(ease.body()) + ", and its stretch lets it only from " + mm(ease.leastGirth()));
    }

    private void sleeve() {
        OptionalDouble arm = body.mm(Measure.UPPER_ARM);
        Double sleeve = Measurements.of(working).get("upper arm girth");
        if (arm.isEmpty() || sleeve == null || isKnit()) {
            return;
        }
        double least = 2 * 25.4;
        double ease = sleeve - arm.getAsDouble();
        PlanLine line = PlanLine.of(
                        Topic.SLEEVE,
                        ease >= least
                                ? "nothing: the sleeve has " + mm(ease) + " over the arm"
                                : "widen the sleeve by " + mm(Math.ceil(least - ease)) + " at the upper arm",
                        "the sleeve at the upper arm is at least 2 in more than the arm",
                        "Threads (2021), Set-in Sleeve Solutions")
                .comparing("upper arm", arm.getAsDouble(), sleeve);
        if (ease >= least) {
            add(line);
            return;
        }
        try {
            alter(line, new AlterationRequest("full upper arm", Map.of("by", mm(Math.ceil(least - ease)))));
        } catch (Refusal refusal) {
            add(line);
            problems.add("the sleeve is " + mm(least - ease) + " too narrow at the upper arm: "
                    + refusal.reason().sentence());
        }
    }

    /** An order for an alteration, its options in the order given: each a name and a value. */
    static AlterationRequest request(String name, String... options) {
        Map<String, Object> inOrder = new LinkedHashMap<>();
        for (int i = 0; i < options.length; i += 2) {
            inOrder.put(options[i], options[i + 1]);
        }
        return new AlterationRequest(name, inOrder);
    }

    /** As a person says it: whole millimetres. */
    static String mm(double mm) {
        return Math.round(mm) + " mm";
    }
}
