package dev.hingepoint.allowance;

import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Points in a row, and where straight lines meet them. Both ends can be thought to run on straight. */
final class Polyline {
    private static final double NOTHING = 1e-9;

    private Polyline() {}

    /** Where the endless lines through two points along two directions meet; null where they are nearly parallel. */
    static Point meeting(Point one, Vector along, Point other, Vector alongOther) {
        double area = along.cross(alongOther);
        if (Math.abs(area) < 1e-6) {
            return null;
        }
        return one.plus(along.times(other.minus(one).cross(alongOther) / area));
    }

    /**
     * The row cut where it last crosses a line, run on straight at its end where it does not reach it.
     *
     * @return the points before, and the crossing
     */
    static List<Point> upTo(List<Point> row, Point onLine, Vector line) {
        Vector unit = line.unit();
        for (int i = row.size() - 1; i > 0; i--) {
            double a = unit.cross(row.get(i - 1).minus(onLine));
            double b = unit.cross(row.get(i).minus(onLine));
            if (a != b && a <= 0 != b <= 0) {
                List<Point> kept = new ArrayList<>(row.subList(0, i));
                kept.add(row.get(i - 1).towards(row.get(i), a / (a - b)));
                return kept;
            }
        }
        List<Point> kept = new ArrayList<>(row);
        Point end = meeting(row.get(row.size() - 1), endDirection(row), onLine, line);
        if (end != null) {
            kept.add(end);
        }
        return kept;
    }

    static Vector endDirection(List<Point> row) {
        for (int i = row.size() - 2; i >= 0; i--) {
            Vector step = row.get(row.size() - 1).minus(row.get(i));
            if (step.length() > NOTHING) {
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

    /** Where two rows first cross, walking the second one from its start; null where they do not. */
    static Crossing crossing(List<Point> row, List<Point> other) {
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
                    return new Crossing(i, j, part.at(found.get(0)));
                }
            }
        }
        return null;
    }

    /** The crossing lies before point {@code onRow} of the one row and before point {@code onOther} of the other. */
    record Crossing(int onRow, int onOther, Point at) {}
}
