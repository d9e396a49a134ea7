package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Bisection;
import dev.hingepoint.curve.Fairing;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Refit;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Spot;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Draws a dart from a mouth straight at an apex that need not lie on the mouth's bisector. The legs are made equal: the one leg end goes
 * out and the other in, each square to its edge, which keeps the edge's sewn length to second order; the edge follows, fair.
 */
final class PointedDart {
    private static final double FOLLOWS_OVER = 60;

    /** A leg end that would go by more makes a bulge that no pressing takes out. */
    private static final double MOST_CORRECTION = 4;

    private final String name;
    private final Spot upper;
    private final Spot lower;
    private final Point apex;
    private final double tipDistance;
    private final Vector upperSquare;
    private final Vector lowerSquare;
    private final Piece piece;

    /**
     * @param one a leg's end on the edge
     * @param other the other's
     * @param tipDistance how far in mm the tip stops short of the apex
     */
    PointedDart(Piece piece, String name, String edge, Point one, Point other, Point apex, double tipDistance) {
        this.piece = piece;
        this.name = name;
        this.apex = apex;
        this.tipDistance = tipDistance;
        boolean oneIsUpper = other.minus(one).dot(piece.grain().down()) >= 0;
        this.upper = piece.nearest(piece.edge(edge), oneIsUpper ? one : other);
        this.lower = piece.nearest(piece.edge(edge), oneIsUpper ? other : one);
        this.upperSquare = inwards(upper);
        this.lowerSquare = inwards(lower);
    }

    /** Square to the edge beside the mouth, into the piece. */
    private Vector inwards(Spot end) {
        Path path = piece.edge(end.edge()).path();
        double along = path.distanceAlong(end.position());
        boolean isFirst = Spot.first(upper, lower) == end;
        Path beside = isFirst
                ? path.part(path.positionAt(Math.max(0, along - 1)), end.position())
                : path.part(end.position(), path.positionAt(Math.min(path.length(), along + 1)));
        return piece.inwards(isFirst ? beside.endTangent() : beside.startTangent());
    }

    /** The mouth drawn straight, the dart in it, a notch at each leg. */
    Paper drawnOn(Paper paper) {
        double correction = correction();
        Point legUpper = upper.point().plus(upperSquare.times(correction));
        Point legLower = lower.point().minus(lowerSquare.times(correction));
        Paper followed = paper.then(following(legUpper, legLower));
        return new BustDart(name, upper.edge(), legUpper, legLower, apex, OptionalDouble.of(tipDistance))
                .marked(followed, legUpper, tip(correction), legLower);
    }

    /** How far in mm the upper leg's end goes in and the lower one's out. */
    double correction() {
        return Bisection.zero(-MOST_CORRECTION, MOST_CORRECTION, this::difference)
                .orElseThrow(() -> new Refusal(Reason.BeyondLimit.of(
                        Message.of("alter.pointed-dart.legs-differ", name, upper.edge()),
                        piece.where().mark(name))));
    }

    /** How much longer in mm the upper leg is. */
    private double difference(double correction) {
        Point tip = tip(correction);
        return tip.distanceTo(upper.point().plus(upperSquare.times(correction)))
                - tip.distanceTo(lower.point().minus(lowerSquare.times(correction)));
    }

    private Point tip(double correction) {
        Point middle = upper.point()
                .plus(upperSquare.times(correction))
                .midpoint(lower.point().minus(lowerSquare.times(correction)));
        double reach = middle.distanceTo(apex);
        if (reach <= tipDistance) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of(
                            "alter.pointed-dart.begins-near-apex",
                            name,
                            Quantity.millimetres(reach),
                            Quantity.millimetres(tipDistance)),
                    piece.where().mark(name)));
        }
        return middle.towards(apex, (reach - tipDistance) / reach);
    }

    private Redraw following(Point legUpper, Point legLower) {
        Path path = piece.edge(upper.edge()).path();
        Spot first = Spot.first(upper, lower);
        Spot last = Spot.last(upper, lower);
        Point start = first == upper ? legUpper : legLower;
        Point end = first == upper ? legLower : legUpper;
        Path before = followed(path.part(path.startPosition(), first.position()).reversed())
                .reversed();
        Path after = followed(path.part(last.position(), path.endPosition()));
        Position from = path.positionAt(path.distanceAlong(first.position()) - before.length());
        Position to = path.positionAt(path.distanceAlong(last.position()) + after.length());
        Path course = fair(before.reversed())
                .withStart(start)
                .reversed()
                .then(Path.through(start, end))
                .then(fair(after).withStart(end));
        return new Redraw(
                "Draw the " + name + " to the apex and make its legs equal; the " + upper.edge() + " follows",
                List.of(new Redraw.Stretch(upper.edge(), from, to, course)));
    }

    /** The stretch of edge beside the mouth that follows a leg's end: up to a corner at most. */
    private static Path followed(Path away) {
        return away.part(0, Math.min(FOLLOWS_OVER, Math.min(away.length(), Fairing.toCorner(away))));
    }

    private static Path fair(Path stretch) {
        return Path.of(Refit.cubic(stretch));
    }
}
