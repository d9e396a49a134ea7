package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.pattern.BodyChart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * A garment of several cloths must still reach round the body, and over it. Derived: pieces of widths w that stretch by s reach the sum of w (1 + s) round; that must be the body's girth at
 * every level that a firm piece crosses, and what must pass at the narrowest place that does not open. A firm yoke that crosses no level takes part
 * in neither, and is allowed.
 *
 * @param firm the pieces of the cloth that stretches less than the draft counts on
 * @param stretch of each piece's cloth, as a fraction
 */
record StretchRule(Draft draft, List<String> firm, ToDoubleFunction<Piece> stretch) {
    /** One level and how it holds. */
    private record Reach(String level, double reaches, double body, double own) {
        boolean holds() {
            return reaches >= body;
        }
    }

    private List<Reach> reaches() {
        List<Reach> reaches = new ArrayList<>();
        for (String level : draft.levels()) {
            OptionalDouble body = BodyChart.column(level)
                    .map(column -> Entry.body(draft).mm(column))
                    .orElse(OptionalDouble.empty());
            double own = round(level, piece -> firm.contains(piece.name()) ? 1 : 0);
            if (body.isPresent() && own > 0) {
                reaches.add(new Reach(
                        level, round(level, piece -> 1 + stretch.applyAsDouble(piece)), body.getAsDouble(), own));
            }
        }
        return reaches;
    }

    private double round(String level, ToDoubleFunction<Piece> factor) {
        return draft.pieces().stream()
                .filter(piece -> piece.hasLevel(level))
                .mapToDouble(piece -> piece.widths() * piece.width(level) * factor.applyAsDouble(piece))
                .sum();
    }

    /** @throws Refusal with the numbers, and the stretch that would do */
    void require() {
        for (Reach reach : reaches()) {
            if (!reach.holds()) {
                double now = stretch.applyAsDouble(draft.piece(firm.get(0)));
                double would = now + (reach.body() - reach.reaches()) / reach.own();
                throw new Refusal(Reason.BeyondLimit.of(
                        Message.of(
                                "make.stretch.does-not-reach",
                                reach.level(),
                                Quantity.millimetres(Math.rint(reach.reaches())),
                                Quantity.millimetres(Math.rint(reach.body())),
                                Quantity.share(Math.ceil(100 * would - 1e-9) / 100)),
                        Where.inPiece(firm.get(0)).size(draft.size()).mark(reach.level())));
            }
        }
        Entry.requireNoNarrower(Entry.into(draft), Entry.into(draft, stretch));
    }

    /** What was reckoned, in words. */
    List<String> told() {
        List<String> told = new ArrayList<>();
        for (Reach reach : reaches()) {
            told.add("at the " + reach.level() + " it reaches " + whole(reach.reaches()) + " round a body of "
                    + whole(reach.body()));
        }
        Entry.into(draft, stretch).forEach(narrow -> told.add(narrow.sentence()));
        return told;
    }

    private static String whole(double mm) {
        return new Length(Math.rint(mm)).toString();
    }
}
