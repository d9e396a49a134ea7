package dev.hingepoint.fit;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.fit.PlanLine.Topic;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Pattern;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The front: which one, where a second is drawn, and how much it is spread. Each half front gets half of what the full bust differs from that
 * which the chosen size is drafted for (sewing schools).
 */
final class BustPlan {
    private static final String SCHOOLS = "sewing schools: each half front gets half of the difference";
    private static final double FAR_BUST_POINT = 10;

    private final Planner planner;
    private final Draft before;

    BustPlan(Planner planner) {
        this.planner = planner;
        this.before = planner.working();
    }

    /** What front and bust alteration have given at each level, in mm of girth. */
    Map<String, Double> given() {
        Map<String, Double> given = new LinkedHashMap<>();
        for (String level : before.levels()) {
            given.put(level, planner.working().girth(level) - before.girth(level));
        }
        return given;
    }

    /** @param more how much in mm more girth the bust needs for the cloth, besides */
    void plan(double more) {
        bustPoint();
        OptionalDouble full = planner.body().mm(Measure.FULL_BUST);
        OptionalDouble drafted = draftedFor();
        if (full.isEmpty() || drafted.isEmpty()) {
            planner.missing(
                    Topic.BUST,
                    full.isEmpty() ? "full bust, on the body," : "full bust, on the card's chart,",
                    "the front");
            return;
        }
        double wanted = full.getAsDouble() + more;
        double front = drafted.getAsDouble() + chosenFront(full.getAsDouble());
        spread(wanted, front);
    }

    /** The full bust that the chosen size is drafted for: the chart's, or its upper bust and the cup difference. */
    private OptionalDouble draftedFor() {
        String size = before.size();
        OptionalDouble charted = planner.chart().body(size, "full bust");
        OptionalDouble upper = planner.chart().body(size, "upper bust");
        Optional<Length> cup = before.pattern().card().cupDifference();
        return charted.isPresent() || upper.isEmpty() || cup.isEmpty()
                ? charted
                : OptionalDouble.of(upper.getAsDouble() + cup.get().mm());
    }

    /** Chooses among the fronts that are drawn, and answers how much in mm larger a full bust the chosen one is drafted for. */
    private double chosenFront(double full) {
        Map<String, Length> fronts = before.pattern().card().fronts();
        OptionalDouble upper = planner.body().mm(Measure.UPPER_BUST);
        boolean isAltered = planner.chart().altered(before.size()).isPresent();
        if (fronts.size() < 2 || upper.isEmpty() || isAltered) {
            return 0;
        }
        Optional<Length> standard = Optional.ofNullable(fronts.get(Pattern.STANDARD_FRONT))
                .or(() -> before.pattern().card().cupDifference());
        if (standard.isEmpty()) {
            return 0;
        }
        double cup = full - upper.getAsDouble();
        String nearest = Pattern.STANDARD_FRONT;
        double nearestCup = standard.get().mm();
        for (Map.Entry<String, Length> front : fronts.entrySet()) {
            boolean isDrawn = before.pattern().nest().stream()
                    .anyMatch(piece ->
                            piece.size().equals(before.size()) && piece.front().equals(Optional.of(front.getKey())));
            if (isDrawn && Math.abs(cup - front.getValue().mm()) < Math.abs(cup - nearestCup)) {
                nearest = front.getKey();
                nearestCup = front.getValue().mm();
            }
        }
        if (!nearest.equals(Pattern.STANDARD_FRONT)) {
            planner.sewWithFront(nearest);
        }
        planner.add(PlanLine.of(
                        Topic.BUST,
                        "the " + nearest + " front" + gives(),
                        "of the fronts that are drawn, the one with the nearer cup difference",
                        PlanLine.COMMON_PRACTICE)
                .comparing("full bust - upper bust", cup, nearestCup));
        return nearestCup - standard.get().mm();
    }

    /** ", which gives 12 mm at the waist and 14 mm at the hip". */
    private String gives() {
        StringBuilder told = new StringBuilder();
        given().forEach((level, more) -> {
            if (GirthPlan.LEVELS.contains(level) && Math.abs(more) >= 0.5) {
                told.append(told.length() == 0 ? ", which gives " : " and ")
                        .append(Planner.mm(more))
                        .append(" at the ")
                        .append(level);
            }
        });
        return told.toString();
    }

