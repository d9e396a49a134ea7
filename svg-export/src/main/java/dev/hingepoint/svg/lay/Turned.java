package dev.hingepoint.svg.lay;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.List;

/**
 * A shape turned by whole quarters and shifted so that its bounds begin at (0, 0).
 *
 * @param motion from the shape's own frame
 */
record Turned(Motion motion, List<List<Point>> grounds, double width, double height) {
    private static final Motion QUARTER = new Motion(0, -1, 1, 0, 0, 0);
    private static final Motion HALF = new Motion(-1, 0, 0, -1, 0, 0);
    private static final Motion THREE_QUARTERS = new Motion(0, 1, -1, 0, 0, 0);

    /** A shape in every way in which it may lie. */
    static List<Turned> of(Shape shape) {
        List<Motion> turns = switch (shape.way()) {
            case ONE_WAY -> List.of(Motion.STAY);
            case TWO_WAYS -> List.of(Motion.STAY, HALF);
            case ANY_WAY -> List.of(Motion.STAY, HALF, QUARTER, THREE_QUARTERS);
        };
        return turns.stream().map(turn -> of(shape.grounds(), turn)).toList();
    }

    private static Turned of(List<List<Point>> grounds, Motion turn) {
        Box bounds = grounds.stream()
                .filter(ring -> !ring.isEmpty())
                .map(ring -> Box.around(turn.of(ring)))
                .reduce(Box::union)
                .orElseThrow();
        Motion motion = turn.then(Motion.shift(new Vector(-bounds.left(), -bounds.top())));
        return new Turned(motion, grounds.stream().map(motion::of).toList(), bounds.width(), bounds.height());
    }

    /** How it moves from the shape's own frame to lie with its bounds at a place. */
    Motion to(double left, double top) {
        return motion.then(Motion.shift(new Vector(left, top)));
    }
}
