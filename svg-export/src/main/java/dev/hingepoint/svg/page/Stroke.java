package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import java.util.List;

/**
 * A line on paper: points joined straight.
 *
 * @param before how far in mm the line has run before its first point, where that was cut off: its dashes go on from there
 */
public record Stroke(Style style, List<Point> points, double before) {
    public Stroke {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a stroke needs two points");
        }
    }

    public Stroke(Style style, List<Point> points) {
        this(style, points, 0);
    }

    public static Stroke of(Style style, Point... points) {
        return new Stroke(style, List.of(points));
    }

    public Stroke moved(Motion motion) {
        return new Stroke(style, motion.of(points), before * motion.scale());
    }

    public Box bounds() {
        return Box.around(points);
    }
}