    private void spread(double wanted, double drafted) {
        double difference = wanted - drafted;
        double least = planner.rules().leastBust(planner.isKnit());
        if (Math.abs(difference) < least) {
            planner.add(line(
                    "nothing: less than " + Planner.mm(least) + " round the body is within the ease", wanted, drafted));
            return;
        }
        double spread = Math.rint(difference) / 2;
        try {
            order(spread, wanted, drafted);
        } catch (Refusal refusal) {
            OptionalDouble limit = refusal.reason().limit();
            double most = Math.copySign(Math.floor(Math.abs(limit.orElse(0)) * 2) / 2, spread);
            String rest = "the front cannot take all of it: " + refusal.reason().what();
            if (Math.abs(most) * 2 < least) {
                planner.add(line("not planned: " + refusal.reason().sentence(), wanted, drafted));
            } else {
                order(most, wanted, drafted);
            }
            planner.problem(rest);
        }
    }

    private void order(double spread, double wanted, double drafted) {
        String amount = Reason.millimetres(Math.abs(spread)) + " " + (spread > 0 ? "spread" : "closed")
                + " on each half front = " + Reason.millimetres(2 * Math.abs(spread)) + " round the body";
        boolean asEase = planner.isKnit() && spread > 0 && !hasDart();
        PlanLine line = line(amount, wanted, drafted);
        if (asEase) {
            try {
                planner.alter(line, request(spread, Optional.of("ease")));
                return;
            } catch (Refusal tooMuch) {
                line = line(amount + ", in a dart: too much to ease in", wanted, drafted);
            }
        }
        planner.alter(line, request(spread, Optional.empty()));
    }

    private boolean hasDart() {
        return before.piecesWithEdges("centre front", "side seam").stream()
                .flatMap(piece -> piece.marks(EdgeDart.class))
                .findAny()
                .isPresent();
    }

    private static AlterationRequest request(double spread, Optional<String> dart) {
        Map<String, Object> options = new LinkedHashMap<>();
        options.put("spread", Reason.millimetres(spread));
        dart.ifPresent(word -> options.put("dart", word));
        return new AlterationRequest("full bust", options);
    }

    private PlanLine line(String amount, double wanted, double drafted) {
        double least = planner.rules().leastBust(planner.isKnit());
        return PlanLine.of(
                        Topic.BUST,
                        amount,
                        "half of the difference to each half front; nothing below " + Planner.mm(least)
                                + " (common practice)",
                        SCHOOLS)
                .comparing("full bust", wanted, drafted);
    }

    private void bustPoint() {
        if (planner.wasDone("move apex")) {
            return;
        }
        bustPoint(Measure.SHOULDER_TO_BUST_POINT, 1, "lower", "raise");
        bustPoint(Measure.BUST_POINT_TO_BUST_POINT, 0.5, "out", "in");
    }

    /** Where one measurement says that the bust point lies elsewhere: the point goes there, and its darts with it. */
    private void bustPoint(Measure measure, double share, String more, String less) {
        OptionalDouble measured = planner.body().mm(measure);
        OptionalDouble charted = planner.chart().body(before.size(), measure.words());
        if (measured.isEmpty()
                || charted.isEmpty()
                || Math.abs(measured.getAsDouble() - charted.getAsDouble()) <= FAR_BUST_POINT) {
            return;
        }
        double by = share * (measured.getAsDouble() - charted.getAsDouble());
        String way = by > 0 ? more : less;
        String amount = Planner.mm(Math.abs(by));
        PlanLine line = PlanLine.of(
                        Topic.BUST_POINT,
                        "the bust point and its darts " + amount
                                + Map.of(
                                                "lower",
                                                " lower",
                                                "raise",
                                                " higher",
                                                "out",
                                                " farther out",
                                                "in",
                                                " farther in")
                                        .get(way),
                        "a bust point more than " + Planner.mm(FAR_BUST_POINT) + " from the draft's is moved first",
                        PlanLine.COMMON_PRACTICE)
                .comparing(measure.words(), measured.getAsDouble(), charted.getAsDouble());
        planner.alterOrSay(line, Planner.request("move apex", way, amount));
    }
}
