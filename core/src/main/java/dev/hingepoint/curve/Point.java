package dev.hingepoint.curve;

/**
 * A place in the plane of the paper.
 *
 * @param x millimetres to the right
 * @param y millimetres down
 */
public record Point(double x, double y) {
    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a point needs finite coordinates, not (" + x + ", " + y + ")");
        }
    }

    public Point plus(Vector step) {
        return new Point(x + step.x(), y + step.y());
    }

    public Point minus(Vector step) {
        return new Point(x - step.x(), y - step.y());
    }

    /** The step that leads from {@code other} to this point. */
    public Vector minus(Point other) {
        return new Vector(x - other.x, y - other.y);
    }

    public double distanceTo(Point other) {
        return minus(other).length();
    }

    /** The point at {@code fraction} of the way to {@code other}: 0 is this point, 1 is the other, exactly. */
    public Point towards(Point other, double fraction) {
        if (fraction == 1) {
            return other;
        }
        return new Point(x + fraction * (other.x - x), y + fraction * (other.y - y));
    }

    public Point midpoint(Point other) {
        return towards(other, 0.5);
    }

    public boolean isCloseTo(Point other, double toleranceMm) {
        return distanceTo(other) <= toleranceMm;
    }
}
