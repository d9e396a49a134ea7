package dev.hingepoint.svg.figure;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.List;

/** A line of a figure that others begin and end on. */
record Contour(Path path) {
    private static final int STEPS = 6;

    static Contour through(Point... points) {
        return new Contour(Smooth.through(points));
    }

    /** Where it first is so many heads below the crown. */
    Point atDepth(double y) {
        return path.at(cut(new Point(0, y), new Vector(1, 0)));
    }

    /** Where it first is so far to the right of the plumb line. */
    Point atBreadth(double x) {
        return path.at(cut(new Point(x, 0), new Vector(0, 1)));
    }

    Path above(double y) {
        return path.part(path.startPosition(), cut(new Point(0, y), new Vector(1, 0)));
    }

    Path below(double y) {
        return path.part(cut(new Point(0, y), new Vector(1, 0)), path.endPosition());
    }

    private Position cut(Point origin, Vector direction) {
        return path.crossings(origin, direction).stream()
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(path + " does not come by " + origin));
    }

    /** The stretch between two depths, as cloth lies over it: nowhere off it at the upper, by so much sideways at the lower. */
    List<Point> clothed(double from, double to, double off) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double part = (double) i / STEPS;
            points.add(atDepth(from + part * (to - from)).plus(new Vector(off * part, 0)));
        }
        return points;
    }
}
