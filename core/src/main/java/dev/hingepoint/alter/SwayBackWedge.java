package dev.hingepoint.alter;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Cut;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.Spot;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The sway-back wedge: a level line from centre back to the side seam is opened into a wedge whose point is on the side seam's stitching
 * line; the wedge is folded out and the part below turns up about its point.
 *
 * <p>With r the length of the line, the part below turns by 2 atan(w / 2r) and the paper removed is w r / 2; the level at the line
 * becomes longer by w&sup2;/8r a half. On a fold, asked for with {@code keep fold}, the paper below is first sheared along its levels
 * so that the fold stays one straight line. Derived.
 */
final class SwayBackWedge {
    private static final double LARGE_STEP = 2;

    /** Faired over less than this many mm, a bend is still seen. */
    private static final double FAIR = 5;

    /** A step at a corner that stays is closed over so many mm. */
    private static final double STEP_CLOSED_OVER = 60;

    private final Draft draft;
    private final Piece back;
    private final double wedge;
    private final String level;
    private final double above;
    private final boolean keepFold;

    /** The end of the wedge's line on the side seam. */
    private final Point hinge;

    /** The upper and the lower end of the wedge on centre back. */
    private final Point upper;

    private final Point lower;

    private SwayBackWedge(Draft draft, Piece back, double wedge, String level, double above, boolean keepFold) {
        this.draft = draft;
        this.back = back;
        this.wedge = wedge;
        this.level = level;
        this.above = above;
        this.keepFold = keepFold;
        Line line = back.levelFrame(level).across(SwayBack.CENTRE_BACK, SwayBack.SIDE_SEAM, above);
        Path centreBack = back.downwards(SwayBack.CENTRE_BACK);
        double middle = onCorner(centreBack, centreBack.distanceAlong(centreBack.nearest(line.start())), wedge / 2);
        double room = 2 * Math.min(middle, centreBack.length() - middle);
        if (wedge >= room) {
            throw new Refusal(Reason.BeyondLimit.of(
                    "a wedge of " + Reason.millimetres(wedge) + " does not fit on centre back",
                    back.where(),
                    wedge,
                    room));
        }
        this.hinge = line.end();
        this.upper = centreBack.at(middle - wedge / 2);
        this.lower = centreBack.at(middle + wedge / 2);
    }

    /** The middle of the wedge, moved so that an end of it within the joining tolerance of a corner lies on the corner. */
    private static double onCorner(Path centreBack, double middle, double half) {
        return centreBack.corners(Tolerance.CORNER).stream()
                .map(centreBack::distanceAlong)
                .flatMap(corner -> Stream.of(corner + half - middle, corner - half - middle))
                .filter(off -> Math.abs(off) <= Tolerance.JOINING)
                .findFirst()
                .map(off -> middle + off)
                .orElse(middle);
    }

    static Altered alter(Draft draft, Piece back, double wedge, String level, double above, boolean keepFold) {
        SwayBackWedge recipe = new SwayBackWedge(draft, back, wedge, level, above, keepFold);
        Paper cut = Paper.of(back).then(recipe.cut());
        double reach = recipe.reach(cut.piece());
        Altered altered = Faired.untilLawsHold(draft, reach, shorter -> recipe.trued(cut, shorter));
        return reach >= FAIR
                ? altered
                : altered.withNote("a corner of the " + back.name() + " lies " + Reason.millimetres(reach)
                        + " from the wedge: the seam is faired over so much only");
    }

    private Cut cut() {
        String caption =
                "Fold out " + Reason.millimetres(wedge) + " at centre back, running to nothing at the side seam";
        Place wedgeEnd = Place.near(SwayBack.CENTRE_BACK, upper.midpoint(lower));
        Place below =
                Place.corner(SwayBack.SIDE_SEAM, back.below(SwayBack.SIDE_SEAM).name());
        return Cut.along(caption, Path.through(upper, hinge), Path.through(lower, hinge))
                .folding(wedgeEnd, Motion.fold(hinge, upper, lower))
                .moving(below, belowMotion())
                .withGrainOn(below);
    }

