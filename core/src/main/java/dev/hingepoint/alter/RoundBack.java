package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Cut;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Length for a back that rounds: {@code round back: {by: 12 mm}}. The back is slashed level from centre back to the armhole, half way in depth
 * between the nape and the underarm or at a level that is drawn ({@code at:}), and opened by the amount at centre back, to nothing at the
 * armhole. Source: Woman's Institute (1920s): slash from centre back towards the armhole and part it; the centre back grows, the armhole does
 * not.
 *
 * <p>Kept: the armhole's length, the shoulder, the sewn neckline, all below the slash, the front. A centre back that is a seam takes the shape of
 * the back. A fold must be straight: it is drawn straight up to the new nape, and what the neckline gains by that goes into a {@linkplain
 * NeckDart dart} ({@code neck: dart}), which can be moved into the shoulder, or is eased in ({@code neck: ease}).
 */
final class RoundBack implements Alteration {
    private static final double USUAL_LEAST = 5;
    private static final double USUAL_MOST = 25;
    private static final double FAIR_OVER = 60;

    /** A neckline takes no more ease (common practice, no source). */
    private static final double MOST_EASE = 6;

    @Override
    public String name() {
        return "round back";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("by", "12 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("by", "at", "neck");
        double by = options.positive("by", "by: 12 mm", Message.of("alter.round-back.other-way"));
        Optional<String> level = options.text("at");
        Piece back = back(draft, level);
        boolean isFold = back.edge(Names.CENTRE_BACK).kind() == Edge.Kind.FOLD;
        Optional<String> neck = options.choice("neck", "dart", "ease");
        if (neck.isPresent() && !isFold) {
            throw options.refuse("alter.round-back.centre-is-seam", back.name());
        }
        boolean asEase = neck.orElse("dart").equals("ease");
        Altered altered = LargestAmount.orRefusal(
                draft, by, amount -> new Opened(draft, back, level, amount).altered(isFold, asEase));
        altered = CapEase.told(altered, draft, List.of(back), "");
        return by < USUAL_LEAST || by > USUAL_MOST
                ? altered.withNote(Reason.millimetres(by) + " is unusual: 5 to 25 mm is common")
                : altered;
    }

    private static Piece back(Draft draft, Optional<String> level) {
        List<Piece> backs = draft.piecesWithEdges(
                Names.CENTRE_BACK, Names.NECKLINE, Names.SHOULDER, Names.ARMHOLE, Names.SIDE_SEAM);
        if (backs.isEmpty()) {
            throw new Refusal(
                    new Reason.Missing(Message.of("alter.round-back.needs-edges"), Where.UNKNOWN.size(draft.size())));
        }
        Piece back = backs.get(0);
        level.ifPresent(back::levelFrame);
        return back;
    }

    /** The back slashed and opened by one amount. */
    private static final class Opened {
        private final Draft draft;
        private final Piece back;
        private final Optional<String> level;
        private final double by;
        private final Line slash;
        private final Motion turn;

        Opened(Draft draft, Piece back, Optional<String> level, double by) {
            this.draft = draft;
            this.back = back;
            this.level = level;
            this.by = by;
            this.slash = level.map(name -> back.levelFrame(name).across(Names.CENTRE_BACK, Names.ARMHOLE, 0))
                    .orElseGet(() -> halfWay(back));
            Path centreBack = back.downwards(Names.CENTRE_BACK);
            double along = centreBack.distanceAlong(centreBack.nearest(slash.start()));
            if (along <= by / 2 || along + by / 2 >= centreBack.length()) {
                throw new Refusal(Reason.BeyondLimit.of(
                        Message.of("alter.round-back.slash-near-end"),
                        back.where().edge(Names.CENTRE_BACK)));
            }
            Point hinge = slash.end();
            this.turn = Motion.turn(
                    hinge,
                    centreBack.at(along + by / 2).minus(hinge),
                    centreBack.at(along - by / 2).minus(hinge));
        }

        /** Level, half way in depth between nape and underarm. */
        private static Line halfWay(Piece back) {
            Point nape = back.from(Names.CENTRE_BACK, Names.NECKLINE).start();
            Point underarm = back.from(Names.ARMHOLE, Names.SIDE_SEAM).start();
            Point middle = nape.midpoint(underarm);
            return new Line(meeting(back, Names.CENTRE_BACK, middle), meeting(back, Names.ARMHOLE, middle));
        }

        private static Point meeting(Piece back, String edge, Point level) {
            Path path = back.edge(edge).path();
            return path.crossings(level, back.grain().down().left()).stream()
                    .map(path::at)
                    .min(Comparator.comparingDouble(level::distanceTo))
                    .orElseThrow(() -> new Refusal(new Reason.Missing(
                            Message.of("alter.round-back.no-level-meets", edge),
                            back.where().edge(edge))));
        }

        Altered altered(boolean isFold, boolean asEase) {
            String caption = "Slash the back level from centre back to the armhole and open it by "
                    + Reason.millimetres(by) + " at centre back, to nothing at the armhole";
            Paper cut = Paper.of(back)
                    .then(Cut.along(caption, Path.of(slash))
                            .moving(Place.corner(Names.SHOULDER, Names.NECKLINE), turn)
                            .withGrainOn(Place.corner(Names.SIDE_SEAM, Names.ARMHOLE)));
            return isFold ? onFold(cut, asEase) : onSeam(cut);
        }

        private Altered onSeam(Paper cut) {
            return Faired.untilLawsHold(draft, FAIR_OVER, reach -> {
                Piece piece = cut.piece();
                Spot one = piece.nearest(piece.edge(Names.CENTRE_BACK), slash.start());
                Spot other = piece.nearest(piece.edge(Names.CENTRE_BACK), turn.of(slash.start()));
                boolean inOrder = one.position().compareTo(other.position()) <= 0;
                Paper shaped = cut.then(Redraw.bridged(
                        "Draw centre back fair, in the shape of the back",
                        piece,
                        inOrder ? one : other,
                        inOrder ? other : one,
                        reach));
                return done(withFairArmhole(shaped, reach), 0);
            });
        }

        private Altered onFold(Paper cut, boolean asEase) {
            Paper straight = straightened(cut);
            double gained = straight.piece().sewnLength(Names.NECKLINE) - back.sewnLength(Names.NECKLINE);
            if (asEase) {
                if (gained > MOST_EASE) {
                    throw new Refusal(Reason.BeyondLimit.of(
                            Message.of(
                                    "alter.round-back.too-much-ease",
                                    Quantity.millimetres(gained),
                                    Quantity.millimetres(MOST_EASE)),
                            back.where().edge(Names.NECKLINE)));
                }
                return Faired.untilLawsHold(draft, FAIR_OVER, reach -> done(withFairArmhole(straight, reach), gained))
                        .withNote("the neckline has " + Reason.millimetres(gained)
                                + " a half to ease in: the fold is straight again");
            }
            NeckDart dart = new NeckDart(gained, turn.of(slash.start().midpoint(slash.end())));
            return Faired.untilLawsHold(
                            draft, FAIR_OVER, reach -> done(withFairArmhole(dart.drawnOn(straight), reach), 0))
                    .withNote("the fold is straight again, and a neck dart takes in the " + Reason.millimetres(gained)
                            + " a half that the neckline gained by it; move dart: {dart: neck dart, to: shoulder} takes it to "
                            + "the shoulder");
        }

        /** The fold straight up to its new nape, the neckline square to it again. */
        private Paper straightened(Paper cut) {
            Piece piece = cut.piece();
            String hem = back.below(Names.CENTRE_BACK).name();
            Path fold = back.from(Names.CENTRE_BACK, hem);
            Point nape = fold.end().plus(fold.endTangent().times(by));
            Path neckline = piece.from(Names.NECKLINE, Names.CENTRE_BACK);
            Vector square = back.from(Names.NECKLINE, Names.CENTRE_BACK).startTangent();
            Path newNeckline = Bodice.turnedAtShoulder(
                            Names.ARMHOLE,
                            neckline.givingWay(nape.minus(neckline.start())).reversed(),
                            square.negated())
                    .withEnd(nape)
                    .reversed();
            String caption = "Draw the fold straight up to the nape; the neckline gains what it leans by";
            return cut.then(Redraw.whole(caption, piece, Names.CENTRE_BACK, hem, Path.through(fold.start(), nape))
                    .and(Redraw.whole(caption, piece, Names.NECKLINE, Names.CENTRE_BACK, newNeckline)));
        }

        private Paper withFairArmhole(Paper paper, double reach) {
            Piece piece = paper.piece();
            Spot hinge = piece.nearest(piece.edge(Names.ARMHOLE), slash.end());
            return paper.then(
                    Redraw.faired("Fair the armhole", piece, hinge, Math.min(reach, Redraw.reach(piece, hinge))));
        }

        private Altered done(Paper paper, double necklineGains) {
            Map<String, Object> amounts = new LinkedHashMap<>();
            amounts.put("by", by);
            amounts.put("at", level.orElse("half way between nape and underarm"));
            return Altered.of(draft, paper, amounts).withLaws(laws(necklineGains));
        }

        private List<Law> laws(double necklineGains) {
            List<Law> laws = new ArrayList<>(Bodice.staying(
                    draft,
                    List.of(back),
                    Names.SIDE_SEAM,
                    back.below(Names.CENTRE_BACK).name()));
            String name = back.name();
            laws.add(Law.changesLength(name, Names.CENTRE_BACK, by, 0.3));
            laws.add(Law.keepsLength(name, Names.ARMHOLE, 0.3));
            laws.add(Law.keepsLength(name, Names.SHOULDER, 0.1));
            laws.add(Law.changesLength(name, Names.NECKLINE, necklineGains, 0.1));
            Bodice.levelsOnSideSeam(back).forEach(below -> laws.add(Law.keepsWidth(name, below, 0.01)));
            return laws;
        }
    }
}
