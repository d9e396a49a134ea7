package dev.hingepoint.svg.lesson;

import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A piece of paper in a picture: its lines, and what is drawn on it. */
final class PaperLines {
    /** Curves are drawn within so many mm of the picture. */
    static final double FLAT = 0.02;

    /** Half the length in mm of a cross and of an arrow's head in the picture. */
    private static final double SIGN = 2;

    /** How far in radians either side of an arrow's head lies from its line. */
    private static final double HEAD = 0.4;

    /** Into so many parts a circle is drawn. */
    private static final int ROUND = 24;

    private PaperLines() {}

    /** A line of the pattern. */
    static Stroke stroke(Style style, Path path, Motion place) {
        return new Stroke(style, path.moved(place).flatten(FLAT));
    }

    /** The stitching line, and whatever is drawn on the paper. */
    static List<Stroke> of(Piece piece, Motion place) {
        List<Stroke> strokes = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            strokes.add(stroke(edge.kind() == Edge.Kind.FOLD ? Style.ON_FOLD : Style.STITCHING, edge.path(), place));
        }
        strokes.addAll(marks(piece, place));
        return strokes;
    }

    /** The cutting line, with the allowances that the card or the order gives. */
    static List<Stroke> cutting(Draft draft, Piece piece, Motion place) {
        return List.of(
                new Stroke(Style.CUTTING, place.of(CuttingLine.of(draft, piece).outline())));
    }

    /** What is drawn on the paper, without its edges. */
    static List<Stroke> marks(Piece piece, Motion place) {
        List<Stroke> strokes = new ArrayList<>();
        piece.marks(Dart.class)
                .flatMap(dart -> dart.legs().stream())
                .forEach(leg -> strokes.add(stroke(Style.DART, leg, place)));
        piece.marks(Level.class).forEach(level -> strokes.add(stroke(Style.LEVEL, level.path(), place)));
        piece.marks(DrawnLine.class).forEach(line -> strokes.add(stroke(Style.MARK, line.path(), place)));
        piece.marks(Notch.class).forEach(notch -> strokes.add(stroke(Style.MARK, Path.of(notch.line()), place)));
        piece.marks(MarkedPoint.class).forEach(point -> strokes.addAll(cross(place.of(point.at()))));
        Line grain = piece.grain().line();
        if (piece.marks(Grain.class).findAny().isPresent()) {
            strokes.addAll(arrow(Style.MARK, List.of(place.of(grain.start()), place.of(grain.end()))));
            strokes.addAll(arrow(Style.MARK, List.of(place.of(grain.end()), place.of(grain.start()))));
        }
        return strokes;
    }

    private static List<Stroke> cross(Point at) {
        return List.of(
                Stroke.of(Style.MARK, at.plus(new Vector(-SIGN, 0)), at.plus(new Vector(SIGN, 0))),
                Stroke.of(Style.MARK, at.plus(new Vector(0, -SIGN)), at.plus(new Vector(0, SIGN))));
    }

    /** A line with a head at its end, smaller where the line is short. */
    static List<Stroke> arrow(Style style, List<Point> points) {
        Point end = points.get(points.size() - 1);
        Point before = points.get(points.size() - 2);
        double length = IntStream.range(1, points.size())
                .mapToDouble(i -> points.get(i).distanceTo(points.get(i - 1)))
                .sum();
        Vector back = before.minus(end).unit().times(Math.min(SIGN, length / 2));
        return List.of(
                new Stroke(style, points),
                Stroke.of(style, end.plus(back.turned(HEAD)), end, end.plus(back.turned(-HEAD))));
    }

    /** The ring round a hinge. */
    static Stroke circle(Style style, Point centre, double radius) {
        return new Stroke(
                style,
                IntStream.rangeClosed(0, ROUND)
                        .mapToObj(i -> centre.plus(
                                Vector.ofAngle(i * 2 * StrictMath.PI / ROUND).times(radius)))
                        .toList());
    }
}
