package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Bisection;
import dev.hingepoint.curve.Fairing;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Raises or lowers the armhole at the underarm, front and back together: {@code armhole: {lower: 10 mm}}, {@code armhole: {raise: 10 mm}}. The
 * underarm goes down the side seam by so many mm, or up on the seam run straight on; the armhole gives way to it below its innermost
 * point, and keeps its angle to the side seam. With {@code sleeve: follows} the ends of the cap go down or up with it, as deep as keeps
 * the ease of the cap.
 *
 * <p>Kept: shoulder and neckline, the armhole above its innermost point, the side seams' match, every girth; the width of a sleeve that follows,
 * its top and its hem. Common practice, no source.
 */
final class ArmholeDepth implements Alteration {
    private static final double USUAL_MOST = 25;
    private static final double WITHIN = 0.4;

    /** An armhole that is raised too far dips before it comes up to the underarm; by less than 5 degrees one does not see it. */
    private static final double TURNED_BACK = StrictMath.toRadians(5);

    /** The deepest and the highest that is looked for where a cap owes or is owed something. */
    private static final double MOST_OFFERED = 60;

    @Override
    public String name() {
        return "armhole";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("raise", "10 mm", "sleeve", "follows");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("raise", "lower", "sleeve");
        if (options.has("raise") == options.has("lower")) {
            throw options.refuse("alter.armhole.needs-one-amount");
        }
        boolean isLower = options.has("lower");
        String way = isLower ? "lower" : "raise";
        double by =
                options.positive(way, way + ": 10 mm", Message.of("alter.options.order", isLower ? "raise" : "lower"));
        boolean follows =
                options.choice("sleeve", "stays", "follows").orElse("stays").equals("follows");
        List<Piece> pieces = Bodice.pieces(draft, name());
        if (follows && CapEase.seams(draft, pieces).isEmpty()) {
            throw options.refuse("alter.armhole.no-sleeve-to-follow");
        }
        Altered altered = LargestAmount.orRefusal(
                draft, by, amount -> altered(draft, pieces, isLower ? amount : -amount, follows));
        String correction = follows ? "" : "order sleeve: follows with it";
        Altered told = CapEase.told(altered, draft, pieces, correction);
        return by > USUAL_MOST ? told.withNote(Reason.millimetres(by) + " is unusual: up to 25 mm is common") : told;
    }

    private static Altered altered(Draft draft, List<Piece> pieces, double lower, boolean follows) {
        Draft altered = draft;
        List<Step> steps = new ArrayList<>();
        for (Piece piece : pieces) {
            Paper paper = paper(piece, lower);
            altered = altered.with(paper.piece());
            steps.addAll(paper.steps());
        }
        List<Seam> seams = CapEase.seams(draft, pieces);
        List<Law> laws = laws(draft, pieces, lower);
        if (follows) {
            for (Seam seam : seams) {
                Paper paper = sleeve(draft, altered, seam);
                altered = CapNotches.following(draft, altered.with(paper.piece()), seam);
                steps.addAll(paper.steps());
                laws.add(UnderarmBlend.keepsEase(seam));
            }
        }
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put(lower > 0 ? "lower" : "raise", Math.abs(lower));
        amounts.put("sleeve", follows ? "follows" : "stays");
        return new Altered(altered, amounts, steps, laws, List.of());
    }

    private static Paper paper(Piece piece, double lower) {
        String caption = (lower > 0 ? "Lower" : "Raise") + " the armhole of the " + piece.name() + " by "
                + Reason.millimetres(Math.abs(lower)) + " at the underarm, to nothing at its innermost point";
        Path side = piece.from(Names.SIDE_SEAM, Names.ARMHOLE);
        requireRoom(piece, side, lower);
        Path newSide = lower > 0
                ? side.part(lower, side.length())
                : Path.through(side.start().plus(side.startTangent().times(lower)), side.start())
                        .then(side);
        return Paper.of(piece)
                .then(Redraw.whole(caption, piece, Names.SIDE_SEAM, Names.ARMHOLE, newSide)
                        .and(Redraw.whole(
                                caption, piece, Names.ARMHOLE, Names.SIDE_SEAM, armhole(piece, side, newSide))));
    }

