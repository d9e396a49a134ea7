package dev.hingepoint.fit;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.fit.Observed.Hem;
import dev.hingepoint.fit.Observed.Run;
import dev.hingepoint.fit.PlanLine.Topic;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Draft;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What folds at the back waist, or a short back, come from, the commonest cause first. A tight hip is looked at before all else: the cloth rides
 * up to find room, and a wedge would be the wrong cure. Several trade sources; common practice.
 */
final class BackWaistPlan {
    /** Waist lengths within this many mm of the chart's are right: a quarter inch. */
    private static final double RIGHT = 6.35;

    private static final String SHORT_RULE =
            "a back that is short while front and side are right is a sway back; all short alike is a short waist";

    private final Planner planner;
    private final Draft drawn;

    private Runnable last = () -> {};

    BackWaistPlan(Planner planner) {
        this.planner = planner;
        this.drawn = planner.working();
    }

    /** @param before the ease of the size that the toile was sewn in */
    void plan(List<Ease> before) {
        Optional<Observed> seen = planner.body().observed();
        Optional<Card.Altered> altered = planner.chart().altered(drawn.size());
        if (altered.isPresent()
                && !altered.get().alterations().isEmpty()
                && !seen.map(Observed::onAltered).orElse(false)) {
            if (seen.isPresent() || lengths().isPresent()) {
                say(
                        "nothing: this pattern was altered since; sew its toile, and if the folds are still there say so with seen on: altered",
                        "what was seen before an alteration is answered by it");
            }
            return;
        }
        Optional<Ease> tight = before.stream()
                .filter(ease -> ease.level().equals("hip") || ease.level().equals("high hip"))
                .filter(Ease::isShort)
                .findFirst();
        boolean isAsked =
                seen.isPresent() || lengths().map(Lengths::isBackShort).orElse(false);
        if (isAsked && tight.isPresent()) {
            say(
                    "nothing yet: the " + tight.get().level() + " is "
                            + Planner.mm(tight.get().least() - tight.get().ease())
                            + " short of its ease, so the cloth rides up and folds at the waist; widen there, and look again on the next toile",
                    "a tight hip comes before a sway back: a wedge would be the wrong cure");
            return;
        }
        if (seen.isPresent()) {
            folds(seen.get());
        } else {
            measured();
        }
    }

    private void folds(Observed seen) {
        double folds = seen.folds().mm();
        Optional<Cloth> drops = planner.body()
                .cloth()
                .filter(cloth -> cloth.down() > drawn.pattern().card().stretchDown());
        if (seen.run().isEmpty() || seen.hem().isEmpty()) {
            say(
                    "not planned: look "
                            + (seen.run().isEmpty()
                                    ? "whether the folds run round the back only"
                                    : "what the back hem does")
                            + ", and plan again",
                    "folds alone do not tell a sway back from a short waist or a flat seat");
        } else if (seen.run().get() == Run.ALL_ROUND) {
            alike(-folds, "folds all round: the waist of the garment lies too low");
        } else if (drops.isPresent()) {
            byHand(
                    "take another cloth, or line the back: do not cut the paper",
                    "the cloth stretches down more than the draft expects, and hangs in folds");
        } else if (seen.hem().get() == Hem.RIDES_UP) {
            byHand(
                    "a full seat, by hand: the back needs length over the seat; a sway-back wedge would make it worse and is not planned",
                    "a hem that rides up at the back is drawn up by the seat");
        } else if (seen.hem().get() == Hem.DROPS || seen.run().get() == Run.BELOW_THE_SEAT) {
            byHand(
                    "a flat seat, by hand: take length and width out below the waist; no wedge",
                    "a hem that drops, with folds below the seat, hangs over a flat seat");
        } else {
            wedge(folds, "folds level, at the back only, and a hip that has its ease: a sway back", Optional.empty());
        }
    }

    /** Back, front and side from waist up, each as much shorter on the body than the chart says. */
    private record Lengths(double back, double front, double side) {
        boolean isBackShort() {
            return back > RIGHT;
        }
    }

    private Optional<Lengths> lengths() {
        OptionalDouble back = shorter(Measure.BACK_WAIST_LENGTH);
        OptionalDouble front = shorter(Measure.FRONT_WAIST_LENGTH);
        OptionalDouble side = shorter(Measure.SIDE_LENGTH);
        return back.isPresent() && front.isPresent() && side.isPresent()
                ? Optional.of(new Lengths(back.getAsDouble(), front.getAsDouble(), side.getAsDouble()))
                : Optional.empty();
    }

