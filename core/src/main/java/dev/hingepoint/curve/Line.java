package dev.hingepoint.curve;

import java.util.List;
import java.util.function.Consumer;

/** A straight segment. */
public record Line(Point start, Point end) implements Segment {
    public Line {
        if (start.equals(end)) {
            throw new IllegalArgumentException("a line needs two different points, not twice " + start);
        }
    }

    public Vector step() {
        return end.minus(start);
    }

    @Override
    public Point at(double t) {
        return start.towards(end, t);
    }

    @Override
    public Vector tangent(double t) {
        return step().unit();
    }

    @Override
    public double curvature(double t) {
        return 0;
    }

    @Override
    public double lengthTo(double t) {
        return t * step().length();
    }

    @Override
    public double parameterAt(double distance) {
        return distance / step().length();
    }

    @Override
    public Line part(double from, double to) {
        return new Line(at(from), at(to));
    }

    @Override
    public Line reversed() {
        return new Line(end, start);
    }

    @Override
    public Line moved(Motion motion) {
        return new Line(motion.of(start), motion.of(end));
    }

    @Override
    public double nearest(Point point) {
        Vector step = step();
        return Math.min(1, Math.max(0, point.minus(start).dot(step) / step.dot(step)));
    }

    @Override
    public List<Double> crossings(Point origin, Vector direction) {
        double a = direction.cross(start.minus(origin));
        double b = direction.cross(end.minus(origin));
        if (a == b || a > 0 && b > 0 || a < 0 && b < 0) {
            return List.of();
        }
        boolean liesAlong = Math.max(Math.abs(a), Math.abs(b)) < Tolerance.LENGTH * direction.length();
        if (liesAlong) {
            return List.of();
        }
        return List.of(a / (a - b));
    }

    @Override
    public double farthest(Vector direction) {
        return step().dot(direction) > 0 ? 1 : 0;
    }

    @Override
    public Box bounds() {
        return Box.of(start, end);
    }

    @Override
    public Box hull() {
        return bounds();
    }

    @Override
    public void flatten(double tolerance, Consumer<Point> points) {
        points.accept(end);
    }
}