    /** The turn that closes the wedge; on a fold, after the shear along the levels that the turn will straighten again. */
    private Motion belowMotion() {
        Motion turn = Motion.turn(hinge, lower.minus(hinge), upper.minus(hinge));
        if (!keepFold) {
            return turn;
        }
        Vector along = back.levelFrame(level).outwards();
        return Motion.shear(lower, along, StrictMath.tan(turn.angle())).then(turn);
    }

    /** The rule's reach in mm: the same at centre back and at the side seam, so that what the one gains the other gives. */
    private double reach(Piece cut) {
        double atSide = reach(cut, SwayBack.SIDE_SEAM, hinge, hinge);
        return keepFold ? atSide : Math.min(atSide, reach(cut, SwayBack.CENTRE_BACK, upper, lower));
    }

    private double reach(Piece cut, String edge, Point above, Point below) {
        return Redraw.reach(cut, onAbove(cut, edge, above), onBelow(cut, edge, below));
    }

    private static Spot onAbove(Piece piece, String edge, Point above) {
        return piece.nearest(piece.edge(edge), above);
    }

    private Spot onBelow(Piece piece, String edge, Point below) {
        return piece.nearest(piece.edge(edge), belowMotion().of(below));
    }

    private Altered trued(Paper cut, double reach) {
        Paper paper = keepFold ? cut : joined(cut, "Fair centre back", SwayBack.CENTRE_BACK, upper, lower, reach);
        paper = joined(paper, "Fair the side seam", SwayBack.SIDE_SEAM, hinge, hinge, reach);
        if (keepFold) {
            paper = paper.then(HemTruing.on(back, paper.piece(), SwayBack.CENTRE_BACK, wedge));
        }
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("wedge", wedge);
        amounts.put("at", level);
        amounts.put("above", above);
        amounts.put("method", "wedge");
        Altered altered = Altered.of(draft, paper, amounts).withLaws(laws());
        double step = Math.abs(hinge.distanceTo(upper) - hinge.distanceTo(lower));
        if (step > LARGE_STEP) {
            altered = altered.withNote("centre back slants where the wedge is folded out, and steps by "
                    + Reason.millimetres(step) + ": faired out");
        }
        if (keepFold) {
            altered = altered.withNote("on a straight fold a wedge mostly lifts the hem at centre back");
        }
        return altered;
    }

    /** The seam where the paper below was joined on: fair, or, where the pattern had a corner there, with that corner and no step. */
    private Paper joined(Paper paper, String caption, String edge, Point above, Point below, double reach) {
        Piece piece = paper.piece();
        Spot one = onAbove(piece, edge, above);
        Spot other = onBelow(piece, edge, below);
        if (!wasCorner(edge, above)) {
            return paper.then(Redraw.faired(caption, piece, one, other, reach));
        }
        return one.point().isCloseTo(other.point(), Tolerance.COINCIDENT)
                ? paper
                : paper.then(Redraw.stepClosed(caption, piece, other, one, STEP_CLOSED_OVER));
    }

    /** Corners that the pattern had when it was read stay. */
    private boolean wasCorner(String edge, Point at) {
        Path path = back.edge(edge).path();
        return path.corners(Tolerance.CORNER).stream()
                .anyMatch(corner -> path.at(corner).isCloseTo(at, Tolerance.COINCIDENT));
    }

    private List<Law> laws() {
        List<Law> laws = SwayBack.commonLaws(draft, back, 0.5, "neckline", "shoulder", "armhole");
        double lengths = keepFold ? 0.1 : 0.3;
        laws.add(Law.changesLength(back.name(), SwayBack.CENTRE_BACK, -wedge, lengths));
        laws.add(Law.keepsLength(back.name(), SwayBack.SIDE_SEAM, lengths));
        back.marks(Dart.class).forEach(dart -> laws.add(Law.keepsLegsEqual(back.name(), dart.name(), 0.01)));
        return laws;
    }
}