    private OptionalDouble shorter(Measure measure) {
        OptionalDouble body = planner.body().mm(measure);
        OptionalDouble chart = planner.chart().body(drawn.size(), measure.words());
        return body.isPresent() && chart.isPresent()
                ? OptionalDouble.of(chart.getAsDouble() - body.getAsDouble())
                : OptionalDouble.empty();
    }

    private void measured() {
        Optional<Lengths> all = lengths();
        if (all.isEmpty()) {
            undecided();
            return;
        }
        Lengths shorter = all.get();
        boolean isFrontRight = Math.abs(shorter.front()) <= RIGHT;
        boolean isSideRight = Math.abs(shorter.side()) <= RIGHT;
        double more = shorter.back() - shorter.side();
        if (isFrontRight && isSideRight) {
            if (shorter.isBackShort()) {
                wedge(shorter.back(), SHORT_RULE, compared());
            }
            return;
        }
        if (isSideRight || Math.signum(shorter.front()) != Math.signum(shorter.side())) {
            byHand(
                    "not planned: front, back and side differ from the draft each in its own way; pin it on a toile",
                    SHORT_RULE);
            return;
        }
        alike(-shorter.side(), SHORT_RULE);
        if (more > RIGHT && shorter.side() > 0) {
            wedge(more, "what the back is shorter by than the side is a sway back", compared());
        }
    }

    /** Where one of the three says something and another is missing, that one decides. */
    private void undecided() {
        boolean isOff = false;
        List<String> missing = new ArrayList<>();
        for (Measure measure : List.of(Measure.BACK_WAIST_LENGTH, Measure.FRONT_WAIST_LENGTH, Measure.SIDE_LENGTH)) {
            OptionalDouble shorter = shorter(measure);
            isOff |= shorter.isPresent() && Math.abs(shorter.getAsDouble()) > RIGHT;
            if (shorter.isEmpty()) {
                boolean onBody = planner.body().mm(measure).isEmpty();
                missing.add(measure.words() + (onBody ? "" : " (on the card's chart)"));
            }
        }
        if (isOff) {
            say(
                    "not planned: it is " + String.join(" and ", missing) + " that decides; measure it, and plan again",
                    SHORT_RULE);
        }
    }

    private Optional<PlanLine.Compared> compared() {
        return Optional.of(PlanLine.Compared.of(
                Measure.BACK_WAIST_LENGTH.words(),
                planner.body().mm(Measure.BACK_WAIST_LENGTH).orElseThrow(),
                planner.chart()
                        .body(drawn.size(), Measure.BACK_WAIST_LENGTH.words())
                        .orElseThrow()));
    }

    /** All of the bodice longer, or where negative shorter, by so many mm, at once: what is planned next is measured on it. */
    private void alike(double longer, String rule) {
        String way = longer > 0 ? "lengthen" : "shorten";
        double by = Math.rint(Math.abs(longer));
        PlanLine line = PlanLine.of(
                Topic.LENGTHS,
                way + " front and back alike by " + Planner.mm(by) + " above the waist",
                rule,
                PlanLine.COMMON_PRACTICE);
        Map<String, Object> options = new LinkedHashMap<>();
        options.put("by", Reason.millimetres(by));
        options.put("above", "waist");
        AlterationRequest request = new AlterationRequest(way, options);
        try {
            planner.alter(line, request);
        } catch (Refusal refusal) {
            byHand(line.amount() + ", by hand: " + refusal.reason().sentence(), rule);
        }
    }

    /** A wedge is planned for last, when all above it is as it will be. */
    private void wedge(double amount, String rule, Optional<PlanLine.Compared> compared) {
        last = () -> wedged(amount, rule, compared);
    }

    /** Does what was left for last. */
    void finish() {
        last.run();
    }

    private void wedged(double amount, String rule, Optional<PlanLine.Compared> compared) {
        double wedge = Math.rint(amount);
        PlanLine line = new PlanLine(
                Topic.BACK_WAIST,
                Planner.mm(wedge) + " out of centre back = a tuck pinched " + Reason.millimetres(wedge / 2)
                        + " deep, running to nothing",
                compared,
                rule,
                "US Department of Agriculture, Fitting Dresses; " + PlanLine.COMMON_PRACTICE,
                Optional.empty());
        AlterationRequest request = new AlterationRequest("sway back", Map.of("wedge", Reason.millimetres(wedge)));
        try {
            planner.alter(line, request);
        } catch (Refusal refusal) {
            byHand("not planned: " + refusal.reason().sentence(), rule);
        }
    }

    private void byHand(String amount, String rule) {
        say(amount, rule);
        planner.problem(amount);
    }

    private void say(String amount, String rule) {
        planner.add(PlanLine.of(Topic.BACK_WAIST, amount, rule, PlanLine.COMMON_PRACTICE));
    }
}
