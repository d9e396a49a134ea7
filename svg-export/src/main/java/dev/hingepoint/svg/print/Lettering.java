package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The words on one piece. Each is set inside the stitching line where there is room, clear of every line and of other words, and off the strips where pages are joined;
 * else on a joint, else {@link Beside} the piece with a leader line to what it names. None is left out. The name of a piece that is too small for its label is set on it all the
 * same, if need be in the seam allowance, since what stands beside it is cut away.
 */
final class Lettering {
    private static final int NARROW_LINE = 26;
    private static final int MOST_COLUMNS = 6;

    /** How far in mm the name of a point may stand from it. */
    private static final double NEAR = 30;

    /** The name of a size keeps so much of the usual distance from lines, since it stands between two. */
    private static final double SIZE_CLEAR = 0.3;

    /** A grid of places is searched, at most so many mm apart, and in a small piece so many from side to side. */
    private static final double SEARCH_STEP = 10;

    private static final int SEARCH_STEPS = 24;

    private final TypeSizes types;
    private final FreeSpace clear;
    private final FreeSpace stitched;
    private final List<Box> joints;

    /** Over the whole piece, from its middle outwards. */
    private final List<Point> positions;

    private final List<Text> texts = new ArrayList<>();
    private final List<Beside.Row> rows = new ArrayList<>();

    /** Sets words together, round (0, 0). */
    private interface Setting {
        List<Text> set(double size, double angle);
    }

    /**
     * @param stitched the space within the stitching line, all lines drawn
     * @param joints the strips where pages are joined
     */
    Lettering(FreeSpace stitched, List<Box> joints, TypeSizes types) {
        this.types = types;
        this.stitched = stitched;
        this.joints = joints;
        this.clear = stitched.without(joints);
        Box box = stitched.bounds();
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
        return placed(clear, places) || placed(stitched, places);
    }

    private boolean placed(FreeSpace space, Supplier<Stream<Text>> places) {
        Optional<Text> found = space.place(places.get());
        found.ifPresent(texts::add);
        return found.isPresent();
    }

    /** The label: as large as fits, as near to the middle of the piece as there is room; in narrow lines or columns, or on its side, where it must. */
    boolean label(List<String> lines) {
        return label(clear, lines) || label(stitched, lines);
    }

    private boolean label(FreeSpace space, List<String> lines) {
        List<Point> within = within(stitched);
        List<Setting> broad = List.of(headed(lines, Block.of(lines)), headed(lines, Block.wrapped(lines, NARROW_LINE)));
        List<Setting> low = IntStream.rangeClosed(2, MOST_COLUMNS)
                .mapToObj(count -> (Setting) Block.inColumns(lines, count)::set)
                .toList();
        return types.label().stream().anyMatch(size -> isSet(space, broad, size, within))
                || types.tight().stream()
                        .anyMatch(size -> isSet(space, broad, size, within) || isSet(space, low, size, within));
    }

    /** The piece's name over the rest, where it is to be larger. */
    private Setting headed(List<String> lines, Block block) {
        if (types.heading() == 1) {
            return block::set;
        }
        List<String> rest = new ArrayList<>(lines);
        Block name = Block.of(List.of(rest.remove(Label.NAME)));
        Block body = block.columns().get(0).equals(lines) ? Block.of(rest) : Block.wrapped(rest, NARROW_LINE);
        return new Headed(name, types.heading(), body)::set;
    }

    /** The places in a space: of the box round a slanting strip they are few. */
    private List<Point> within(FreeSpace space) {
        return positions.stream().filter(space::holds).toList();
    }

