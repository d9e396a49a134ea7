package dev.hingepoint.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** A cubic Bézier with its two ends and two handles. */
public record Cubic(Point start, Point startHandle, Point endHandle, Point end) implements Segment {
    private static final double SAME_POINT = 1e-12;

    public Cubic {
        if (start.equals(startHandle) && start.equals(endHandle) && start.equals(end)) {
            throw new IllegalArgumentException("a curve needs an extent, not one point " + start);
        }
    }

    /** The cubic that runs along a straight line at even speed. */
    public static Cubic straight(Point start, Point end) {
        return new Cubic(start, start.towards(end, 1 / 3.0), start.towards(end, 2 / 3.0), end);
    }

    @Override
    public Point at(double t) {
        if (t == 0) {
            return start;
        }
        return t == 1
                ? end
                : new Point(
                        casteljau(start.x(), startHandle.x(), endHandle.x(), end.x(), t),
                        casteljau(start.y(), startHandle.y(), endHandle.y(), end.y(), t));
    }

    /** The same arithmetic as {@link #before} and {@link #after}, so that a point and a split there agree to the last bit. */
    private static double casteljau(double p, double q, double r, double s, double t) {
        double a = p + t * (q - p);
        double b = q + t * (r - q);
        double c = r + t * (s - r);
        double d = a + t * (b - a);
        double e = b + t * (c - b);
        return d + t * (e - d);
    }

    Vector derivative(double t) {
        Vector a = startHandle.minus(start);
        Vector b = endHandle.minus(startHandle);
        Vector c = end.minus(endHandle);
        double u = 1 - t;
        return a.times(3 * u * u).plus(b.times(6 * u * t)).plus(c.times(3 * t * t));
    }

    @Override
    public Vector tangent(double t) {
        Vector derivative = derivative(t);
        if (derivative.length() > SAME_POINT) {
            return derivative.unit();
        }
        // A handle lies on its end: the direction is the limit, towards the next control point that differs.
        if (t < 0.5) {
            Vector second = endHandle.minus(start);
            return (second.length() > SAME_POINT ? second : end.minus(start)).unit();
        }
        Vector second = end.minus(startHandle);
        return (second.length() > SAME_POINT ? second : end.minus(start)).unit();
    }

    @Override
    public double curvature(double t) {
        // in plain numbers: this and the next are the inner loops of every allowance
        double u = 1 - t;
        double ax = startHandle.x() - start.x();
        double ay = startHandle.y() - start.y();
        double bx = endHandle.x() - startHandle.x();
        double by = endHandle.y() - startHandle.y();
        double cx = end.x() - endHandle.x();
        double cy = end.y() - endHandle.y();
        double dx = 3 * (u * u * ax + 2 * u * t * bx + t * t * cx);
        double dy = 3 * (u * u * ay + 2 * u * t * by + t * t * cy);
        double ddx = 6 * (u * (bx - ax) + t * (cx - bx));
        double ddy = 6 * (u * (by - ay) + t * (cy - by));
        double speed = Math.sqrt(dx * dx + dy * dy);
        return speed <= SAME_POINT ? 0 : (dx * ddy - dy * ddx) / (speed * speed * speed);
    }

    @Override
    public double lengthTo(double t) {
        return ArcLength.of(this, t);
    }

    @Override
    public double parameterAt(double distance) {
        return ArcLength.parameterAt(this, distance);
    }

    /** The stretch before {@code t}, by de Casteljau's construction. */
    private Cubic before(double t) {
        Point a = start.towards(startHandle, t);
        Point b = startHandle.towards(endHandle, t);
        return new Cubic(start, a, a.towards(b, t), at(t));
    }

    /** The stretch after {@code t}, by de Casteljau's construction. */
    private Cubic after(double t) {
        Point b = startHandle.towards(endHandle, t);
        Point c = endHandle.towards(end, t);
        return new Cubic(at(t), b.towards(c, t), c, end);
    }

    @Override
    public Cubic part(double from, double to) {
        if (from == 0) {
            return to == 1 ? this : before(to);
        }
        Cubic rest = after(from);
        if (to == 1) {
            return rest;
        }
        Cubic part = rest.before((to - from) / (1 - from));
        return new Cubic(part.start, part.startHandle, part.endHandle, at(to));
    }

    @Override
    public Cubic reversed() {
        return new Cubic(end, endHandle, startHandle, start);
    }

    @Override
    public Cubic moved(Motion motion) {
        return new Cubic(motion.of(start), motion.of(startHandle), motion.of(endHandle), motion.of(end));
    }

    @Override
    public double nearest(Point point) {
        Bernstein across = new Bernstein(
                start.x() - point.x(), startHandle.x() - point.x(), endHandle.x() - point.x(), end.x() - point.x());
        Bernstein down = new Bernstein(
                start.y() - point.y(), startHandle.y() - point.y(), endHandle.y() - point.y(), end.y() - point.y());
        List<Double> candidates = new ArrayList<>(List.of(0.0));
        candidates.addAll(
                across.times(slope(true)).plus(down.times(slope(false))).roots());
        candidates.add(1.0);
        double best = 0;
        double bestDistance = Double.POSITIVE_INFINITY;
        for (double t : candidates) {
            double distance = at(t).distanceTo(point);
            if (distance < bestDistance) {
                best = t;
                bestDistance = distance;
            }
        }
        return best;
    }

