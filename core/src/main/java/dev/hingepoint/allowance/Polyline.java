package dev.hingepoint.allowance;

import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Points in a row, and where straight lines meet them. Both ends can be thought to run on straight. */
final class Polyline {
    private Polyline() {}

    /** Where the endless lines through two points along two directions meet; empty where they are parallel. */
    static Optional<Point> meeting(Point one, Vector along, Point other, Vector alongOther) {
        double area = along.cross(alongOther);
        if (Math.abs(area) < Tolerance.PARALLEL * along.length() * alongOther.length()) {
            return Optional.empty();
        }
        return Optional.of(one.plus(along.times(other.minus(one).cross(alongOther) / area)));
    }

    /**
     * The row cut where it last crosses a line, run on straight at its end where it does not reach it.
     *
     * @return the points before, and the crossing
     */
    static List<Point> upTo(List<Point> row, Point onLine, Vector line) {
        Vector unit = line.unit();
        for (int i = row.size() - 1; i > 0; i--) {
            Optional<Point> crossing = crossing(row, i, onLine, unit);
            if (crossing.isPresent()) {
                List<Point> kept = new ArrayList<>(row.subList(0, i));
                kept.add(crossing.get());
                return kept;
            }
        }
        List<Point> kept = new ArrayList<>(row);
        meeting(row.get(row.size() - 1), endDirection(row), onLine, line).ifPresent(kept::add);
        return kept;
    }

    /** The row cut where it first crosses a line, run on straight at its end where it does not reach it. */
    static List<Point> firstUpTo(List<Point> row, Point onLine, Vector line) {
        Vector unit = line.unit();
        for (int i = 1; i < row.size(); i++) {
            Optional<Point> crossing = crossing(row, i, onLine, unit);
            if (crossing.isPresent()) {
                List<Point> kept = new ArrayList<>(row.subList(0, i));
                kept.add(crossing.get());
                return kept;
            }
        }
        return upTo(row, onLine, line);
    }

    /** Where the part of the row before point {@code i} crosses a line. */
    private static Optional<Point> crossing(List<Point> row, int i, Point onLine, Vector unit) {
        double a = unit.cross(row.get(i - 1).minus(onLine));
        double b = unit.cross(row.get(i).minus(onLine));
        boolean crosses = a != b && a <= 0 != b <= 0;
        return crosses ? Optional.of(row.get(i - 1).towards(row.get(i), a / (a - b))) : Optional.empty();
    }

    /** Unit direction in which the row ends. */
    static Vector endDirection(List<Point> row) {
        for (int i = row.size() - 2; i >= 0; i--) {
            Vector step = row.get(row.size() - 1).minus(row.get(i));
            if (step.length() > Tolerance.LENGTH) {
                return step.unit();
            }
        }
        throw new IllegalArgumentException("a row of points needs an extent");
    }

    static List<Point> reversed(List<Point> row) {
        List<Point> reversed = new ArrayList<>(row);
        Collections.reverse(reversed);
        return reversed;
    }

    /** The points mirrored about the line through a point. */
    static List<Point> mirrored(List<Point> row, Point on, Vector line) {
        Vector unit = line.unit();
        return row.stream()
                .map(point -> {
                    Vector from = point.minus(on);
                    return on.plus(unit.times(2 * from.dot(unit)).minus(from));
                })
                .toList();
    }

    /** Where two rows first cross, walking the second one from its start; empty where they do not. */
    static Optional<Crossing> crossing(List<Point> row, List<Point> other) {
        for (int j = 1; j < other.size(); j++) {
            if (other.get(j).equals(other.get(j - 1))) {
                continue;
            }
            Line line = new Line(other.get(j - 1), other.get(j));
            for (int i = row.size() - 1; i > 0; i--) {
                if (row.get(i).equals(row.get(i - 1))) {
                    continue;
                }
                Path part = Path.through(row.get(i - 1), row.get(i));
                var found = part.crossings(line);
                if (!found.isEmpty()) {
                    return Optional.of(new Crossing(i, j, part.at(found.get(0))));
                }
            }
        }
        return Optional.empty();
    }

    /** The crossing lies before point {@code onRow} of the one row and before point {@code onOther} of the other. */
    record Crossing(int onRow, int onOther, Point at) {}
}
