package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Cuts a sheet into pages. Neighbouring pages share a strip, the overlap, with crosses that are on both: cross on cross, the pages fit. Each line is cut only to the pages
 * that its bounds touch.
 */
final class Tiling {
    static final double ARM = 3;
    private static final int NAME_PLACES = 12;

    /** How far in mm the names of neighbours keep from what is drawn, and how far the page's own, which is none of the pattern's words. */
    private static final double CLEAR = 1;

    private static final double CLEAR_OF_NAME = 8;

    private final String title;
    private final PrintOptions options;
    private final Map<List<Integer>, Drawn> cells = new TreeMap<>((a, b) ->
            a.get(0).equals(b.get(0)) ? a.get(1).compareTo(b.get(1)) : a.get(0).compareTo(b.get(0)));

    private Tiling(String title, PrintOptions options) {
        this.title = title;
        this.options = options;
    }

    /** @param title what each page says besides its name */
    static List<Page> pages(String title, Drawn sheet, PrintOptions options) {
        Tiling tiling = new Tiling(title, options);
        tiling.cut(sheet);
        return tiling.cells.keySet().stream().map(tiling::page).toList();
    }

    /** How many pages a sheet is cut into. */
    static int count(Drawn sheet, PrintOptions options) {
        Tiling tiling = new Tiling("", options);
        tiling.cut(sheet);
        return tiling.cells.size();
    }

    private void cut(Drawn sheet) {
        Map<List<Integer>, List<Stroke>> strokes = new LinkedHashMap<>();
        Map<List<Integer>, List<Text>> texts = new LinkedHashMap<>();
        Set<List<Integer>> needed = new HashSet<>();
        for (Stroke stroke : sheet.strokes()) {
            for (List<Integer> cell : touched(stroke.bounds())) {
                for (Stroke clipped : Clipping.clipped(stroke, area(cell))) {
                    strokes.computeIfAbsent(cell, any -> new ArrayList<>()).add(clipped);
                    if (isOnlyOn(cell, clipped.bounds())) {
                        needed.add(cell);
                    }
                }
            }
        }
        for (Text text : sheet.texts()) {
            for (List<Integer> cell : touched(text.bounds())) {
                texts.computeIfAbsent(cell, any -> new ArrayList<>()).add(text);
                if (isOnlyOn(cell, text.bounds())) {
                    needed.add(cell);
                }
            }
        }
        needed.forEach(cell ->
                cells.put(cell, new Drawn(strokes.getOrDefault(cell, List.of()), texts.getOrDefault(cell, List.of()))));
    }

    /** What lies within the strip that a page shares with the one before it, or above it, is on that one already. */
    private boolean isOnlyOn(List<Integer> cell, Box drawn) {
        Box area = area(cell);
        return (cell.get(1) == 0 || drawn.right() > area.left() + options.overlap())
                && (cell.get(0) == 0 || drawn.bottom() > area.top() + options.overlap());
    }

    private List<List<Integer>> touched(Box box) {
        List<List<Integer>> touched = new ArrayList<>();
        int firstRow = first(box.top(), options.stepDown(), options.printableHeight());
        int firstColumn = first(box.left(), options.stepAcross(), options.printableWidth());
        for (int row = firstRow; row * options.stepDown() <= box.bottom(); row++) {
            for (int column = firstColumn; column * options.stepAcross() <= box.right(); column++) {
                touched.add(List.of(row, column));
            }
        }
        return touched;
    }

    private static int first(double from, double step, double size) {
        return Math.max(0, (int) Math.ceil((from - size) / step));
    }

    /** The part of the sheet that a page shows. */
    private Box area(List<Integer> cell) {
        double left = cell.get(1) * options.stepAcross();
        double top = cell.get(0) * options.stepDown();
        return new Box(left, top, left + options.printableWidth(), top + options.printableHeight());
    }

    private Page page(List<Integer> cell) {
        Box area = area(cell);
        Motion toPage = Motion.shift(new Vector(options.margin() - area.left(), options.margin() - area.top()));
        List<List<Text>> joints = new ArrayList<>();
        List<Stroke> marks = marks(cell, area, joints);
        Drawn marked = cells.get(cell).and(new Drawn(marks, List.of()));
        FreeSpace free = free(area, marked);
        List<Text> names = new ArrayList<>();
        joints.forEach(places -> names.add(free.place(places.stream()).orElse(places.get(0))));
        names.addAll(name(cell, area, free.keepingOff(CLEAR_OF_NAME)));
        Drawn frame = new Drawn(marks, names);
        return new Page(
                cell.get(0) + 1,
                cell.get(1) + 1,
                options.paper(),
                options.margin(),
                1,
                cells.get(cell).moved(toPage),
                frame.moved(toPage));
    }

