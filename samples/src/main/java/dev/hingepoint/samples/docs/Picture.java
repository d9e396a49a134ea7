package dev.hingepoint.samples.docs;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.page.Area;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.SvgPage;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Tint;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A small picture for the docs while it is being drawn, at a fifth of the size and to a hundredth of a millimetre: a few kilobytes, and nothing to measure on. */
final class Picture {
    static final double SCALE = 0.2;
    static final double TYPE = 6;
    private static final double MARGIN = 4;
    private static final double FINE = 0.02;
    private static final double LAST_DECIMAL = 0.01;
    private static final double DOT = 2;

    private final List<Area> areas = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();

    /** The motion that draws the pattern small, with the corner of a box at a point of the picture. */
    static Motion small(Box box, double x, double y) {
        return new Motion(SCALE, 0, 0, SCALE, x - SCALE * box.left(), y - SCALE * box.top());
    }

    /** The lines that are drawn on a piece. */
    static List<Path> lines(Piece piece) {
        return Stream.of(
                        Stream.of(piece.outline()),
                        piece.marks(Dart.class).flatMap(dart -> dart.legs().stream()),
                        piece.marks(Level.class).map(Level::path),
                        piece.marks(Notch.class).map(notch -> Path.of(notch.line())))
                .flatMap(paths -> paths)
                .toList();
    }

    void line(Style style, Path path, Motion place) {
        strokes.add(new Stroke(style, points(path, place)));
    }

    void lines(Style style, List<Path> paths, Motion place) {
        paths.forEach(path -> line(style, path, place));
    }

    void area(Tint tint, Path ring, Motion place) {
        areas.add(new Area(tint, points(ring, place)));
    }

    void dot(Point at, Motion place) {
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i <= 12; i++) {
            ring.add(rounded(place.of(at).plus(Vector.ofAngle(i * Math.PI / 6).times(DOT))));
        }
        strokes.add(new Stroke(Style.HINGE, ring));
    }

    void words(String words, double x, double y) {
        texts.add(new Text(words, new Point(x, y), TYPE, 0));
    }

    /** A line as a key to what it stands for; answers with where the next thing may stand. */
    double key(Style style, String words, double x, double y) {
        strokes.add(Stroke.of(style, new Point(x, y - TYPE / 3), new Point(x + 14, y - TYPE / 3)));
        words(words, x + 17, y);
        return texts.get(texts.size() - 1).bounds().right() + 10;
    }

    /** As SVG, with a margin round it. */
    String svg(String title) {
        return svg(title, Double.POSITIVE_INFINITY);
    }

    /** As SVG, what lies below a line left out. */
    String svg(String title, double bottom) {
        Drawn drawn = new Drawn(areas, strokes, texts);
        Box box = drawn.bounds().grownBy(MARGIN);
        Motion onto = Motion.shift(new Vector(-Math.floor(box.left()), -Math.floor(box.top())));
        double height = Math.min(box.bottom(), bottom) - box.top();
        return SvgPage.write(Math.ceil(box.width()), Math.ceil(height), drawn.moved(onto), title);
    }

    private static List<Point> points(Path path, Motion place) {
        List<Point> points = new ArrayList<>();
        for (Point point : path.moved(place).flatten(FINE)) {
            Point next = rounded(point);
            if (points.isEmpty() || !points.get(points.size() - 1).equals(next)) {
                points.add(next);
            }
        }
        return points;
    }

    private static Point rounded(Point point) {
        return new Point(
                Math.rint(point.x() / LAST_DECIMAL) * LAST_DECIMAL, Math.rint(point.y() / LAST_DECIMAL) * LAST_DECIMAL);
    }
}
