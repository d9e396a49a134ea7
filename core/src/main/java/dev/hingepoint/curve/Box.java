package dev.hingepoint.curve;

import java.util.Collection;
import java.util.List;

/** An upright rectangle, in mm; {@code top} is the smaller y, since y runs down. */
public record Box(double left, double top, double right, double bottom) {
    public Box {
        if (!(left <= right && top <= bottom)) {
            throw new IllegalArgumentException("a box runs left to right and top to bottom, not " + left + ".." + right
                    + ", " + top + ".." + bottom);
        }
    }

    public static Box of(Point one, Point other) {
        return new Box(
                Math.min(one.x(), other.x()),
                Math.min(one.y(), other.y()),
                Math.max(one.x(), other.x()),
                Math.max(one.y(), other.y()));
    }

    /**
     * The smallest upright box that holds all points.
     *
     * @throws IllegalArgumentException for no points
     */
    public static Box around(Collection<Point> points) {
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

    public Box union(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    public Box grownBy(double margin) {
        return new Box(left - margin, top - margin, right + margin, bottom + margin);
    }

    public Box moved(Vector step) {
        return new Box(left + step.x(), top + step.y(), right + step.x(), bottom + step.y());
    }

    /** The closed line round it, from its upper left corner to the right and round, the first point again at the end. */
    public List<Point> corners() {
        Point first = new Point(left, top);
        return List.of(first, new Point(right, top), new Point(right, bottom), new Point(left, bottom), first);
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }

    public Point centre() {
        return new Point((left + right) / 2, (top + bottom) / 2);
    }

    /** The distance in mm from {@code point} to the nearest point of the box; 0 inside. */
    public double distanceTo(Point point) {
        double across = Math.max(0, Math.max(left - point.x(), point.x() - right));
        double down = Math.max(0, Math.max(top - point.y(), point.y() - bottom));
        return Math.sqrt(across * across + down * down);
    }
}
