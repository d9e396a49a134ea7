package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.List;

/**
 * A line of text on paper.
 *
 * @param at the left end of its base line
 * @param size height of the type in mm (the em)
 * @param angle of the base line in radians, clockwise from x
 */
public record Text(String words, Point at, double size, double angle) {
    /** How much of the em stands above the base line, and hangs below it. */
    public static final double ABOVE = 0.75;

    public static final double BELOW = 0.22;

    /** Width in mm, as the shipped font sets it. */
    public double width() {
        return Type.width(words, size);
    }

    public Text moved(Motion motion) {
        return new Text(words, motion.of(at), size * motion.scale(), angle + motion.angle());
    }

    /** The closed line round the room it takes, the first point again at the end. */
    public List<Point> corners() {
        Vector along = Vector.ofAngle(angle).times(width());
        Vector up = Vector.ofAngle(angle).left();
        Point low = at.minus(up.times(BELOW * size));
        Point high = at.plus(up.times(ABOVE * size));
        return List.of(low, low.plus(along), high.plus(along), high, low);
    }

    public Box bounds() {
        return Box.around(corners());
    }
}
