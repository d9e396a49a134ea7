package dev.hingepoint.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A run of segments, each beginning exactly where the last ended. Immutable and safe to share.
 *
 * <p>Places on a path are {@link Position}s (exact) or distances along it in mm (found within {@link Tolerance#LENGTH}).
 * Equality is of every control point, to the last bit; {@link #isCloseTo} compares with a tolerance.
 */
public final class Path {
    private static final double NEAR_JOINT = 1e-4;

    /** A path that is drawn out is drawn anew over so many mm before its end. */
    private static final double RUN_ON = 30;

    private final List<Segment> segments;

    /** Lengths up to each joint: found when they are first asked for, the same whoever asks first, and never changed. */
    private final AtomicReference<double[]> travelled = new AtomicReference<>();

    private Path(List<Segment> segments) {
        this.segments = List.copyOf(segments);
        if (this.segments.isEmpty()) {
            throw new IllegalArgumentException("a path needs at least one segment");
        }
        for (int i = 1; i < this.segments.size(); i++) {
            if (!this.segments.get(i).start().equals(this.segments.get(i - 1).end())) {
                throw new IllegalArgumentException(
                        "segment " + i + " begins at " + this.segments.get(i).start() + ", not where the last ended, "
                                + this.segments.get(i - 1).end());
            }
        }
    }

    public static Path of(List<Segment> segments) {
        return new Path(segments);
    }

    public static Path of(Segment... segments) {
        return new Path(List.of(segments));
    }

    /** The straight lines through the points in order; a point that repeats the last one adds nothing. */
    public static Path through(Point... points) {
        return through(List.of(points));
    }

    /** The straight lines through the points in order; a point that repeats the last one adds nothing. */
    public static Path through(List<Point> points) {
        List<Segment> lines = new ArrayList<>();
        Point last = points.get(0);
        for (Point point : points) {
            if (!point.equals(last)) {
                lines.add(new Line(last, point));
                last = point;
            }
        }
        return new Path(lines);
    }

    public List<Segment> segments() {
        return segments;
    }

    public Point start() {
        return segments.get(0).start();
    }

    public Point end() {
        return last().end();
    }

    private Segment last() {
        return segments.get(segments.size() - 1);
    }

    public Position startPosition() {
        return new Position(0, 0);
    }

    public Position endPosition() {
        return new Position(segments.size() - 1, 1);
    }

    /** Unit direction of travel at the start. */
    public Vector startTangent() {
        return segments.get(0).tangent(0);
    }

    /** Unit direction of travel at the end. */
    public Vector endTangent() {
        return last().tangent(1);
    }

    public Point at(Position position) {
        return segments.get(position.segment()).at(position.t());
    }

    public Point at(double distance) {
        return at(positionAt(distance));
    }

    /** Unit direction of travel; at a joint, of the segment that {@code position} names. */
    public Vector tangent(Position position) {
        return segments.get(position.segment()).tangent(position.t());
    }

    public double length() {
        return lengthsTravelled()[segments.size()];
    }

    /** The distance in mm along the path from its start. */
    public double distanceAlong(Position position) {
        double before = lengthsTravelled()[position.segment()];
        if (position.t() == 1) {
            return lengthsTravelled()[position.segment() + 1];
        }
        return before + segments.get(position.segment()).lengthTo(position.t());
    }

    /**
     * The place at {@code distance} mm along the path.
     *
     * @throws IllegalArgumentException where the path is shorter, by more than {@link Tolerance#COINCIDENT}
     */
    public Position positionAt(double distance) {
        double[] lengths = lengthsTravelled();
        if (!(distance >= -Tolerance.COINCIDENT && distance <= length() + Tolerance.COINCIDENT)) {
            throw new IllegalArgumentException(distance + " mm is not on a path " + length() + " mm long");
        }
        int i = 0;
        while (i < segments.size() - 1 && distance > lengths[i + 1]) {
            i++;
        }
        return snapped(i, segments.get(i).parameterAt(distance - lengths[i]), Tolerance.LENGTH);
    }

    /** A place computed to lie on a joint, give or take rounding, is the joint: no stretch then begins or ends with a sliver. */
    private Position snapped(int segment, double t, double tolerance) {
        Segment on = segments.get(segment);
        double within = Math.min(1, Math.max(0, t));
        if (within < NEAR_JOINT && on.at(within).isCloseTo(on.start(), tolerance)) {
            return new Position(segment, 0);
        }
        if (within > 1 - NEAR_JOINT && on.at(within).isCloseTo(on.end(), tolerance)) {
            return new Position(segment, 1);
        }
        return new Position(segment, within);
    }

    private double[] lengthsTravelled() {
        double[] known = travelled.get();
        if (known == null) {
            known = new double[segments.size() + 1];
            for (int i = 0; i < segments.size(); i++) {
                known[i + 1] = known[i] + segments.get(i).length();
            }
            travelled.set(known);
        }
        return known;
    }

    /**
     * The stretch between two places: exact, but that a place within {@link Tolerance#COINCIDENT} of a joint is the joint.
     *
     * @throws IllegalArgumentException where {@code from} is not before {@code to}
     */
    public Path part(Position from, Position to) {
        List<Segment> part = new ArrayList<>();
        Position start = snapped(from.segment(), from.t(), Tolerance.COINCIDENT);
        Position end = snapped(to.segment(), to.t(), Tolerance.COINCIDENT);
        for (int i = start.segment(); i <= end.segment(); i++) {
            double first = i == start.segment() ? start.t() : 0;
            double second = i == end.segment() ? end.t() : 1;
            Segment segment = segments.get(i);
            // two parameters can be one point to the last bit, and a stretch without extent is none
            if (first < second && !segment.at(first).equals(segment.at(second))) {
                part.add(segment.part(first, second));
            }
        }
        if (part.isEmpty()) {
            throw new IllegalArgumentException("no stretch of path lies between " + from + " and " + to);
        }
        return new Path(part);
    }

    /** The stretch between two distances along the path, in mm. */
    public Path part(double from, double to) {
        return part(positionAt(from), positionAt(to));
    }

    public Path reversed() {
        List<Segment> reversed = new ArrayList<>(segments.size());
        for (int i = segments.size() - 1; i >= 0; i--) {
            reversed.add(segments.get(i).reversed());
        }
        return new Path(reversed);
    }

    public Path moved(Motion motion) {
        return new Path(segments.stream().map(segment -> segment.moved(motion)).toList());
    }

    /**
     * This path followed by {@code next}. Ends up to {@link Tolerance#COINCIDENT} apart are made one; wider ones are joined by
     * a straight line.
     */
    public Path then(Path next) {
        List<Segment> joined = new ArrayList<>(segments);
        Path follower = next;
        if (!end().equals(next.start())) {
            if (end().isCloseTo(next.start(), Tolerance.COINCIDENT)) {
                follower = next.withStart(end());
            } else {
                joined.add(new Line(end(), next.start()));
            }
        }
        joined.addAll(follower.segments);
        return new Path(joined);
    }

    /** The same path from another starting point: the first segment's end moves, with its handle, and nothing else. */
    public Path withStart(Point start) {
        List<Segment> changed = new ArrayList<>(segments);
        Segment first = segments.get(0);
        changed.set(
                0,
                first instanceof Cubic cubic
                        ? new Cubic(
                                start,
                                cubic.startHandle().plus(start.minus(cubic.start())),
                                cubic.endHandle(),
                                cubic.end())
                        : new Line(start, first.end()));
        return new Path(changed);
    }

    /** The same path to another end: the last segment's end moves, with its handle, and nothing else. */
    public Path withEnd(Point end) {
        return reversed().withStart(end).reversed();
    }

    /** The same path, arriving at its end along another direction: the last handle keeps its length and turns, and nothing else. */
    public Path withEndTangent(Vector direction) {
        if (Math.abs(endTangent().angleTo(direction)) <= Tolerance.LENGTH) {
            return this;
        }
        Cubic last = Refit.asCubic(last());
        double handle = last.endHandle().distanceTo(last.end());
        return withEndHandle(direction.unit().times(handle));
    }

    /** The same path with its last handle so placed that {@code step} leads from it to the end: nothing else moves. */
    public Path withEndHandle(Vector step) {
        List<Segment> changed = new ArrayList<>(segments);
        Cubic last = Refit.asCubic(last());
        changed.set(
                segments.size() - 1,
                new Cubic(last.start(), last.startHandle(), last.end().minus(step), last.end()));
        return new Path(changed);
    }

    /** The same path, leaving its start along another direction: the first handle keeps its length and turns, and nothing else. */
    public Path withStartTangent(Vector direction) {
        return reversed().withEndTangent(direction.negated()).reversed();
    }

    /**
     * The same path, cut off or its end run on along its own direction until it is {@code length} mm long, within {@link
     * Tolerance#LENGTH}. Where it runs on, only its last {@link #RUN_ON} mm, or twice the change, are drawn anew.
     */
    public Path withLength(double length) {
        double more = length - length();
        if (more <= 0) {
            return part(0, length);
        }
        double kept = length() - Math.max(RUN_ON, 2 * more);
        return kept <= Tolerance.COINCIDENT
                ? drawnOut(length)
                : part(0, kept).then(part(kept, length()).drawnOut(length - kept));
    }

    private Path drawnOut(double length) {
        Path path = this;
        for (int round = 0; round < 20 && Math.abs(length - path.length()) > Tolerance.LENGTH; round++) {
            path = path.withEnd(path.end().plus(endTangent().times(length - path.length())));
        }
        return path;
    }

    /**
     * The path whose start goes by {@code shift} and whose end stays: all between gives way by shift times 1 - smoothstep of the distance along
     * it. Both ends keep their directions, and a smooth path stays smooth. Derived: each handle follows the tangent of that displacement
     * at its joint.
     */
    public Path givingWay(Vector shift) {
        double[] lengths = lengthsTravelled();
        List<Segment> moved = new ArrayList<>();
        for (int i = 0; i < segments.size(); i++) {
            Cubic old = Refit.asCubic(segments.get(i));
            double from = lengths[i] / length();
            double to = lengths[i + 1] / length();
            double startHandle = old.start().distanceTo(old.startHandle()) / length();
            double endHandle = old.end().distanceTo(old.endHandle()) / length();
            Cubic cubic = new Cubic(
                    old.start().plus(shift.times(yielding(from))),
                    old.startHandle().plus(shift.times(yielding(from) + yieldingSlope(from) * startHandle)),
                    old.endHandle().plus(shift.times(yielding(to) - yieldingSlope(to) * endHandle)),
                    old.end().plus(shift.times(yielding(to))));
            moved.add(cubic.isStraight(Tolerance.COINCIDENT) ? new Line(cubic.start(), cubic.end()) : cubic);
        }
        return new Path(moved);
    }

    /** 1 - smoothstep: 1 at the start, 0 at the end, level at both. */
    private static double yielding(double fraction) {
        return 1 - fraction * fraction * (3 - 2 * fraction);
    }

    private static double yieldingSlope(double fraction) {
        return -6 * fraction * (1 - fraction);
    }

    /** The place on the path nearest to {@code point}: the first where several are equally near. */
    public Position nearest(Point point) {
        Position best = startPosition();
        double bestDistance = start().distanceTo(point);
        // joints first: they are quickly had, and leave few curves that could come nearer
        for (int i = 0; i < segments.size(); i++) {
            double distance = segments.get(i).end().distanceTo(point);
            if (distance < bestDistance) {
                best = new Position(i, 1);
                bestDistance = distance;
            }
        }
        for (int i = 0; i < segments.size(); i++) {
            Segment segment = segments.get(i);
            if (segment.hull().distanceTo(point) < bestDistance) {
                double t = segment.nearest(point);
                double distance = segment.at(t).distanceTo(point);
                if (distance < bestDistance) {
                    best = snapped(i, t, Tolerance.LENGTH);
                    bestDistance = distance;
                }
            }
        }
        return best;
    }

    /** The distance in mm from {@code point} to the nearest point of the path. */
    public double distanceTo(Point point) {
        return at(nearest(point)).distanceTo(point);
    }

    /**
     * Where the path crosses or touches the endless straight line through {@code origin} along {@code direction}, in order. A
     * joint that lies on the line may be given twice, once for each of its segments.
     */
    public List<Position> crossings(Point origin, Vector direction) {
        return IntStream.range(0, segments.size())
                .boxed()
                .flatMap(i ->
                        segments.get(i).crossings(origin, direction).stream().map(t -> snapped(i, t, Tolerance.LENGTH)))
                .toList();
    }

    /** Where the path crosses or touches the straight segment {@code line}, in order. */
    public List<Position> crossings(Line line) {
        Vector step = line.step();
        double slack = Tolerance.COINCIDENT / step.length();
        return crossings(line.start(), step).stream()
                .filter(position -> {
                    double along = at(position).minus(line.start()).dot(step) / step.dot(step);
                    return along >= -slack && along <= 1 + slack;
                })
                .toList();
    }

    /** The place, the first where several are equal, that lies farthest along {@code direction}. */
    public Position farthest(Vector direction) {
        return IntStream.range(0, segments.size())
                .mapToObj(i -> snapped(i, segments.get(i).farthest(direction), Tolerance.COINCIDENT))
                .max(Comparator.comparingDouble(
                        position -> at(position).minus(start()).dot(direction)))
                .orElseThrow();
    }

    /** The inner joints where the path bends by more than {@code bend} radians. */
    public List<Position> corners(double bend) {
        return IntStream.range(1, segments.size())
                .filter(i -> Math.abs(segments.get(i - 1)
                                .tangent(1)
                                .angleTo(segments.get(i).tangent(0)))
                        > bend)
                .mapToObj(i -> new Position(i, 0))
                .toList();
    }

    /** How far in radians the path turns back against the way it turns on the whole: 0 for one that bends one way only. */
    public double turnedBack() {
        List<Vector> directions = new ArrayList<>();
        for (Segment segment : segments) {
            directions.add(segment.tangent(0));
            if (segment instanceof Cubic cubic) {
                cubic.inflections().forEach(t -> directions.add(cubic.tangent(t)));
            }
            directions.add(segment.tangent(1));
        }
        double all = 0;
        double net = 0;
        for (int i = 1; i < directions.size(); i++) {
            double turn = directions.get(i - 1).angleTo(directions.get(i));
            all += Math.abs(turn);
            net += turn;
        }
        return (all - Math.abs(net)) / 2;
    }

    /** The smallest upright box that holds the path. */
    public Box bounds() {
        return segments.stream().map(Segment::bounds).reduce(Box::union).orElseThrow();
    }

    /** An upright box that holds the path, with room to spare but quickly had: that of its control points. */
    public Box hull() {
        Box hull = segments.get(0).hull();
        for (int i = 1; i < segments.size(); i++) {
            hull = hull.union(segments.get(i).hull());
        }
        return hull;
    }

    /** Points from start to end whose polyline leaves the path by at most {@code tolerance} mm. */
    public List<Point> flatten(double tolerance) {
        List<Point> points = new ArrayList<>();
        points.add(start());
        Consumer<Point> add = points::add;
        segments.forEach(segment -> segment.flatten(tolerance, add));
        return points;
    }

    /** Whether the two paths, flattened and compared point to path both ways, lie within {@code tolerance} mm. */
    public boolean isCloseTo(Path other, double tolerance) {
        return within(other, tolerance) && other.within(this, tolerance);
    }

    private boolean within(Path other, double tolerance) {
        double finer = Math.max(tolerance / 10, 1e-5);
        return flatten(finer).stream().allMatch(point -> other.distanceTo(point) <= tolerance);
    }

    /** How far in mm the two courses leave each other at most: 0 exactly where the control points are the same. */
    public double apart(Path other) {
        return equals(other) ? 0 : Math.max(farthestFrom(other), other.farthestFrom(this));
    }

    private double farthestFrom(Path other) {
        return flatten(Tolerance.FLATTENING).stream()
                .mapToDouble(other::distanceTo)
                .max()
                .orElseThrow();
    }

    /** All control points in order, joints once. */
    public Stream<Point> controlPoints() {
        return Stream.concat(
                Stream.of(start()),
                segments.stream()
                        .flatMap(segment -> segment instanceof Cubic cubic
                                ? Stream.of(cubic.startHandle(), cubic.endHandle(), cubic.end())
                                : Stream.of(segment.end())));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Path path && segments.equals(path.segments);
    }

    @Override
    public int hashCode() {
        return segments.hashCode();
    }

    @Override
    public String toString() {
        return segments.toString();
    }
}
