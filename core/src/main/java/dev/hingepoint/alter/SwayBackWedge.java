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
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.Spot;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
        double middle = centreBack.distanceAlong(centreBack.nearest(line.start()));
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

    static Altered alter(Draft draft, Piece back, double wedge, String level, double above, boolean keepFold) {
        SwayBackWedge recipe = new SwayBackWedge(draft, back, wedge, level, above, keepFold);
        Paper cut = Paper.of(back).then(recipe.cut());
        return Faired.untilLawsHold(draft, recipe.reach(cut.piece()), reach -> recipe.trued(cut, reach));
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

    /** Where the paper below was joined on at centre back and at the side seam: the step between the two parts, in order along it. */
    private Spot[] step(Piece piece, String edge, Point one, Point other) {
        Spot a = piece.nearest(piece.edge(edge), one);
        Spot b = piece.nearest(piece.edge(edge), other);
        return a.position().compareTo(b.position()) <= 0 ? new Spot[] {a, b} : new Spot[] {b, a};
    }

    private Spot[] stepAtCentreBack(Piece piece) {
        return step(piece, SwayBack.CENTRE_BACK, upper, belowMotion().of(lower));
    }

    private Spot[] stepAtSide(Piece piece) {
        return step(piece, SwayBack.SIDE_SEAM, hinge, belowMotion().of(hinge));
    }

    private double reach(Piece cut) {
        Spot[] side = stepAtSide(cut);
        double atSide = Redraw.reach(cut, side[0], side[1]);
        if (keepFold) {
            return Math.min(60, atSide);
        }
        Spot[] centre = stepAtCentreBack(cut);
        return Math.min(atSide, Redraw.reach(cut, centre[0], centre[1]));
    }

    private Altered trued(Paper cut, double reach) {
        Paper paper = cut;
        if (!keepFold && !wasCorner(SwayBack.CENTRE_BACK, upper)) {
            Spot[] centre = stepAtCentreBack(paper.piece());
            paper = paper.then(Redraw.faired("Fair centre back", paper.piece(), centre[0], centre[1], reach));
        }
        if (!wasCorner(SwayBack.SIDE_SEAM, hinge)) {
            Spot[] side = stepAtSide(paper.piece());
            paper = paper.then(Redraw.faired("Fair the side seam", paper.piece(), side[0], side[1], reach));
        }
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
        return laws;
    }
}
