package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Shoulders that slope less, or more, than the draft's: {@code square shoulders: {by: 10 mm}}, {@code sloping shoulders: {by: 10 mm}}. The
 * tip of the shoulder goes up, or down, by the amount on front and back, and the whole armhole with it, underarm and all.
 *
 * <p>Kept: the armhole's length and shape, so that the sleeve goes in as before; the neckline; every girth from the bust down. The shoulder
 * runs from its neck end to the new tip; the side seams gain, or lose, alike at the underarm, and give way to it above the bust level and
 * the dart. Neckline and armhole turn with the shoulder where they meet it, so that front and back still run on; where front and back lean
 * or slope differently, each seam's end slides along it by half of what the two would differ by. Source: a pattern-making
 * text ("square or sloping: the whole armhole moves, its length stays; side seams change alike").
 */
final class ShoulderSlope implements Alteration {
    private static final double USUAL_MOST = 20;

    /** An armhole is in its shape within this many mm: what turns with the shoulder, and what trues side seams and shoulders at their ends. */
    private static final double SHAPE = 1.5;

    /** Shoulder and armhole settle to less than a hair in fewer. */
    private static final int ROUNDS = 8;

    private final boolean isSquare;

    private ShoulderSlope(boolean isSquare) {
        this.isSquare = isSquare;
    }

    static ShoulderSlope square() {
        return new ShoulderSlope(true);
    }

    static ShoulderSlope sloping() {
        return new ShoulderSlope(false);
    }

