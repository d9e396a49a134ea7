package dev.hingepoint.samples.draft;

import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.DoublePointedDart;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A piece on the drawing board: edges in order round it, and what is drawn on it. Centre line at x = 0, to the left. */
final class Drawing {
    private static final double NOTCH = 6;

    private final List<Edge> edges = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();

    static Point at(double x, double y) {
        return new Point(x, y);
    }

    /** A curve from a point, along one direction, to a point, along another; each handle so long. */
    static Cubic curve(Point from, Vector along, double handle, Point to, Vector arriving, double toHandle) {
        return new Cubic(
                from,
                from.plus(along.unit().times(handle)),
                to.minus(arriving.unit().times(toHandle)),
                to);
    }

    static Vector direction(double degreesFromDown) {
        return new Vector(0, 1).turned(-StrictMath.toRadians(degreesFromDown));
    }

    Drawing edge(String name, Edge.Kind kind, Path path) {
        edges.add(new Edge(name, kind, path));
        return this;
    }

    Drawing mark(Mark mark) {
        marks.add(mark);
        return this;
    }

    /** A level from the centre line to the outline at a height. */
    Drawing level(String name, double y) {
        Point end = acrossAt(y);
        return mark(new Level(name, Path.through(at(0, y), end)));
    }

    Drawing line(String name, double y) {
        return mark(new DrawnLine(name, Path.through(at(0, y), acrossAt(y))));
    }

    /** Where a level line at a height meets the outline, away from the centre line. */
    private Point acrossAt(double y) {
        return edges.stream()
                .map(Edge::path)
                .flatMap(path ->
                        path.crossings(at(0, y), new Vector(1, 0)).stream().map(path::at))
                .max(Comparator.comparingDouble(Point::x))
                .orElseThrow();
    }

    Drawing grain(double x, double from, double to) {
        return mark(new Grain(new Line(at(x, from), at(x, to))));
    }

    Drawing waistDart(double x, double upperTip, double waist, double lowerTip, double intake) {
        return mark(DoublePointedDart.of(
                "waist dart",
                Path.through(
                        at(x, upperTip),
                        at(x + intake / 2, waist),
                        at(x, lowerTip),
                        at(x - intake / 2, waist),
                        at(x, upperTip))));
    }

    /** A notch on an edge, so many mm from where its path begins. */
    Drawing notch(String name, int count, String edge, double along) {
        Path path = edges.stream()
                .filter(e -> e.name().equals(edge))
                .findFirst()
                .orElseThrow()
                .path();
        var position = path.positionAt(along);
        Point on = path.at(position);
        return mark(new Notch(
                name, count, new Line(on, on.plus(path.tangent(position).right().times(NOTCH)))));
    }

    /** A notch on an edge where a level meets it. */
    Drawing notchAt(String name, int count, String edge, double y) {
        Path path = edges.stream()
                .filter(e -> e.name().equals(edge))
                .findFirst()
                .orElseThrow()
                .path();
        return notch(
                name,
                count,
                edge,
                path.distanceAlong(path.crossings(at(0, y), new Vector(1, 0)).get(0)));
    }

    Piece piece(String name, String size, Cutting cutting) {
        return Piece.of(name, size, Optional.empty(), List.of(cutting), edges, marks);
    }
}