    /** What is drawn on the side seam below the underarm stays on it. */
    private static void requireRoom(Piece piece, Path side, double lower) {
        OptionalDouble room = DoubleStream.concat(
                        DoubleStream.concat(Bodice.toFirstDart(piece).stream(), Bodice.toFirstLevel(piece).stream()),
                        CapNotches.on(piece, Names.SIDE_SEAM)
                                .mapToDouble(notch -> side.distanceAlong(side.nearest(notch.at()))))
                .min();
        if (lower >= room.orElse(side.length() / 2)) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.armhole.no-room-below"), piece.where().edge(Names.SIDE_SEAM)));
        }
    }

    private static Path armhole(Piece piece, Path side, Path newSide) {
        Path own = piece.from(Names.ARMHOLE, Names.SIDE_SEAM);
        Vector step = newSide.start().minus(side.start());
        double turn = side.startTangent().angleTo(newSide.startTangent());
        Path toUnderarm = Bodice.withEndMoved(own, Bodice.outwards(piece), step).reversed();
        return Fairing.turnedAtEnd(toUnderarm, toUnderarm.endTangent().turned(turn), WITHIN)
                .withEnd(newSide.start())
                .reversed();
    }

    /** The sleeve with the ends of its cap as much deeper as keeps the ease. */
    private static Paper sleeve(Draft before, Draft after, Seam seam) {
        EdgeRef ref = UnderarmBlend.cap(seam);
        Piece sleeve = before.piece(ref.piece());
        SleeveCap cap = new SleeveCap(sleeve, ref.edge());
        double longer = CapNotches.armholes(after, seam) - CapNotches.armholes(before, seam);
        double wanted = sleeve.edge(ref.edge()).path().length() + longer;
        SleeveCap.Ends ends = cap.ends(0, Path::length, wanted);
        double deeper = cap.height(ends) - cap.height();
        String caption = "Draw the cap of the " + sleeve.name() + " " + Reason.millimetres(Math.abs(deeper))
                + (deeper > 0 ? " deeper" : " shallower")
                + ", so that it goes into the new armhole with the same ease; "
                + "top, width and hem stay";
        return Paper.of(sleeve).then(cap.redraw(caption, ends));
    }

    /**
     * The order that makes the armholes of these pieces longer by so many mm in all, for a cap that needs them so; empty where none does.
     */
    static String offered(Draft draft, List<Piece> pieces, double longer) {
        double sign = Math.signum(longer);
        double most = Bisection.largest(0, MOST_OFFERED, by -> {
            try {
                return sign * growth(pieces, sign * by) <= Math.abs(longer);
            } catch (Refusal | IllegalArgumentException noRoom) {
                return false;
            }
        });
        boolean isFound = Math.abs(growth(pieces, sign * most) - longer) < 1;
        return isFound ? "armhole: {" + (longer > 0 ? "lower" : "raise") + ": " + Reason.millimetres(most) + "}" : "";
    }

    private static double growth(List<Piece> pieces, double lower) {
        return lower == 0
                ? 0
                : pieces.stream()
                        .mapToDouble(piece ->
                                paper(piece, lower).piece().sewnLength(Names.ARMHOLE) - piece.sewnLength(Names.ARMHOLE))
                        .sum();
    }

    private static List<Law> laws(Draft draft, List<Piece> pieces, double lower) {
        List<Law> laws = new ArrayList<>();
        for (Piece piece : pieces) {
            for (String edge :
                    List.of(Names.NECKLINE, Names.SHOULDER, Names.HEM, Names.CENTRE_FRONT, Names.CENTRE_BACK)) {
                if (piece.hasEdge(edge)) {
                    laws.add(Law.keepsPlace(piece.name(), edge));
                }
            }
            laws.add(Law.changesLength(piece.name(), Names.SIDE_SEAM, -lower, 0.1));
            laws.add(Law.ofAngles(
                    Message.of("alter.armhole.law.bends-one-way"),
                    piece.where().edge(Names.ARMHOLE),
                    (before, after) -> 0,
                    (before, after) -> Math.max(0, turnedBack(after, piece) - turnedBack(before, piece)),
                    TURNED_BACK));
            Bodice.levelsOnSideSeam(piece).forEach(level -> laws.add(Law.keepsWidth(piece.name(), level, 0.01)));
        }
        Bodice.sideSeams(draft, pieces).forEach(seam -> laws.add(Law.keepsDifference(seam.join(), seam.to(), 0.1)));
        return laws;
    }

    private static double turnedBack(Draft draft, Piece piece) {
        return draft.piece(piece.name()).edge(Names.ARMHOLE).path().turnedBack();
    }
}
