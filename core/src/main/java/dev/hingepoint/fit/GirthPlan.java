package dev.hingepoint.fit;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.fit.PlanLine.Topic;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.BodyChart;
import dev.hingepoint.pattern.Draft;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Waist and hip, in or out, counted after what front and bust alteration gave there: by the size whose girth comes nearest to body + ease, or, beyond
 * the sizes drawn and where rules ask for exactness, by amount.
 */
final class GirthPlan {
    static final List<String> LEVELS = List.of("waist", "hip");

    /** A blend of less in mm round the body is not worth its cuts. */
    private static final double NEGLIGIBLE = 4;

    private static final String SOURCE =
            "ease: the draft's own, floor from Central Washington University costume text, ch. 16";

    private final Planner planner;

    GirthPlan(Planner planner) {
        this.planner = planner;
    }

    /** What one level is to become: a size, or an amount; and the line that says so. */
    private record Wanted(String level, String option, PlanLine line) {}

    void plan(List<Ease> drawn, Map<String, Double> given) {
        List<Wanted> wanted = new ArrayList<>();
        for (String level : LEVELS) {
            Optional<Ease> ease = planner.ease().stream()
                    .filter(one -> one.level().equals(level))
                    .findFirst();
            if (ease.isEmpty() || ease.get().most() == Double.POSITIVE_INFINITY) {
                missing(level);
            } else {
                at(ease.get(), given.getOrDefault(level, 0.0)).ifPresent(wanted::add);
            }
        }
        if (!wanted.isEmpty()) {
            order(wanted);
        }
        highHip();
    }

    private void missing(String level) {
        if (!planner.working().levels().contains(level)) {
            return;
        }
        boolean isMeasured =
                planner.body().mm(BodyChart.column(level).orElseThrow()).isPresent();
        planner.missing(
                Topic.WAIST_AND_HIP,
                level + (isMeasured ? ", on the card's chart," : ", on the body,"),
                "the " + level);
    }

    private Optional<Wanted> at(Ease ease, double given) {
        double girth = ease.body() + ease.aim();
        double now = ease.garment();
        Optional<String> size = planner.rules().exact() ? Optional.empty() : nearest(ease, girth);
        boolean stays = planner.rules().exact() ? Math.abs(girth - now) <= EaseRule.EXACT : stays(ease, girth, size);
        if (stays) {
            planner.add(line(ease, "nothing" + gave(ease, given)));
            return Optional.empty();
        }
        boolean bySize = size.isPresent() && Math.abs(girth(ease.level(), size.get()) - girth) <= reach(ease);
        double change = Math.rint((bySize ? girth(ease.level(), size.get()) : girth) - now);
        if (change < 0 && !GettingIn.couldPass(planner.working(), planner.body(), ease.level(), now + change)) {
            planner.add(line(
                    ease,
                    "nothing: taken in by " + Planner.mm(-change) + ", the " + ease.level()
                            + " could no longer be got into without an opening"));
            return Optional.empty();
        }
        String both = Planner.mm(Math.abs(change)) + " " + (change > 0 ? "out" : "in") + " round the body = "
                + Reason.millimetres(Math.abs(change) / 4) + " at each of four side-seam edges";
        String amount = bySize
                ? "the " + ease.level() + " in size " + size.get() + ": " + both
                : both + " at the " + ease.level()
                        + (planner.rules().exact() ? "" : ", by amount, since no size drawn is near");
        if (!bySize && !planner.rules().exact()) {
            planner.problem("the " + ease.level() + " of " + Planner.mm(ease.body())
                    + " is outside the chart; it is blended by amount, so sew a toile first");
        }
        String option = bySize ? size.get() : (change > 0 ? "+" : "") + Reason.millimetres(change);
        return Optional.of(new Wanted(ease.level(), option, line(ease, amount + gave(ease, given))));
    }

    private static String gave(Ease ease, double given) {
        return Math.abs(given) < 0.5
                ? ""
                : "; the front had given " + Planner.mm(given) + " at the " + ease.level() + " already";
    }

    /** How far in mm a size's girth may lie from what is aimed at; tape and scissors besides. */
    private static double reach(Ease ease) {
        return ease.most() - ease.aim() + Ease.ON_THE_MARK;
    }

