package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Refit;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Sway back on a fold: the back is lifted at the shoulder seam, more at its neck end, to nothing at the armhole (US Department of
 * Agriculture, "Fitting Dresses"). The neckline shifts down the fold by the amount; the shoulder turns about its tip until its neck end
 * lies that much lower, and keeps its length; the neckline is its old self, scaled across to the new neck end.
 */
final class SwayBackShoulder {

    private SwayBackShoulder() {}

    static Altered alter(Draft draft, Piece back, double wedge) {
        Path shoulder = back.from(Names.SHOULDER, Names.ARMHOLE);
        Path centreBack = back.from(Names.CENTRE_BACK, Names.NECKLINE);
        if (wedge >= centreBack.length()) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.sway-back.centre-back-too-short"),
                    back.where().edge(Names.CENTRE_BACK),
                    wedge,
                    centreBack.length()));
        }
        Vector down = centreBack.startTangent();
        Motion turn = lowering(back, shoulder, down, wedge);
        Path newShoulder = shoulder.moved(turn);
        Path newCentreBack = centreBack.part(wedge, centreBack.length());
        Path neckline = neckline(
                back.from(Names.NECKLINE, Names.CENTRE_BACK), newCentreBack.start(), newShoulder.end(), down, turn);
        String caption = "Take " + Reason.millimetres(wedge)
                + " at the neck end of the shoulder, running to nothing at the armhole; the neckline moves down with it";
        Paper paper = Paper.of(back)
                .then(Redraw.whole(caption, back, Names.CENTRE_BACK, Names.NECKLINE, newCentreBack)
                        .and(Redraw.whole(caption, back, Names.NECKLINE, Names.CENTRE_BACK, neckline))
                        .and(Redraw.whole(caption, back, Names.SHOULDER, Names.ARMHOLE, newShoulder)));
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("wedge", wedge);
        amounts.put("method", "shoulder");
        return Altered.of(draft, paper, amounts)
                .withLaws(laws(draft, back, wedge))
                .withNote(shorterNeckline(draft, back, paper.piece()));
    }

    /** The turn about the shoulder's tip that lowers its neck end by {@code amount} mm along {@code down}. */
    private static Motion lowering(Piece back, Path fromTip, Vector down, double amount) {
        Vector reach = fromTip.end().minus(fromTip.start());
        Vector across = reach.minus(down.times(reach.dot(down)));
        double lowered = reach.dot(down) + amount;
        double room = reach.length() * reach.length() - lowered * lowered;
        if (!(room > 0)) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.sway-back.shoulder-too-short"),
                    back.where().edge(Names.SHOULDER),
                    amount,
                    reach.length() - reach.dot(down)));
        }
        return Motion.turn(
                fromTip.start(), reach, across.unit().times(Math.sqrt(room)).plus(down.times(lowered)));
    }

    /** The neckline from the fold, scaled across, its angle to the shoulder kept. */
    private static Path neckline(Path old, Point onFold, Point neckEnd, Vector down, Motion shoulderTurn) {
        Vector across = down.left();
        double scale =
                neckEnd.minus(onFold).dot(across) / old.end().minus(old.start()).dot(across);
        Motion scaled = Motion.shift(onFold.minus(old.start())).then(Motion.stretch(onFold, across, scale));
        List<Segment> segments =
                new ArrayList<>(old.moved(scaled).withEnd(neckEnd).segments());
        Cubic last = Refit.asCubic(segments.get(segments.size() - 1));
        // the last handle keeps its length and turns with the shoulder
        Vector direction = shoulderTurn.of(old.endTangent());
        double handle = last.endHandle().distanceTo(neckEnd);
        segments.set(
                segments.size() - 1,
                new Cubic(last.start(), last.startHandle(), neckEnd.minus(direction.times(handle)), neckEnd));
        return Path.of(segments);
    }

    private static String shorterNeckline(Draft draft, Piece back, Piece after) {
        double change = after.sewnLength(Names.NECKLINE) - back.sewnLength(Names.NECKLINE);
        EdgeRef neckline = new EdgeRef(back.name(), Names.NECKLINE);
        String sewnTo = draft.seams().stream()
                .filter(seam -> seam.joins(neckline))
                .map(seam -> Seam.nameOf(seam.join().contains(neckline) ? seam.to() : seam.join()))
                .findFirst()
                .map(other -> "; " + other + " must change with it")
                .orElse("; whatever finishes it must change with it");
        return "the neckline of the " + back.name() + " changes by " + Reason.millimetres(change) + " a half" + sewnTo;
    }

    private static List<Law> laws(Draft draft, Piece back, double wedge) {
        List<Law> laws = SwayBack.commonLaws(draft, back, 1e-6, Names.ARMHOLE, Names.SIDE_SEAM, Names.HEM);
        laws.add(Law.changesLength(back.name(), Names.CENTRE_BACK, -wedge, 0.05));
        laws.add(Law.keepsLength(back.name(), Names.SHOULDER, 0.1));
        return laws;
    }
}