    /** What room a page has left between what is drawn on it. */
    private static FreeSpace free(Box area, Drawn drawn) {
        FreeSpace free = FreeSpace.within(
                List.of(
                        new Point(area.left(), area.top()),
                        new Point(area.right(), area.top()),
                        new Point(area.right(), area.bottom()),
                        new Point(area.left(), area.bottom()),
                        new Point(area.left(), area.top())),
                CLEAR);
        drawn.strokes().forEach(free::take);
        drawn.texts().forEach(free::take);
        return free;
    }

    /** The page's name and the sheet's, in free space as near to the lower left corner as there is room. */
    private List<Text> name(List<Integer> cell, Box area, FreeSpace free) {
        String name = (cell.get(0) + 1) + "." + (cell.get(1) + 1);
        List<Point> places = new ArrayList<>();
        for (double up = 6; up < area.height() - 11; up += 5) {
            for (double across = 6; across < area.width() - 20; across += 5) {
                places.add(new Point(area.left() + across, area.bottom() - up));
            }
        }
        Point origin = new Point(0, 0);
        List<Text> both = List.of(
                new Text(name, origin, 5, 0),
                new Text(title, origin.plus(new Vector(Type.width(name, 5) + 3, 0)), 2.5, 0));
        return free.place(both, places.stream()).orElseGet(() -> List.of(new Text(name, places.get(0), 5, 0)));
    }

    /**
     * The frame, and two crosses in each overlap with a page that is there.
     *
     * @param names takes, for each such page, the places where its name may stand, the best first
     */
    private List<Stroke> marks(List<Integer> cell, Box area, List<List<Text>> names) {
        List<Stroke> strokes = new ArrayList<>();
        strokes.add(Stroke.of(
                Style.TRIM,
                new Point(area.left(), area.top()),
                new Point(area.right(), area.top()),
                new Point(area.right(), area.bottom()),
                new Point(area.left(), area.bottom()),
                new Point(area.left(), area.top())));
        int row = cell.get(0);
        int column = cell.get(1);
        double half = options.overlap() / 2;
        double quarterDown = area.height() / 4;
        double quarterAcross = area.width() / 4;
        joins(
                strokes,
                names,
                List.of(row, column + 1),
                area.right() - half,
                area.top() + quarterDown,
                0,
                2 * quarterDown);
        joins(
                strokes,
                names,
                List.of(row, column - 1),
                area.left() + half,
                area.top() + quarterDown,
                0,
                2 * quarterDown);
        joins(
                strokes,
                names,
                List.of(row + 1, column),
                area.left() + quarterAcross,
                area.bottom() - half,
                2 * quarterAcross,
                0);
        joins(
                strokes,
                names,
                List.of(row - 1, column),
                area.left() + quarterAcross,
                area.top() + half,
                2 * quarterAcross,
                0);
        return strokes;
    }

    private void joins(
            List<Stroke> strokes,
            List<List<Text>> names,
            List<Integer> neighbour,
            double x,
            double y,
            double across,
            double down) {
        if (!cells.containsKey(neighbour)) {
            return;
        }
        for (Point at : List.of(new Point(x, y), new Point(x + across, y + down))) {
            strokes.add(Stroke.of(Style.JOIN, new Point(at.x() - ARM, at.y()), new Point(at.x() + ARM, at.y())));
            strokes.add(Stroke.of(Style.JOIN, new Point(at.x(), at.y() - ARM), new Point(at.x(), at.y() + ARM)));
        }
        String name = (neighbour.get(0) + 1) + "." + (neighbour.get(1) + 1);
        double angle = across == 0 ? -StrictMath.PI / 2 : 0;
        Vector half = Vector.ofAngle(angle).times(Type.width(name, 3) / 2);
        // from the middle of the joint outwards
        names.add(IntStream.rangeClosed(0, 2 * NAME_PLACES)
                .mapToDouble(i -> 0.5 + (i % 2 == 0 ? 1 : -1) * (i + 1) / 2 * 0.7 / NAME_PLACES)
                .mapToObj(part -> new Point(x + across * part, y + down * part))
                .map(at ->
                        new Text(name, at.minus(half).plus(Vector.ofAngle(angle).right()), 3, angle))
                .toList());
    }
}