    @Override
    public String name() {
        return isSquare ? "square shoulders" : "sloping shoulders";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("by", "10 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("by");
        double by = options.positive(
                "by",
                "by: 10 mm",
                Message.of("alter.options.order", isSquare ? "sloping shoulders" : "square shoulders"));
        List<Piece> pieces = Bodice.pieces(draft, name());
        return LargestAmount.orRefusal(draft, by, amount -> altered(draft, pieces, amount));
    }

    private Altered altered(Draft draft, List<Piece> pieces, double by) {
        pieces.forEach(piece -> requireRoom(piece, by));
        Map<String, Double> underarms = shared(draft, Bodice.sideSeams(draft, pieces), piece -> growth(piece, by));
        Map<String, Double> tips =
                shared(draft, Bodice.shoulderSeams(draft, pieces), piece -> shoulderGrowth(piece, by));
        Draft altered = draft;
        List<Step> steps = new ArrayList<>();
        for (Piece piece : pieces) {
            Paper paper =
                    paper(piece, by, underarms.getOrDefault(piece.name(), 0.0), tips.getOrDefault(piece.name(), 0.0));
            altered = altered.with(paper.piece());
            steps.addAll(paper.steps());
        }
        Altered done = new Altered(altered, Map.of("by", by), steps, laws(draft, pieces, by), List.of());
        return notes(CapEase.told(done, draft, pieces, ""), draft, pieces, by);
    }

    /** How the tip and the whole armhole move. */
    private Vector rise(Piece piece, double by) {
        return piece.grain().down().times(isSquare ? -by : by);
    }

    private void requireRoom(Piece piece, double by) {
        double room = 0.75 * Bodice.wayOfSideSeam(piece);
        if (!isSquare && by > room) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.shoulder-slope.no-room-below"),
                    piece.where().edge(Names.SIDE_SEAM),
                    by,
                    room));
        }
    }

    /**
     * Front and back lean and slope differently, and two seams that are sewn together change by a hair more or less: the end of each slides back
     * along it by half of that, in mm.
     */
    private static Map<String, Double> shared(Draft draft, List<Seam> seams, ToDoubleFunction<Piece> growth) {
        Map<String, Double> slides = new LinkedHashMap<>();
        for (Seam seam : seams) {
            Piece one = draft.piece(seam.join().get(0).piece());
            Piece other = draft.piece(seam.to().get(0).piece());
            double more = growth.applyAsDouble(one) - growth.applyAsDouble(other);
            slides.put(one.name(), more / 2);
            slides.put(other.name(), -more / 2);
        }
        return slides;
    }

    private double shoulderGrowth(Piece piece, double by) {
        Path shoulder = piece.from(Names.SHOULDER, Names.NECKLINE);
        return shoulder.moved(turn(shoulder, rise(piece, by))).length() - shoulder.length();
    }

    /** The shoulder's motion about its neck end. */
    private static Motion turn(Path shoulder, Vector step) {
        return Motion.reaching(shoulder.start(), shoulder.end(), shoulder.end().plus(step));
    }

    private double growth(Piece piece, double by) {
        return sideSeam(piece, rise(piece, by)).length() - Bodice.wayOfSideSeam(piece);
    }

    /** The upper end of the side seam, from the new underarm to where it is as it was. */
    private static Path sideSeam(Piece piece, Vector rise) {
        return piece.from(Names.SIDE_SEAM, Names.ARMHOLE)
                .part(0, Bodice.wayOfSideSeam(piece))
                .givingWay(rise);
    }

    private Paper paper(Piece piece, double by, double underarm, double tip) {
        String caption = (isSquare ? "Raise" : "Lower") + " the tip of the shoulder by " + Reason.millimetres(by)
                + ", and the whole armhole with it; the side seam follows at the underarm";
        Vector rise = rise(piece, by);
        Path shoulder = piece.from(Names.SHOULDER, Names.NECKLINE);
        Vector sliding =
                piece.from(Names.SIDE_SEAM, Names.ARMHOLE).startTangent().times(underarm);
        Vector drawnIn = drawnIn(piece, rise, sliding, tip);
        Motion turn = turn(shoulder, rise.plus(drawnIn));
        Path neckline = piece.from(Names.NECKLINE, Names.SHOULDER).reversed();
        Path newShoulder = shoulder.moved(turn)
                .withStart(shoulder.start())
                .withEnd(shoulder.end().plus(rise).plus(drawnIn));
        Paper paper = Paper.of(piece)
                .then(Redraw.whole(caption, piece, Names.SHOULDER, Names.NECKLINE, newShoulder)
                        .and(Redraw.whole(
                                caption,
                                piece,
                                Names.NECKLINE,
                                Names.SHOULDER,
                                turnedWithShoulder(Names.NECKLINE, neckline, turn)
                                        .reversed()))
                        .and(Redraw.whole(
                                caption,
                                piece,
                                Names.ARMHOLE,
                                Names.SIDE_SEAM,
                                turnedWithShoulder(Names.ARMHOLE, armhole(piece, rise, sliding, drawnIn), turn)))
                        .and(Redraw.end(
                                caption,
                                piece,
                                Names.SIDE_SEAM,
                                Names.ARMHOLE,
                                Bodice.wayOfSideSeam(piece),
                                sideSeam(piece, rise.plus(sliding)))));
        return paper.marked(Bodice.withDarts(piece, paper.piece(), Names.SHOULDER));
    }

    /** The tip's step back along the shoulder, by so many mm of its length, and up or down by what the armhole needs to keep its own. */
    private static Vector drawnIn(Piece piece, Vector rise, Vector underarm, double by) {
        if (Math.abs(by) <= Tolerance.COINCIDENT) {
            return Vector.ZERO;
        }
        Path shoulder = piece.from(Names.SHOULDER, Names.NECKLINE);
        Path armhole = piece.from(Names.ARMHOLE, Names.SHOULDER);
        double wanted = shoulder.moved(turn(shoulder, rise)).length() - by;
        Vector step = Vector.ZERO;
        for (int round = 0; round < ROUNDS; round++) {
            Motion turn = turn(shoulder, rise.plus(step));
            double shorter = wanted - shoulder.moved(turn).length();
            double longer = turnedWithShoulder(Names.ARMHOLE, armhole(piece, Vector.ZERO, underarm, step), turn)
                            .length()
                    - armhole.length();
            step = step.plus(turn.of(shoulder.endTangent()).unit().times(shorter))
                    .plus(armhole.startTangent().times(longer));
        }
        return step;
    }

    /** From its underarm, which slides along the side seam, to the tip, which slides along the shoulder. */
    private static Path armhole(Piece piece, Vector rise, Vector underarm, Vector tip) {
        Path raised = piece.from(Names.ARMHOLE, Names.SIDE_SEAM).moved(Motion.shift(rise));
        Vector outwards = Bodice.outwards(piece);
        Path toTip = Bodice.withEndMoved(raised, outwards, underarm);
        return Bodice.withEndMoved(toTip.reversed(), outwards, tip).reversed();
    }

    /** What meets the shoulder keeps its angle to it. */
    private static Path turnedWithShoulder(String edge, Path path, Motion turn) {
        return Bodice.turnedAtShoulder(edge, path, path.endTangent().turned(turn.angle()));
    }

    private List<Law> laws(Draft draft, List<Piece> pieces, double by) {
        List<Law> laws = Bodice.staying(draft, pieces, Names.CENTRE_FRONT, Names.CENTRE_BACK, Names.HEM);
        for (Piece piece : pieces) {
            String name = piece.name();
            laws.add(Bodice.keepsShape(name, Names.NECKLINE, Motion.STAY, 0.5));
            laws.add(Law.keepsLength(name, Names.NECKLINE, 0.3));
            laws.add(Bodice.keepsShape(name, Names.ARMHOLE, Motion.shift(rise(piece, by)), SHAPE));
            laws.add(Law.keepsLength(name, Names.ARMHOLE, 0.3));
            piece.marks(Level.class)
                    .filter(level -> below(piece, level))
                    .forEach(level -> laws.add(Law.keepsWidth(name, level.name(), 0.1)));
        }
        Bodice.sideSeams(draft, pieces).forEach(seam -> laws.add(Law.keepsDifference(seam.join(), seam.to(), 0.1)));
        Bodice.shoulderSeams(draft, pieces).forEach(seam -> laws.add(Law.keepsDifference(seam.join(), seam.to(), 0.1)));
        return laws;
    }

    /** Whether a level ends below the stretch of side seam that gives way. */
    private static boolean below(Piece piece, Level level) {
        Path side = piece.from(Names.SIDE_SEAM, Names.ARMHOLE);
        Point end = piece.levelFrame(level.name()).outerEnd();
        return side.distanceAlong(side.nearest(end)) >= Bodice.wayOfSideSeam(piece) - Tolerance.COINCIDENT;
    }

    private Altered notes(Altered altered, Draft draft, List<Piece> pieces, double by) {
        Piece piece = pieces.get(0);
        double shoulder =
                altered.draft().piece(piece.name()).sewnLength(Names.SHOULDER) - piece.sewnLength(Names.SHOULDER);
        Altered told = altered.withNote("the shoulder of the " + piece.name() + " is "
                + Reason.millimetres(Math.abs(shoulder)) + (shoulder < 0 ? " shorter" : " longer")
                + ", since its tip goes straight " + (isSquare ? "up" : "down") + "; "
                + (shoulder < 0 ? "broad shoulders gives" : "narrow shoulders takes") + " that back");
        return by > USUAL_MOST ? told.withNote(Reason.millimetres(by) + " is unusual: up to 20 mm is common") : told;
    }
}
