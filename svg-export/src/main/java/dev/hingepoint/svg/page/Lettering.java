package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * The words on one piece. Each is set inside the stitching line where there is room, clear of every line and of other words, and off the strips where pages are joined;
 * else on a joint, else {@link Beside} the piece with a leader line to what it names. None is left out. The name of a piece that is too small for its label is set on it all the
 * same, if need be in the seam allowance, since what stands beside it is cut away.
 */
final class Lettering {
    private static final double SMALL = 3.5;

    /** The smallest type that is set, in mm: 7 point. */
    private static final double SMALLEST = 2.5;

    private static final double[] LARGE_SIZES = {5.5, 4.8, 4.2, 3.6};
    private static final double[] SMALL_SIZES = {3, SMALLEST};
    private static final int NARROW_LINE = 26;
    private static final int MOST_COLUMNS = 6;

    /** How far in mm words keep from the line they stand beside. */
    private static final double KEPT_OFF = 1.3;

    /** How far in mm the name of a point may stand from it. */
    private static final double NEAR = 30;

    /** A grid of places is searched, at most so many mm apart, and in a small piece so many from side to side. */
    private static final double SEARCH_STEP = 10;

    private static final int SEARCH_STEPS = 24;

    private final Piece piece;
    private final FreeSpace clear;
    private final FreeSpace stitched;
    private final FreeSpace cut;

    /** Over the whole piece, from its middle outwards. */
    private final List<Point> positions;

    private final List<Text> texts = new ArrayList<>();
    private final List<Beside.Row> rows = new ArrayList<>();

    /**
     * @param stitched the space within the stitching line, all lines drawn
     * @param cutting the cutting line
     * @param joints the strips where pages are joined
     */
    Lettering(Piece piece, FreeSpace stitched, List<Point> cutting, List<Box> joints) {
        this.piece = piece;
        this.stitched = stitched;
        this.clear = stitched.without(joints);
        this.cut = stitched.alsoWithin(cutting);
        Box box = piece.outline().bounds();
        this.positions = positions(box.centre(), box).toList();
    }

    List<Text> texts() {
        return texts;
    }

    /** What found no room on the piece, with what it names. */
    List<Beside.Row> rows() {
        return rows;
    }

    private boolean placed(Supplier<Stream<Text>> places) {
        Optional<Text> found = clear.place(places.get()).or(() -> stitched.place(places.get()));
        found.ifPresent(texts::add);
        return found.isPresent();
    }

    /** The label: as large as fits, as near to the middle of the piece as there is room; in narrow lines or columns, or on its side, where it must. */
    boolean label(List<String> lines) {
        return label(clear, lines) || label(stitched, lines);
    }

    private boolean label(FreeSpace space, List<String> lines) {
        List<Block> broad = List.of(Block.of(lines), Block.wrapped(lines, NARROW_LINE));
        List<Block> low = IntStream.rangeClosed(2, MOST_COLUMNS)
                .mapToObj(count -> Block.inColumns(lines, count))
                .toList();
        for (double size : LARGE_SIZES) {
            if (isSet(space, broad, size)) {
                return true;
            }
        }
        for (double size : SMALL_SIZES) {
            if (isSet(space, broad, size) || isSet(space, low, size)) {
                return true;
            }
        }
        return false;
    }

    /** Sets the first of the blocks that has room, level or on its side. */
    private boolean isSet(FreeSpace space, List<Block> blocks, double size) {
        for (Block block : blocks) {
            for (double angle : new double[] {0, -StrictMath.PI / 2}) {
                Optional<List<Text>> found = space.place(block.set(size, angle), positions.stream());
                if (found.isPresent()) {
                    texts.addAll(found.get());
                    return true;
                }
            }
        }
        return false;
    }

    /** A short name by itself, wherever on the paper of the piece there is room: in the middle, else along an edge. */
    boolean name(String name) {
        List<Block> alone = List.of(Block.of(List.of(name)));
        for (double size : new double[] {SMALL, SMALLEST}) {
            for (FreeSpace space : List.of(stitched, cut)) {
                if (isSet(space, alone, size)) {
                    return true;
                }
                Optional<Text> found = space.place(
                        piece.edges().stream().map(Edge::path).flatMap(path -> alongside(path, name, size)));
                if (found.isPresent()) {
                    texts.add(found.get());
                    return true;
                }
            }
        }
        return false;
    }

    /** Words along a line, close above it or below, wherever along it there is room. */
    void along(Path path, String words) {
        if (!placed(() -> Stream.of(SMALL, SMALLEST).flatMap(size -> alongside(path, words, size)))) {
            rows.add(new Beside.Row(
                    List.of(words),
                    IntStream.range(1, 20)
                            .mapToObj(i -> path.at(path.length() * i / 20))
                            .toList()));
        }
    }

    private static Stream<Text> alongside(Path path, String words, double size) {
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
                    return Stream.of(KEPT_OFF + Text.BELOW * size, -KEPT_OFF - Text.ABOVE * size)
                            .map(above ->
                                    new Text(words, start.plus(reading.left().times(above)), size, angle));
                });
    }

    /**
     * The name of a point: close to its mark, else near by.
     *
     * @param arm how far in mm the mark reaches
     */
    void beside(Point point, double arm, String words) {
        double width = Type.width(words, SMALL);
        double small = Type.width(words, SMALLEST);
        Supplier<Stream<Text>> places = () -> Stream.concat(
                Stream.of(
                                new Vector(arm + 1, -arm - 1),
                                new Vector(-arm - 1 - width, -arm - 1),
                                new Vector(arm + 1, arm + 2 + SMALL),
                                new Vector(-arm - 1 - width, arm + 2 + SMALL),
                                new Vector(-width / 2, -arm - 4),
                                new Vector(-width / 2, -arm - 12))
                        .map(step -> new Text(words, point.plus(step), SMALL, 0)),
                positions(point, new Box(point.x(), point.y(), point.x(), point.y()).grownBy(NEAR))
                        .map(at -> new Text(words, at.minus(new Vector(small / 2, -SMALLEST / 2)), SMALLEST, 0)));
        if (!placed(places)) {
            rows.add(new Beside.Row(List.of(words), List.of(point)));
        }
    }

    /** Places inside the piece. */
    List<Point> inside() {
        Polygon outline = JtsBridge.polygon(piece);
        Coordinate surely = outline.getInteriorPoint().getCoordinate();
        PreparedGeometry inside = PreparedGeometryFactory.prepare(outline);
        return Stream.concat(Stream.of(new Point(surely.x, surely.y)), positions.stream())
                .filter(at -> inside.contains(outline.getFactory().createPoint(new Coordinate(at.x(), at.y()))))
                .toList();
    }

    /** A grid over a box, from a place outwards. */
    private static Stream<Point> positions(Point middle, Box box) {
        double across = Math.min(SEARCH_STEP, box.width() / SEARCH_STEPS);
        double down = Math.min(SEARCH_STEP, box.height() / SEARCH_STEPS);
        List<Point> grid = new ArrayList<>();
        for (double x = first(middle.x(), box.left(), across); x <= box.right(); x += across) {
            for (double y = first(middle.y(), box.top(), down); y <= box.bottom(); y += down) {
                grid.add(new Point(x, y));
            }
        }
        return grid.stream().sorted((a, b) -> Double.compare(a.distanceTo(middle), b.distanceTo(middle)));
    }

    /** The first place of a grid with a place at the middle. */
    private static double first(double middle, double from, double step) {
        return middle - step * Math.floor((middle - from) / step);
    }
}