    /** The size whose own girth comes nearest, of those that leave no less than the least ease. */
    private Optional<String> nearest(Ease ease, double girth) {
        Optional<String> nearest = Optional.empty();
        double apart = Double.POSITIVE_INFINITY;
        for (String size : planner.chart().sizes()) {
            if (!isDrawn(ease.level(), size)) {
                continue;
            }
            double own = girth(ease.level(), size);
            boolean isEnough = own >= ease.body() + Math.min(ease.least(), ease.aim()) - Ease.ON_THE_MARK;
            if (isEnough && Math.abs(own - girth) < apart) {
                nearest = Optional.of(size);
                apart = Math.abs(own - girth);
            }
        }
        return nearest;
    }

    /** The paper as it is now is itself a candidate; and a size a hair from it is not worth the cuts. */
    private boolean stays(Ease ease, double girth, Optional<String> size) {
        if (!ease.isRight()) {
            return false;
        }
        if (size.isEmpty()) {
            return true;
        }
        double own = girth(ease.level(), size.get());
        return Math.abs(ease.garment() - girth) <= Math.abs(own - girth)
                || Math.abs(own - ease.garment()) <= NEGLIGIBLE;
    }

    private boolean isDrawn(String level, String size) {
        Draft working = planner.working();
        return working.piecesWithEdges("side seam").stream()
                .allMatch(piece -> working.drawn().nest().stream()
                        .anyMatch(other -> other.name().equals(piece.name())
                                && other.size().equals(size)
                                && other.front().equals(piece.front())
                                && other.hasLevel(level) == piece.hasLevel(level)));
    }

    /** The girth that a level has when its side-seam pieces take their widths from a size. */
    private double girth(String level, String size) {
        Draft working = planner.working();
        return working.pieces().stream()
                .filter(piece -> piece.hasLevel(level))
                .mapToDouble(piece -> piece.widths()
                        * (piece.hasEdge("side seam") ? working.asDrawn(piece, size) : piece).width(level))
                .sum();
    }

    private PlanLine line(Ease ease, String amount) {
        double charted = planner.chart()
                .body(planner.drafted().size(), ease.measurement())
                .orElse(ease.body());
        String rule = "ease aimed at " + Planner.mm(ease.aim()) + ", right from " + Planner.mm(ease.least()) + " to "
                + Planner.mm(ease.most()) + "; the garment now has " + Planner.mm(ease.ease());
        return PlanLine.of(Topic.WAIST_AND_HIP, amount, rule, SOURCE)
                .comparing(ease.measurement(), ease.body(), charted);
    }

    /** One blend for both levels; where that is refused, what can be done is done. */
    private void order(List<Wanted> wanted) {
        Map<String, Object> options = new LinkedHashMap<>();
        wanted.forEach(one -> options.put(one.level(), one.option()));
        AlterationRequest request = new AlterationRequest("hip blend", options);
        try {
            planner.alter(wanted.get(0).line(), request);
            wanted.stream().skip(1).forEach(one -> planner.add(one.line().ordering(request)));
        } catch (Refusal refusal) {
            wanted.forEach(one -> {
                PlanLine line = one.line();
                planner.add(new PlanLine(
                        line.topic(),
                        "not planned: " + refusal.reason().sentence(),
                        line.compared(),
                        line.rule(),
                        line.source(),
                        Optional.empty()));
            });
            planner.problem(
                    "waist and hip could not be blended: " + refusal.reason().sentence());
        }
    }

    private void highHip() {
        planner.ease().stream().filter(ease -> ease.level().equals("high hip")).forEach(ease -> {
            String amount = ease.isShort()
                    ? Planner.mm(ease.least() - ease.ease())
                            + " too little at the high hip: let the side seams out there on the toile"
                    : "nothing: the high hip is wide enough";
            planner.add(PlanLine.of(
                            Topic.WAIST_AND_HIP,
                            amount,
                            "the blend must be wide enough at the high hip: " + Planner.mm(ease.least())
                                    + " of ease; the garment now has " + Planner.mm(ease.ease()),
                            SOURCE)
                    .comparing(
                            "high hip",
                            ease.body(),
                            planner.chart()
                                    .body(planner.drafted().size(), "high hip")
                                    .orElse(ease.body())));
            if (ease.isShort()) {
                planner.problem("the high hip is " + Planner.mm(ease.least() - ease.ease()) + " short of its ease");
            }
        });
    }
}
