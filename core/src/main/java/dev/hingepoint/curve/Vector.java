package dev.hingepoint.curve;

/**
 * A step in the plane of the paper: a direction with a length.
 *
 * @param x millimetres to the right
 * @param y millimetres down
 */
public record Vector(double x, double y) {
    public static final Vector ZERO = new Vector(0, 0);

    public Vector {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException("a step needs finite components, not (" + x + ", " + y + ")");
        }
    }

    /** The unit vector at {@code angle} radians from the x axis, clockwise as one looks at the paper. */
    public static Vector ofAngle(double angle) {
        return new Vector(StrictMath.cos(angle), StrictMath.sin(angle));
    }

    public double length() {
        return Math.sqrt(x * x + y * y);
    }

    public Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y);
    }

    public Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y);
    }

    public Vector times(double factor) {
        return new Vector(x * factor, y * factor);
    }

    public Vector negated() {
        return new Vector(-x, -y);
    }

    public double dot(Vector other) {
        return x * other.x + y * other.y;
    }

    /** Positive where {@code other} lies clockwise from this, as one looks at the paper. */
    public double cross(Vector other) {
        return x * other.y - y * other.x;
    }

    /**
     * The same direction with length 1.
     *
     * @throws IllegalArgumentException for the zero vector, which has no direction
     */
    public Vector unit() {
        double length = length();
        if (length == 0) {
            throw new IllegalArgumentException("the zero vector has no direction");
        }
        return new Vector(x / length, y / length);
    }

    /** This vector after a quarter turn to the left of its travel, as one looks at the paper. */
    public Vector left() {
        return new Vector(y, -x);
    }

    /** This vector after a quarter turn to the right of its travel, as one looks at the paper. */
    public Vector right() {
        return new Vector(-y, x);
    }

    /** This vector turned by {@code angle} radians, clockwise as one looks at the paper. */
    public Vector turned(double angle) {
        double cos = StrictMath.cos(angle);
        double sin = StrictMath.sin(angle);
        return new Vector(cos * x - sin * y, sin * x + cos * y);
    }

    /** The signed turn in radians, in (-pi, pi], that leads from this direction to {@code other}; clockwise is positive. */
    public double angleTo(Vector other) {
        return StrictMath.atan2(cross(other), dot(other));
    }
}
