package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Cut;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.Spot;
import java.util.List;
import java.util.stream.Stream;

/**
 * A wedge of w mm on the centre line, running along a level to nothing at the side seam: opened, or folded out. The part above stays, the
 * part below swings about the wedge's point on the side seam's stitching line; the grain follows the part below, which hangs plumb.
 *
 * <p>With r the length of the slash, opening turns the part below by 2 asin(w / 2r). A fold must stay one straight line: the paper below
 * is sheared along its levels by the tangent of the angle before it turns by asin(w / r), so that every level keeps its length and the
 * fold comes out straight and w longer; the part below then starts w&sup2;/2r farther in at the side, and the seam is drawn to
 * the end of the level. Folding out is the
 * same backwards, from w / 2 above the level to w / 2 below it. Derived.
 */
final class CentreWedge {
    /** A step is closed over so many mm. */
    private static final double STEP_CLOSED_OVER = 60;

    private final Piece piece;
    private final String centre;
    private final double wedge;
    private final String level;
    private final boolean opens;
    private final boolean onFold;
    private final Point hinge;
    private final Point upper;
    private final Point lower;

    /**
     * @param wedge mm on the centre line, more than 0
     * @param above how many mm above the level the wedge lies
     * @throws Refusal where the wedge does not fit
     */
    CentreWedge(Piece piece, String centre, double wedge, boolean opens, String level, double above) {
        this.piece = piece;
        this.centre = centre;
        this.wedge = wedge;
        this.level = level;
        this.opens = opens;
        this.onFold = piece.edge(centre).kind() == Edge.Kind.FOLD;
        Line line = piece.levelFrame(level).across(centre, Names.SIDE_SEAM, above);
        Path down = piece.downwards(centre);
        double middle = onCorner(down, down.distanceAlong(down.nearest(line.start())), opens ? 0 : wedge / 2);
        double room = opens ? line.length() : 2 * Math.min(middle, down.length() - middle);
        if (wedge >= room) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.centre-wedge.does-not-fit", Quantity.millimetres(wedge), centre),
                    piece.where(),
                    wedge,
                    room));
        }
        double half = opens ? 0 : wedge / 2;
        this.hinge = line.end();
        this.upper = down.at(middle - half);
        this.lower = down.at(middle + half);
    }

    /** The middle of the wedge, moved so that an end of it within the joining tolerance of a corner lies on the corner. */
    private static double onCorner(Path centreLine, double middle, double half) {
        return centreLine.corners(Tolerance.CORNER).stream()
                .map(centreLine::distanceAlong)
                .flatMap(corner -> Stream.of(corner + half - middle, corner - half - middle))
                .filter(off -> Math.abs(off) <= Tolerance.JOINING)
                .findFirst()
                .map(off -> middle + off)
                .orElse(middle);
    }

    /** By how much in mm the two sides of a wedge that is folded out miss each other at the centre line. */
    double step() {
        return Math.abs(hinge.distanceTo(upper) - hinge.distanceTo(lower));
    }

    /** How much longer in mm the centre line gets. */
    double longer() {
        return opens ? wedge : -wedge;
    }

    /** The paper with this piece on it, slashed and moved. */
    Paper cut(Paper paper) {
        String caption = (opens ? "Open " : "Fold out ") + Reason.millimetres(wedge) + " at " + centre + " at the "
                + level + ", running to nothing at the side seam";
        Place below = Place.corner(Names.SIDE_SEAM, piece.below(Names.SIDE_SEAM).name());
        Cut slashed = opens
                ? Cut.along(caption, Path.through(upper, hinge))
                : Cut.along(caption, Path.through(upper, hinge), Path.through(lower, hinge))
                        .folding(Place.near(centre, upper.midpoint(lower)), Motion.fold(hinge, upper, lower));
        return paper.then(slashed.moving(below, belowMotion()).withGrainOn(below));
    }

    private Motion belowMotion() {
        Motion turn = opens ? opening() : Motion.turn(hinge, lower.minus(hinge), upper.minus(hinge));
        if (!onFold) {
            return turn;
        }
        Vector along = piece.levelFrame(level).outwards();
        return Motion.shear(lower, along, StrictMath.tan(turn.angle())).then(turn);
    }

    /** Turns the end on the centre line down: about the hinge, or on a fold about that end itself, which then goes straight down. */
    private Motion opening() {
        Vector slash = upper.minus(hinge);
        Vector down = piece.downwards(centre).tangent(piece.downwards(centre).nearest(upper));
        double sign = Math.signum(slash.right().dot(down));
        return onFold
                ? Motion.turn(upper, sign * StrictMath.asin(wedge / slash.length()))
                        .then(Motion.shift(down.times(wedge)))
                : Motion.turn(hinge, sign * 2 * StrictMath.asin(wedge / 2 / slash.length()));
    }

    /** The rule's reach in mm: the same at the centre line and at the side seam, so that what the one gains the other gives. */
    double reach(Paper cut) {
        Spot[] side = stepAtSide(cut.piece());
        double atSide = Redraw.reach(cut.piece(), side[0], side[1]);
        Spot[] gap = stepAtCentre(cut.piece());
        return onFold ? atSide : Math.min(atSide, Redraw.reach(cut.piece(), gap[0], gap[1]));
    }

    /** Centre line, side seam and, on a fold, the hem made fair over {@code reach} mm. */
    Paper trued(Paper cut, double reach) {
        Paper paper = onFold ? cut : centreTrued(cut, reach);
        paper = sideTrued(paper, reach);
        return onFold ? paper.then(HemTruing.on(piece, paper.piece(), centre, -longer())) : paper;
    }

    private Paper centreTrued(Paper paper, double reach) {
        Spot[] gap = stepAtCentre(paper.piece());
        String caption = "Fair " + centre;
        if (wasCorner(centre, upper)) {
            return opens ? paper : closed(paper, gap[1], gap[0], centre);
        }
        return paper.then(
                opens
                        ? Redraw.bridged(caption, paper.piece(), gap[0], gap[1], reach)
                        : Redraw.faired(caption, paper.piece(), gap[0], gap[1], reach));
    }

    /** The level goes with the part below where the wedge opens, and stays above where it is folded out: the seam is drawn to its end. */
    private Paper sideTrued(Paper paper, double reach) {
        Spot[] step = stepAtSide(paper.piece());
        Point levelEnd = opens ? belowMotion().of(hinge) : hinge;
        boolean endsFirst =
                step[0].point().distanceTo(levelEnd) < step[1].point().distanceTo(levelEnd);
        Spot kept = endsFirst ? step[0] : step[1];
        Paper closed = closed(paper, endsFirst ? step[1] : step[0], kept, Names.SIDE_SEAM);
        if (wasCorner(Names.SIDE_SEAM, hinge)) {
            return closed;
        }
        Piece now = closed.piece();
        Spot corner = now.nearest(now.edge(Names.SIDE_SEAM), kept.point());
        return closed.then(Redraw.faired("Fair the side seam", now, corner, reach));
    }

    /** The part that begins at {@code drawn} begins at {@code kept} instead. */
    private static Paper closed(Paper paper, Spot drawn, Spot kept, String edge) {
        return kept.point().isCloseTo(drawn.point(), Tolerance.COINCIDENT)
                ? paper
                : paper.then(Redraw.stepClosed(
                        "Close the step at the " + edge, paper.piece(), drawn, kept, STEP_CLOSED_OVER));
    }

    private Spot[] stepAtCentre(Piece now) {
        Edge edge = now.edge(centre);
        return new Spot[] {
            now.nearest(edge, upper), now.nearest(edge, belowMotion().of(lower))
        };
    }

    /** On a fold the parts miss each other by a hair at the side, and may overlap: the step is all that bends there. */
    private Spot[] stepAtSide(Piece now) {
        Edge side = now.edge(Names.SIDE_SEAM);
        double near = hinge.distanceTo(belowMotion().of(hinge)) + Tolerance.JOINING;
        List<Point> bends = side.path().corners(Tolerance.CORNER).stream()
                .map(side.path()::at)
                .filter(corner -> corner.isCloseTo(hinge, near))
                .toList();
        Point first = bends.isEmpty() ? hinge : bends.get(0);
        Point last = bends.isEmpty() ? hinge : bends.get(bends.size() - 1);
        return new Spot[] {now.nearest(side, first), now.nearest(side, last)};
    }

    /** Corners that the pattern had when it was read stay. */
    private boolean wasCorner(String edge, Point at) {
        Path path = piece.edge(edge).path();
        return path.corners(Tolerance.CORNER).stream()
                .anyMatch(corner -> path.at(corner).isCloseTo(at, Tolerance.COINCIDENT));
    }
}
