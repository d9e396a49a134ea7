package dev.hingepoint.svg.figure;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What of lines shows where a ring hides what lies behind it, or holds all that there is to see. In mm. */
final class Hidden {
    /** A line that is cut off is cut within so many mm of the ring. */
    private static final double CLOSE = 0.1;

    private final List<Point> ring;

    Hidden(Path ring) {
        this.ring = ring.flatten(Tolerance.FLATTENING);
    }

    List<List<Point>> outside(List<Path> lines) {
        return lines.stream().flatMap(line -> stretches(line, false).stream()).toList();
    }

    List<List<Point>> within(List<Path> lines) {
        return lines.stream().flatMap(line -> stretches(line, true).stream()).toList();
    }

    private List<List<Point>> stretches(Path line, boolean shown) {
        List<Point> points = closely(line);
        if (points.stream().allMatch(point -> holds(point) == shown)) {
            return List.of(line.flatten(Tolerance.FLATTENING));
        }
        List<List<Point>> stretches = new ArrayList<>();
        List<Point> stretch = new ArrayList<>();
        for (Point point : points) {
            if (holds(point) == shown) {
                stretch.add(point);
            } else {
                stretches.add(stretch);
                stretch = new ArrayList<>();
            }
        }
        stretches.add(stretch);
        return stretches.stream().filter(part -> part.size() > 1).toList();
    }

    private static List<Point> closely(Path line) {
        int steps = (int) Math.ceil(line.length() / CLOSE);
        return IntStream.rangeClosed(0, steps)
                .mapToObj(i -> line.at(line.length() * i / steps))
                .toList();
    }

    /** A ray from the point to the right crosses the ring an odd number of times. */
    private boolean holds(Point point) {
        boolean holds = false;
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            if ((a.y() > point.y()) != (b.y() > point.y())
                    && point.x() < a.x() + (point.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                holds = !holds;
            }
        }
        return holds;
    }
}