    @Override
    public double farthest(Vector direction) {
        List<Double> candidates = new ArrayList<>(List.of(0.0));
        candidates.addAll(new Bernstein(
                        direction.dot(startHandle.minus(start)),
                        direction.dot(endHandle.minus(startHandle)),
                        direction.dot(end.minus(endHandle)))
                .roots());
        candidates.add(1.0);
        double best = 0;
        for (double t : candidates) {
            if (at(t).minus(at(best)).dot(direction) > 0) {
                best = t;
            }
        }
        return best;
    }

    private Bernstein slope(boolean across) {
        Vector a = startHandle.minus(start);
        Vector b = endHandle.minus(startHandle);
        Vector c = end.minus(endHandle);
        return across ? new Bernstein(a.x(), b.x(), c.x()) : new Bernstein(a.y(), b.y(), c.y());
    }

    @Override
    public List<Double> crossings(Point origin, Vector direction) {
        Vector unit = direction.unit();
        double[] offsets = {
            unit.cross(start.minus(origin)),
            unit.cross(startHandle.minus(origin)),
            unit.cross(endHandle.minus(origin)),
            unit.cross(end.minus(origin))
        };
        double largest = 0;
        for (double offset : offsets) {
            largest = Math.max(largest, Math.abs(offset));
        }
        return largest < Tolerance.LENGTH ? List.of() : new Bernstein(offsets).roots();
    }

    /** Where the curve is level or upright: the parameters in (0, 1), ascending, of its extreme x and y. */
    public List<Double> extrema() {
        List<Double> found = new ArrayList<>(slope(true).roots());
        found.addAll(slope(false).roots());
        return found.stream().filter(t -> t > 0 && t < 1).sorted().distinct().toList();
    }

    /** Where the curve changes the side it bends to: the parameters in (0, 1), ascending. */
    public List<Double> inflections() {
        Vector a = startHandle.minus(start);
        Vector b = endHandle.minus(startHandle);
        Vector c = end.minus(endHandle);
        Vector d = b.minus(a);
        Vector e = c.minus(b);
        // B' x B'' as the product of a quadratic and a linear Bernstein polynomial, component by component
        Bernstein cross = new Bernstein(a.x(), b.x(), c.x())
                .times(new Bernstein(d.y(), e.y()))
                .plus(new Bernstein(-a.y(), -b.y(), -c.y()).times(new Bernstein(d.x(), e.x())));
        return cross.roots().stream().filter(t -> t > 0 && t < 1).toList();
    }

    @Override
    public Box bounds() {
        Box box = Box.of(start, end);
        for (double t : extrema()) {
            Point point = at(t);
            box = box.union(Box.of(point, point));
        }
        return box;
    }

    @Override
    public Box hull() {
        return new Box(
                Math.min(Math.min(start.x(), startHandle.x()), Math.min(endHandle.x(), end.x())),
                Math.min(Math.min(start.y(), startHandle.y()), Math.min(endHandle.y(), end.y())),
                Math.max(Math.max(start.x(), startHandle.x()), Math.max(endHandle.x(), end.x())),
                Math.max(Math.max(start.y(), startHandle.y()), Math.max(endHandle.y(), end.y())));
    }

    /**
     * Even steps of the parameter, as many as Wang's bound on the second derivative asks for; their number grows with the
     * inverse root of the tolerance.
     *
     * @see <a href="https://doi.org/10.1016/0167-8396(84)90028-6">Wang's bound, in Farin, Curves and Surfaces for CAGD,
     *     section on flattening</a>
     */
    @Override
    public void flatten(double tolerance, Consumer<Point> points) {
        int steps = flatteningSteps(tolerance);
        for (int i = 1; i < steps; i++) {
            points.accept(at((double) i / steps));
        }
        points.accept(end);
    }

    /** How many even parameter steps keep the polyline within {@code tolerance} mm. */
    public int flatteningSteps(double tolerance) {
        Vector early = endHandle.minus(startHandle).minus(startHandle.minus(start));
        Vector late = end.minus(endHandle).minus(endHandle.minus(startHandle));
        double bend = Math.max(early.length(), late.length());
        return Math.max(1, (int) Math.ceil(Math.sqrt(0.75 * bend / tolerance)));
    }

    /** Whether both handles lie on the straight line between the ends, in order, within {@code tolerance} mm. */
    public boolean isStraight(double tolerance) {
        Vector chord = end.minus(start);
        double length = chord.length();
        if (length <= tolerance) {
            return false;
        }
        Vector unit = chord.times(1 / length);
        double first = unit.dot(startHandle.minus(start));
        double second = unit.dot(endHandle.minus(start));
        return Math.abs(unit.cross(startHandle.minus(start))) <= tolerance
                && Math.abs(unit.cross(endHandle.minus(start))) <= tolerance
                && first >= -tolerance
                && second >= first - tolerance
                && second <= length + tolerance;
    }
}
