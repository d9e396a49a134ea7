package dev.hingepoint.svg.page;

import dev.hingepoint.Reason;
import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** One piece as it is cut, upright with its grain: every line that is drawn, and every word, in free space inside the piece. */
final class PieceDrawing {
    private static final double ARROW = 6;
    private static final double CROSS = 5;
    private static final double SMALL = 3.5;
    private static final double SMALLER = 2.2;

    /** How far in mm words keep from the line they stand beside. */
    private static final double BESIDE = 1.3;

    private static final double[] LABEL_SIZES = {5.5, 4.8, 4.2, 3.6, 3, 2.5, 2};
    private static final double[] COLUMN_SIZES = {3, 2.5, 2};
    private static final int MOST_COLUMNS = 6;
    private static final double LINE_SPACING = 1.3;
    private static final double SEARCH_STEP = 6;

    private final Draft draft;
    private final Piece piece;
    private final CuttingLine cutting;
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();
    private final FreeSpace free;

    private PieceDrawing(Draft draft, Piece piece) {
        this.draft = draft;
        this.piece = piece;
        this.cutting = CuttingLine.of(draft, piece);
        this.free = new FreeSpace(piece.outline().flatten(0.1));
    }

    static Drawn of(Draft draft, Piece drawn, List<String> label) {
        Vector down = drawn.grain().down();
        Vector upright = new Vector(0, 1);
        Piece piece = down.equals(upright)
                ? drawn
                : drawn.moved(Motion.turn(drawn.outline().bounds().centre(), down, upright));
        return new PieceDrawing(draft, piece).drawn(label);
    }

    private Drawn drawn(List<String> label) {
        draw(Style.CUTTING, cutting.outline());
        cutting.notches().forEach(notch -> draw(Style.MARK, List.of(notch.start(), notch.end())));
        for (Edge edge : piece.edges()) {
            draw(edge.kind() == Edge.Kind.FOLD ? Style.FOLD : Style.STITCHING, flat(edge.path()));
        }
        piece.marks(Dart.class).forEach(this::dart);
        piece.marks(Level.class).forEach(level -> draw(Style.LEVEL, flat(level.path())));
        piece.marks(DrawnLine.class).forEach(line -> draw(Style.MARK, flat(line.path())));
        piece.marks(MarkedPoint.class).forEach(this::point);
        piece.marks(Grain.class).forEach(grain -> arrow(grain.line(), true));

        label(label);
        piece.marks(Level.class)
                .forEach(level -> along(
                        level.path(),
                        level.name() + " " + Reason.millimetres(Math.rint(draft.girth(level.name()))) + " round"));
        piece.marks(DrawnLine.class).forEach(line -> along(line.path(), line.name()));
        piece.edges().stream()
                .filter(edge -> edge.kind() == Edge.Kind.FOLD)
                .forEach(edge -> along(edge.path(), "place on fold"));
        piece.marks(MarkedPoint.class).forEach(point -> beside(point.at(), point.name()));
        piece.marks(Dart.class).forEach(dart -> along(dart.legs().get(0), pressed(dart)));
        return new Drawn(strokes, texts);
    }

    private void draw(Style style, List<Point> points) {
        Stroke stroke = new Stroke(style, points);
        strokes.add(stroke);
        free.take(stroke);
    }

    private static List<Point> flat(Path path) {
        return path.flatten(Tolerance.FLATTENING);
    }

    private void point(MarkedPoint point) {
        Vector across = new Vector(CROSS, 0);
        Vector down = new Vector(0, CROSS);
        draw(Style.MARK, List.of(point.at().minus(across), point.at().plus(across)));
        draw(Style.MARK, List.of(point.at().minus(down), point.at().plus(down)));
        List<Point> circle = IntStream.rangeClosed(0, 24)
                .mapToObj(i ->
                        point.at().plus(Vector.ofAngle(i * StrictMath.PI / 12).times(CROSS / 2)))
                .toList();
        draw(Style.MARK, circle);
    }

    private void dart(Dart dart) {
        dart.legs().forEach(leg -> draw(Style.DART, flat(leg)));
        Line across = across(dart);
        Point middle = across.at(0.5);
        Vector reach = across.step().times(0.3);
        arrow(new Line(middle.minus(reach), middle.plus(reach)), false);
    }

    /** From leg to leg across the dart, in the direction in which it is pressed. */
    private Line across(Dart dart) {
        if (dart instanceof EdgeDart edge) {
            Vector half = CuttingLine.pressedTowards(piece, edge).times(edge.intake() / 2 * 0.88);
            Point middle = edge.mouthMiddle().towards(edge.tip(), 0.12);
            return new Line(middle.minus(half), middle.plus(half));
        }
        // an upright dart is pressed to the centre; the arrow stands a little below its widest
        Path one = dart.legs().get(0);
        Path other = dart.legs().get(1).reversed();
        Point first = one.at(one.length() * 0.56);
        Point second = other.at(other.length() * 0.56);
        boolean isFirstNearer = piece.centre()
                .map(edge -> edge.path().distanceTo(first) < edge.path().distanceTo(second))
                .orElse(true);
        return isFirstNearer ? new Line(second, first) : new Line(first, second);
    }

    private String pressed(Dart dart) {
        return Math.abs(across(dart).tangent(0).dot(piece.grain().down())) > 0.7 ? "fold down" : "fold to the centre";
    }

    private void arrow(Line line, boolean isDouble) {
        draw(Style.MARK, List.of(line.start(), line.end()));
        head(line.end(), line.tangent(1));
        if (isDouble) {
            head(line.start(), line.tangent(0).negated());
        }
    }

