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

    Stroke(Style style, List<Point> points) {
        this(style, points, 0);
    }

    static Stroke of(Style style, Point... points) {
        return new Stroke(style, List.of(points));
    }

    Stroke moved(Motion motion) {
        return new Stroke(style, points.stream().map(motion::of).toList(), before * motion.scale());
    }

    Box bounds() {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Point point : points) {
            left = Math.min(left, point.x());
            right = Math.max(right, point.x());
            top = Math.min(top, point.y());
            bottom = Math.max(bottom, point.y());
        }
        return new Box(left, top, right, bottom);
    }
}