    /** Sets the first of the blocks that has room, level or on its side. */
    private boolean isSet(FreeSpace space, List<Setting> blocks, double size, List<Point> places) {
        for (Setting block : blocks) {
            for (double angle : new double[] {0, -StrictMath.PI / 2}) {
                Optional<List<Text>> found = space.place(block.set(size, angle), places.stream());
                if (found.isPresent()) {
                    texts.addAll(found.get());
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * A short name by itself, wherever on the paper of the piece there is room: in the middle, else along an edge.
     *
     * @param cutting the rings to cut along
     */
    boolean name(String name, List<Path> edges, List<List<Point>> cutting) {
        List<Setting> alone = List.of(Block.of(List.of(name))::set);
        FreeSpace cut = stitched.alsoWithin(cutting);
        Map<FreeSpace, List<Point>> spaces = new LinkedHashMap<>();
        spaces.put(stitched, within(stitched));
        spaces.put(cut, within(cut));
        return types.along().stream()
                .anyMatch(size -> spaces.entrySet().stream()
                        .anyMatch(space -> isSet(space.getKey(), alone, size, space.getValue())
                                || placed(
                                        space.getKey(),
                                        () -> edges.stream().flatMap(path -> alongside(path, name, size)))));
    }

    /** Words along a line, close above it or below, wherever along it there is room; or along another of the lines. */
    void along(List<Path> paths, String words) {
        Supplier<Stream<Text>> places = () ->
                paths.stream().flatMap(path -> types.along().stream().flatMap(size -> alongside(path, words, size)));
        if (!placed(places)) {
            Path path = paths.get(0);
            rows.add(new Beside.Row(
                    List.of(words),
                    IntStream.range(1, 20)
                            .mapToObj(i -> path.at(path.length() * i / 20))
                            .toList()));
        }
    }

    private Stream<Text> alongside(Path path, String words, double size) {
        return IntStream.rangeClosed(0, 36)
                .mapToDouble(i -> 0.5 + (i % 2 == 0 ? i : -i - 1) / 76.0)
                .boxed()
                .flatMap(fraction -> alongside(path, path.length() * fraction, words, size, types.keptOff()));
    }

    /** Words above a line and below it, their middle at a distance along it, so that they are read from below or from the right. */
    private static Stream<Text> alongside(Path path, double distance, String words, double size, double keptOff) {
        var position = path.positionAt(distance);
        Vector along = path.tangent(position);
        boolean isBackwards = along.x() < -1e-9 || Math.abs(along.x()) <= 1e-9 && along.y() > 0;
        Vector reading = isBackwards ? along.negated() : along;
        double angle = StrictMath.atan2(reading.y(), reading.x());
        Point start = path.at(position).minus(reading.times(Type.width(words, size) / 2));
        return Stream.of(keptOff + Text.BELOW * size, -keptOff - Text.ABOVE * size)
                .map(above -> new Text(words, start.plus(reading.left().times(above)), size, angle));
    }

    /**
     * The name of a size inside the line that it is cut along, once on each of some stretches of it, where there is room; beside the piece where there is none on any.
     *
     * @param rings the lines to cut along
     * @param ring one of them
     * @param stretches for each the places along the ring that are tried, in mm
     */
    void sizeName(String name, List<List<Point>> rings, Path ring, List<List<Double>> stretches) {
        double off = SIZE_CLEAR * types.clear();
        FreeSpace within = stitched.alsoWithin(rings).keepingOff(off);
        FreeSpace offJoints = within.without(joints);
        boolean isSet = false;
        for (List<Double> stretch : stretches) {
            Supplier<Stream<Text>> places = () -> types.along().stream()
                    .flatMap(size -> stretch.stream().flatMap(at -> alongside(ring, at, name, size, off)));
            isSet |= placed(offJoints, places) || placed(within, places);
        }
        if (!isSet) {
            List<Point> own =
                    stretches.stream().flatMap(List::stream).map(ring::at).toList();
            rows.add(new Beside.Row(List.of("size " + name), own.isEmpty() ? List.of(ring.start()) : own));
        }
    }

    /**
     * The name of a point: close to its mark, else near by.
     *
     * @param arm how far in mm the mark reaches
     */
    void atPoint(Point point, double arm, String words) {
        double size = types.along().get(0);
        double smallest = types.smallest();
        double width = Type.width(words, size);
        double small = Type.width(words, smallest);
        double off = arm + types.clear();
        Supplier<Stream<Text>> places = () -> Stream.concat(
                Stream.of(
                                new Vector(off, -off),
                                new Vector(-off - width, -off),
                                new Vector(off, off + 1 + size),
                                new Vector(-off - width, off + 1 + size),
                                new Vector(-width / 2, -off - 3),
                                new Vector(-width / 2, -off - 11))
                        .map(step -> new Text(words, point.plus(step), size, 0)),
                positions(point, new Box(point.x(), point.y(), point.x(), point.y()).grownBy(NEAR))
                        .map(at -> new Text(words, at.minus(new Vector(small / 2, -smallest / 2)), smallest, 0)));
        if (!placed(places)) {
            rows.add(new Beside.Row(List.of(words), List.of(point)));
        }
    }

    /** Places inside the piece. */
    List<Point> inside() {
        return Stream.concat(Stream.of(stitched.interior()), within(stitched).stream())
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
