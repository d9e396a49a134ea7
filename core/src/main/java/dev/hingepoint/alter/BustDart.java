package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Spot;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Trues a bust dart after the paper was spread, or the dart moved: the leg ends stay where the cut left them, and the tip stops short of the apex, on
 * the perpendicular bisector of the mouth.
 */
final class BustDart {
    static final double MOST_LEG_CORRECTION = 2;

    private final String edge;
    private final Point upper;
    private final Point lower;
    private final Point apex;
    private final String name;
    private final OptionalDouble wantedDistance;

    /**
     * @param edge the edge that the dart opens on
     * @param upper the upper leg's end on the edge, after the cut
     * @param lower the lower leg's end on the edge, after the cut
     * @param apex after the cut
     * @param tipDistance how far in mm the tip stops short of the apex, where ordered
     */
    BustDart(String name, String edge, Point upper, Point lower, Point apex, OptionalDouble tipDistance) {
        this.name = name;
        this.edge = edge;
        this.upper = upper;
        this.lower = lower;
        this.apex = apex;
        this.wantedDistance = tipDistance;
    }

    String name() {
        return name;
    }

    double intake() {
        return upper.distanceTo(lower);
    }

    /** How far the tip stops short of the apex: the larger the dart, the farther (common practice). */
    private double tipDistance() {
        double intake = intake();
        return wantedDistance.orElse(intake <= 25 ? 25 : intake <= 45 ? 40 : 50);
    }

    /** The paper with the mouth straight, the dart drawn, and a notch at each leg. */
    Paper drawnOn(Paper paper) {
        Piece piece = paper.piece();
        Redraw mouth = Redraw.straight(
                "Draw the " + edge + " straight across the dart's mouth", onEdge(piece, upper), onEdge(piece, lower));
        Paper straight = paper.then(mouth);
        return tipOnBisector().map(tip -> marked(straight, upper, tip, lower)).orElseGet(() -> legsMadeEqual(straight));
    }

    private Spot onEdge(Piece piece, Point point) {
        return piece.nearest(piece.edge(edge), point);
    }

    /** Empty where no point of the bisector is that near to the apex. */
    private Optional<Point> tipOnBisector() {
        Point middle = upper.midpoint(lower);
        Vector bisector = lower.minus(upper).unit().left();
        Vector towardsApex = apex.minus(middle).dot(bisector) > 0 ? bisector : bisector.negated();
        double along = apex.minus(middle).dot(towardsApex);
        double aside = apex.minus(middle.plus(towardsApex.times(along))).length();
        double room = tipDistance() * tipDistance() - aside * aside;
        if (room < 0) {
            return Optional.empty();
        }
        double depth = along - Math.sqrt(room);
        if (depth <= 0) {
            throw tooNear(middle);
        }
        return Optional.of(middle.plus(towardsApex.times(depth)));
    }

    private Refusal tooNear(Point middle) {
        return new Refusal(Reason.BeyondLimit.of(
                Message.of(
                        "alter.bust-dart.begins-near-apex",
                        name,
                        Quantity.millimetres(middle.distanceTo(apex)),
                        Quantity.millimetres(tipDistance())),
                Where.UNKNOWN.mark(name)));
    }

    /** The legs are not equally far from the apex: the tip lies towards it, and the leg ends go in and out square to the edge. */
    private Paper legsMadeEqual(Paper paper) {
        double correction = Math.abs(legCorrection(paper.piece()));
        if (correction > MOST_LEG_CORRECTION) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of(
                            "alter.bust-dart.legs-differ",
                            name,
                            Quantity.millimetres(2 * correction),
                            Quantity.millimetres(2 * MOST_LEG_CORRECTION)),
                    paper.piece().where().mark(name)));
        }
        return pointed(paper.piece()).drawnOn(paper);
    }

    private PointedDart pointed(Piece piece) {
        return new PointedDart(piece, name, edge, upper, lower, apex, tipDistance());
    }

    /** By how many mm each leg end moves square to the edge, so that the legs are equal; 0 where they are. */
    double legCorrection(Piece piece) {
        return tipOnBisector().isPresent() ? 0 : pointed(piece).correction();
    }

    /** The dart drawn on a paper whose edge runs straight between the leg ends, with a notch at each. */
    Paper marked(Paper paper, Point legUpper, Point tip, Point legLower) {
        Piece piece = paper.piece();
        Piece drawn = piece.withMark(EdgeDart.of(name, legUpper, tip, legLower))
                .withMark(notch(name + ", upper leg", legUpper, tip))
                .withMark(notch(name + ", lower leg", legLower, tip));
        String caption = "Draw the " + name + ": its tip " + Reason.millimetres(tip.distanceTo(apex))
                + " short of the bust apex, its legs " + Reason.millimetres(tip.distanceTo(legUpper)) + " to the "
                + edge;
        return paper.marked(caption, drawn);
    }

    private static Notch notch(String name, Point at, Point towards) {
        return new Notch(name, 1, new Line(at, at.plus(towards.minus(at).unit().times(Notch.DEPTH))));
    }
}
