package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Bisection;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Shoulders that are wider, or narrower, than the draft's: {@code broad shoulders: {by: 10 mm}}, {@code narrow shoulders: {by: 10 mm}}, for
 * each shoulder, front and back alike. The tip goes out or in, and the armhole follows it, to nothing at the underarm.
 *
 * <p>Kept: the armhole's length, since the tip lies where the shoulder has its new length and the armhole its old one; the angles of shoulder,
 * armhole and neckline; the neckline; the side seam and every girth from the bust down. Source: a pattern-making text ("broad or narrow: only
 * the shoulder changes").
 */
final class ShoulderWidth implements Alteration {
    private static final double USUAL_MOST = 20;
    /** The new tip is looked for within so many radians of the shoulder's direction. */
    private static final double MOST_TURN = 0.4;

    private final boolean isBroad;

    private ShoulderWidth(boolean isBroad) {
        this.isBroad = isBroad;
    }

    static ShoulderWidth broad() {
        return new ShoulderWidth(true);
    }

    static ShoulderWidth narrow() {
        return new ShoulderWidth(false);
    }

    @Override
    public String name() {
        return isBroad ? "broad shoulders" : "narrow shoulders";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("by", "8 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("by");
        double by = options.positive(
                "by", "by: 10 mm", Message.of("alter.options.order", isBroad ? "narrow shoulders" : "broad shoulders"));
        List<Piece> pieces = Bodice.pieces(draft, name());
        Altered altered =
                LargestAmount.orRefusal(draft, by, amount -> altered(draft, pieces, isBroad ? amount : -amount));
        Altered told = CapEase.told(altered, draft, pieces, "");
        return by > USUAL_MOST ? told.withNote(Reason.millimetres(by) + " is unusual: up to 20 mm is common") : told;
    }

    private Altered altered(Draft draft, List<Piece> pieces, double wider) {
        Draft altered = draft;
        List<Step> steps = new ArrayList<>();
        for (Piece piece : pieces) {
            Paper paper = paper(piece, wider);
            altered = altered.with(paper.piece());
            steps.addAll(paper.steps());
        }
        return new Altered(altered, Map.of("by", Math.abs(wider)), steps, laws(draft, pieces, wider), List.of());
    }

    private Paper paper(Piece piece, double wider) {
        Path shoulder = piece.from(Names.SHOULDER, Names.NECKLINE);
        Path armhole = piece.from(Names.ARMHOLE, Names.SHOULDER);
        double scale = (shoulder.length() + wider) / shoulder.length();
        double up = -Math.signum(shoulder.endTangent().cross(piece.grain().down()));
        double turn = Bisection.largest(
                -MOST_TURN,
                MOST_TURN,
                higher -> following(armhole, lengthened(shoulder, scale, up * higher))
                                .length()
                        <= armhole.length());
        Motion motion = lengthened(shoulder, scale, up * turn);
        Path newArmhole = following(armhole, motion);

        String caption = "Draw the shoulder " + Reason.millimetres(Math.abs(wider)) + (isBroad ? " longer" : " shorter")
                + " from the neck; the armhole follows it, to nothing at the underarm, and keeps its length";
        Path neckline = piece.from(Names.NECKLINE, Names.SHOULDER).reversed();
        Path newNeckline = Bodice.turnedAtShoulder(
                Names.NECKLINE, neckline, neckline.endTangent().turned(motion.angle()));
        Path newShoulder = shoulder.moved(motion).withStart(shoulder.start()).withEnd(newArmhole.start());
        Paper paper = Paper.of(piece)
                .then(Redraw.whole(caption, piece, Names.SHOULDER, Names.NECKLINE, newShoulder)
                        .and(Redraw.whole(caption, piece, Names.ARMHOLE, Names.SHOULDER, newArmhole))
                        .and(Redraw.whole(caption, piece, Names.NECKLINE, Names.SHOULDER, newNeckline.reversed())));
        return paper.marked(Bodice.withDarts(piece, paper.piece(), Names.SHOULDER));
    }

    /** The shoulder's motion about its neck end: longer by a factor, and turned. */
    private static Motion lengthened(Path shoulder, double scale, double turn) {
        Vector chord = shoulder.end().minus(shoulder.start());
        return Motion.reaching(
                shoulder.start(),
                shoulder.end(),
                shoulder.start().plus(chord.times(scale).turned(turn)));
    }

    /** The armhole from the moved tip, at its old angle to the shoulder. */
    private static Path following(Path armhole, Motion shoulder) {
        Point tip = armhole.start();
        Path followed = armhole.givingWay(shoulder.of(tip).minus(tip)).reversed();
        return Bodice.turnedAtShoulder(
                        Names.ARMHOLE, followed, followed.endTangent().turned(shoulder.angle()))
                .reversed();
    }

    private static List<Law> laws(Draft draft, List<Piece> pieces, double wider) {
        List<Law> laws =
                Bodice.staying(draft, pieces, Names.CENTRE_FRONT, Names.CENTRE_BACK, Names.SIDE_SEAM, Names.HEM);
        for (Piece piece : pieces) {
            String name = piece.name();
            laws.add(Law.changesLength(name, Names.SHOULDER, wider, 0.1));
            laws.add(Law.keepsLength(name, Names.ARMHOLE, 0.1));
            laws.add(Bodice.keepsShape(name, Names.NECKLINE, Motion.STAY, 0.5));
            laws.add(Law.keepsLength(name, Names.NECKLINE, 0.3));
            Bodice.levelsOnSideSeam(piece).forEach(level -> laws.add(Law.keepsWidth(name, level, 0.01)));
        }
        Bodice.shoulderSeams(draft, pieces).forEach(seam -> laws.add(Law.keepsDifference(seam.join(), seam.to(), 0.1)));
        return laws;
    }
}