    private void head(Point tip, Vector direction) {
        double length = Math.min(ARROW, 3);
        Vector back = direction.times(-2 * length / 1.5);
        draw(
                Style.MARK,
                List.of(
                        tip.plus(back).plus(direction.left().times(length / 2)),
                        tip,
                        tip.plus(back).plus(direction.right().times(length / 2))));
    }

    /** The label: as large as fits, as near to the middle of the piece as there is room; on its side where it must. */
    private void label(List<String> lines) {
        for (int columns = 1; columns <= MOST_COLUMNS; columns++) {
            for (double size : columns == 1 ? LABEL_SIZES : COLUMN_SIZES) {
                for (double angle : new double[] {0, -StrictMath.PI / 2}) {
                    int count = columns;
                    var placed = free.place(positions(piece.outline().bounds().centre())
                            .map(at -> columns(lines, count, at, size, angle)));
                    if (placed.isPresent()) {
                        texts.addAll(placed.get());
                        return;
                    }
                }
            }
        }
        // a piece too small for its label still says which it is
        free.place(positions(piece.outline().bounds().centre()).map(at -> set(lines.subList(1, 2), at, 2, 0)))
                .ifPresent(texts::addAll);
    }

    /** Beside one another, for a strip that is too low for all lines below one another. */
    private static List<Text> columns(List<String> lines, int count, Point centre, double size, double angle) {
        int rows = (lines.size() + count - 1) / count;
        List<List<String>> columns = new ArrayList<>();
        for (int i = 0; i < lines.size(); i += rows) {
            columns.add(lines.subList(i, Math.min(lines.size(), i + rows)));
        }
        double between = 2 * size;
        double width =
                columns.stream().mapToDouble(column -> width(column, size)).sum() + between * (columns.size() - 1);
        Vector along = Vector.ofAngle(angle);
        double from = -width / 2;
        List<Text> all = new ArrayList<>();
        for (List<String> column : columns) {
            double own = width(column, size);
            double up = (rows - column.size()) * size * LINE_SPACING / 2;
            Point middle =
                    centre.plus(along.times(from + own / 2)).plus(along.left().times(up));
            all.addAll(set(column, middle, size, angle));
            from += own + between;
        }
        return all;
    }

    private static double width(List<String> lines, double size) {
        return lines.stream().mapToDouble(line -> Type.width(line, size)).max().orElse(0);
    }

    private static List<Text> set(List<String> lines, Point centre, double size, double angle) {
        double width = width(lines, size);
        Vector along = Vector.ofAngle(angle);
        Vector down = along.right();
        Point first =
                centre.minus(along.times(width / 2)).minus(down.times(lines.size() * size * LINE_SPACING / 2 - size));
        return IntStream.range(0, lines.size())
                .mapToObj(i -> new Text(
                        lines.get(i).strip(),
                        first.plus(down.times(i * size * LINE_SPACING))
                                .plus(along.times(lines.get(i).startsWith("  ") ? size : 0)),
                        size,
                        angle))
                .toList();
    }

    /** A grid over the piece, from a place outwards. */
    private Stream<Point> positions(Point middle) {
        Box box = piece.outline().bounds();
        List<Point> grid = new ArrayList<>();
        for (double x = box.left(); x <= box.right(); x += SEARCH_STEP) {
            for (double y = box.top(); y <= box.bottom(); y += SEARCH_STEP) {
                grid.add(new Point(x, y));
            }
        }
        return grid.stream().sorted((a, b) -> Double.compare(a.distanceTo(middle), b.distanceTo(middle)));
    }

    /** Words along a line, close above it or below, wherever along it there is room; smaller, or near by, where there is none. */
    private void along(Path path, String words) {
        Point middle = path.at(path.length() / 2);
        Stream<List<Text>> nearBy = positions(middle).map(at -> set(List.of(words), at, SMALLER, 0));
        free.place(Stream.of(along(path, words, SMALL), along(path, words, SMALLER), nearBy)
                        .flatMap(all -> all))
                .ifPresent(texts::addAll);
    }

    private static Stream<List<Text>> along(Path path, String words, double size) {
        return IntStream.rangeClosed(0, 36)
                .mapToDouble(i -> 0.5 + (i % 2 == 0 ? i : -i - 1) / 76.0)
                .boxed()
                .flatMap(fraction -> {
                    var position = path.positionAt(path.length() * fraction);
                    Vector along = path.tangent(position);
                    boolean isBackwards = along.x() < -1e-9 || Math.abs(along.x()) <= 1e-9 && along.y() > 0;
                    Vector reading = isBackwards ? along.negated() : along;
                    double angle = StrictMath.atan2(reading.y(), reading.x());
                    Point start = path.at(position).minus(reading.times(Type.width(words, size) / 2));
                    return Stream.of(BESIDE + Text.BELOW * size, -BESIDE - Text.ABOVE * size)
                            .map(above -> List.of(
                                    new Text(words, start.plus(reading.left().times(above)), size, angle)));
                });
    }

    private void beside(Point point, String words) {
        double width = Type.width(words, SMALL);
        Stream<List<Text>> candidates = Stream.of(
                        new Vector(CROSS + 1, -CROSS - 1),
                        new Vector(-CROSS - 1 - width, -CROSS - 1),
                        new Vector(CROSS + 1, CROSS + 2 + SMALL),
                        new Vector(-CROSS - 1 - width, CROSS + 2 + SMALL),
                        new Vector(-width / 2, -CROSS - 4),
                        new Vector(-width / 2, -CROSS - 12))
                .map(step -> List.of(new Text(words, point.plus(step), SMALL, 0)));
        Stream<List<Text>> nearBy = positions(point).map(at -> set(List.of(words), at, SMALLER, 0));
        free.place(Stream.concat(candidates, nearBy)).ifPresent(texts::addAll);
    }
}
