package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Spot;
import java.util.List;

/**
 * A dart's mouth farther along its edge: the stretch of edge that it passes turns about the dart's pivot, which closes the old mouth, and
 * the new one opens where the stretch came from.
 *
 * @param from where the edge is drawn anew
 * @param to up to where
 * @param one the end of the one leg now
 * @param other the end of the other
 * @param closedAt where the old mouth was
 */
record SlidMouth(String edge, Position from, Position to, Path course, Point one, Point other, Point closedAt) {
    /** A leg ends at least so many mm from the end of its edge. */
    private static final double ROOM = 5;

    /**
     * @param slide how far in mm of the edge, down where it is more than 0
     * @throws Refusal where it would run off the edge
     */
    static SlidMouth of(Piece piece, DartIntake dart, double slide) {
        Path path = piece.edge(dart.edge()).path();
        boolean isDownwards = piece.downwards(dart.edge()) == path;
        Spot one = piece.nearest(piece.edge(dart.edge()), dart.one());
        Spot other = piece.nearest(piece.edge(dart.edge()), dart.other());
        Spot first = Spot.first(one, other);
        Spot last = Spot.last(one, other);
        boolean forwards = slide > 0 == isDownwards;
        double at = forwards
                ? path.distanceAlong(last.position()) + Math.abs(slide)
                : path.distanceAlong(first.position()) - Math.abs(slide);
        if (at < ROOM || at > path.length() - ROOM) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.slid-mouth.off-edge", dart.name(), dart.edge()),
                    piece.where().mark(dart.name())));
        }
        Position to = path.positionAt(at);
        Spot closing = forwards ? last : first;
        Spot staying = forwards ? first : last;
        Motion turn = Motion.turn(
                dart.pivot(),
                closing.point().minus(dart.pivot()),
                staying.point().minus(dart.pivot()));
        Path passed = (forwards ? path.part(last.position(), to) : path.part(to, first.position())).moved(turn);
        Path settled = forwards ? passed.withStart(staying.point()) : passed.withEnd(staying.point());
        Point stretched = path.at(to);
        return forwards
                ? new SlidMouth(
                        dart.edge(),
                        first.position(),
                        to,
                        settled.then(Path.through(settled.end(), stretched)),
                        settled.end(),
                        stretched,
                        staying.point())
                : new SlidMouth(
                        dart.edge(),
                        to,
                        last.position(),
                        Path.through(stretched, settled.start()).then(settled),
                        stretched,
                        settled.start(),
                        staying.point());
    }

    Redraw redraw() {
        return new Redraw("Move the dart along the " + edge, List.of(new Redraw.Stretch(edge, from, to, course)));
    }
}
