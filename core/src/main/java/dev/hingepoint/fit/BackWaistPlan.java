package dev.hingepoint.fit;

import dev.hingepoint.Reason;
import dev.hingepoint.fit.Observed.Hem;
import dev.hingepoint.fit.Observed.Run;
import dev.hingepoint.fit.PlanLine.Topic;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Draft;
import java.util.ArrayList;
import java.util.List;
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
    private final List<Ease> before;

    /** @param before the ease of the size that the toile was sewn in */
    BackWaistPlan(Planner planner, List<Ease> before) {
        this.planner = planner;
        this.drawn = planner.working();
        this.before = before;
    }

    /** What is short or long all round: done before all else, so that the bust and the waist are altered where they will be. */
    void lengths() {
        if (isAnswered() || tight().isPresent()) {
            return;
        }
        Optional<Observed> seen = seen();
        if (seen.isPresent()) {
            if (seen.get().run().equals(Optional.of(Run.ALL_ROUND))
                    && seen.get().hem().isPresent()) {
                changeAbove(
                        seen.get().folds().mm(),
                        "folds all round: the waist of the garment lies too low",
                        Optional.empty());
            }
        } else {
            measured()
                    .filter(Lengths::isOffAllRound)
                    .ifPresent(lengths -> changeAbove(lengths.side(), SHORT_RULE, compared()));
        }
    }

    private void changeAbove(double shorter, String rule, Optional<PlanLine.Compared> compared) {
        String name = shorter > 0 ? "shorten" : "lengthen";
        String by = Planner.mm(Math.abs(shorter));
        PlanLine line = new PlanLine(
                Topic.LENGTHS,
                name + " front and back alike by " + by + " above the waist",
                compared,
                rule,
                PlanLine.COMMON_PRACTICE,
                Optional.empty());
        planner.alterOrSay(line, Planner.request(name, "by", by, "above", "waist"));
    }

    private Optional<Observed> seen() {
        return planner.body().observed();
    }

    private boolean isAnswered() {
        Optional<Card.Altered> altered = planner.chart().altered(drawn.size());
        return altered.isPresent()
                && !altered.get().alterations().isEmpty()
                && !seen().map(Observed::onAltered).orElse(false);
    }

    private Optional<Ease> tight() {
        boolean isAsked =
                seen().isPresent() || measured().map(Lengths::isBackShort).orElse(false);
        return before.stream()
                .filter(ease -> ease.level().equals("hip") || ease.level().equals("high hip"))
                .filter(ease -> isAsked && ease.isShort())
                .findFirst();
    }

    /** What is wrong at the back only, done last. */
    void plan() {
        if (isAnswered()) {
            if (seen().isPresent() || measured().isPresent()) {
                say(
                        "nothing: this pattern was altered since; sew its toile, and if the folds are still there say so with seen on: altered",
                        "what was seen before an alteration is answered by it");
            }
            return;
        }
        Optional<Ease> tight = tight();
        if (tight.isPresent()) {
            say(
                    "nothing yet: the " + tight.get().level() + " is "
                            + Planner.mm(tight.get().least() - tight.get().ease())
                            + " short of its ease, so the cloth rides up and folds at the waist; widen there, and look again on the next toile",
                    "a tight hip comes before a sway back: a wedge would be the wrong cure");
            return;
        }
        seen().ifPresentOrElse(this::folds, this::backAlone);
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
            return; // one of the lengths
        } else if (drops.isPresent()) {
            byHand(
                    "take another cloth, or line the back: do not cut the paper",
                    "the cloth stretches down more than the draft expects, and hangs in folds");
        } else if (seen.hem().get() == Hem.RIDES_UP) {
            seat(
                    "full seat",
                    folds,
                    " let in over the seat, which draws it up from below",
                    "a hem that rides up at the back is drawn up by the seat; a sway-back wedge would make it worse and is not planned");
        } else if (seen.hem().get() == Hem.DROPS || seen.run().get() == Run.BELOW_THE_SEAT) {
            seat(
                    "flat seat",
                    folds,
                    " folded out over the seat; no wedge at the waist",
                    "a hem that drops, with folds below the seat, hangs over a flat seat");
        } else {
            wedge(folds, "folds level, at the back only, and a hip that has its ease: a sway back", Optional.empty());
        }
    }

    /** What was pinned or seen is only a beginning: the toile of the altered pattern says how much it is. */
    private void seat(String name, double amount, String does, String rule) {
        PlanLine line = PlanLine.of(
                Topic.BACK_WAIST,
                "a " + name + ": " + Planner.mm(amount) + does + "; look again on the next toile",
                rule,
                PlanLine.COMMON_PRACTICE);
        planner.alterOrSay(line, Planner.request(name, "wedge", Planner.mm(amount), "width", Planner.mm(0)));
    }

    /** Back, front and side from waist up, each as much shorter on the body than the chart says. */
    private record Lengths(double back, double front, double side) {
        boolean isBackShort() {
            return back > RIGHT;
        }

        boolean isFrontRight() {
            return Math.abs(front) <= RIGHT;
        }

        boolean isSideRight() {
            return Math.abs(side) <= RIGHT;
        }

        /** Front and side alike are too short, or too long, and so the back is. */
        boolean isOffAllRound() {
            return !isFrontRight() && !isSideRight() && Math.signum(front) == Math.signum(side);
        }
    }

    private Optional<Lengths> measured() {
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

    private void backAlone() {
        Optional<Lengths> all = measured();
        if (all.isEmpty()) {
            undecided();
            return;
        }
        Lengths shorter = all.get();
        double more = shorter.back() - shorter.side();
        if (shorter.isOffAllRound()) {
            if (more > RIGHT && shorter.side() > 0) {
                wedge(more, "what the back is shorter by than the side is a sway back", compared());
            }
        } else if (!shorter.isFrontRight() || !shorter.isSideRight()) {
            byHand(
                    "not planned: front, back and side differ from the draft each in its own way; pin it on a toile",
                    SHORT_RULE);
        } else if (shorter.isBackShort()) {
            wedge(shorter.back(), SHORT_RULE, compared());
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

    private void wedge(double amount, String rule, Optional<PlanLine.Compared> compared) {
        double wedge = Math.rint(amount);
        PlanLine line = new PlanLine(
                Topic.BACK_WAIST,
                Planner.mm(wedge) + " out of centre back = a tuck pinched " + Reason.millimetres(wedge / 2)
                        + " deep, running to nothing",
                compared,
                rule,
                "US Department of Agriculture, Fitting Dresses; " + PlanLine.COMMON_PRACTICE,
                Optional.empty());
        AlterationRequest request = Planner.request("sway back", "wedge", Reason.millimetres(wedge));
        planner.alterOrSay(line, request);
    }

    private void byHand(String amount, String rule) {
        say(amount, rule);
        planner.problem(amount);
    }

    private void say(String amount, String rule) {
        planner.add(PlanLine.of(Topic.BACK_WAIST, amount, rule, PlanLine.COMMON_PRACTICE));
    }
}
