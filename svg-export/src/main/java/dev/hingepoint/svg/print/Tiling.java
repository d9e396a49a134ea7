package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.svg.page.Clipping;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Text;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * Cuts a sheet into pages. Neighbouring pages share a strip, the overlap, which is printed on both. A page on which there would be nothing that is not on its neighbours is left
 * out, but not where it lies within a piece. Each line is cut only to the pages that its bounds touch.
 */
final class Tiling {
    private final PrintOptions options;
    private final Map<Cell, List<Stroke>> strokes = new HashMap<>();
    private final Map<Cell, List<Text>> texts = new HashMap<>();
    private final NavigableSet<Cell> needed = new TreeSet<>();

    private Tiling(Drawn sheet, List<List<Point>> rings, PrintOptions options) {
        this.options = options;
        rings.forEach(this::within);
        for (Stroke stroke : sheet.strokes()) {
            for (Cell cell : touched(stroke.bounds())) {
                for (Stroke clipped : Clipping.clipped(stroke, area(cell, options))) {
                    strokes.computeIfAbsent(cell, any -> new ArrayList<>()).add(clipped);
                    need(cell, clipped.bounds());
                }
            }
        }
        for (Text text : sheet.texts()) {
            for (Cell cell : touched(text.bounds())) {
                texts.computeIfAbsent(cell, any -> new ArrayList<>()).add(text);
                need(cell, text.bounds());
            }
        }
    }

    /**
     * The pages, row by row.
     *
     * @param title what each page says besides its name
     * @param rings the closed lines that pieces are cut along
     */
    static List<Page> pages(String title, Drawn sheet, List<List<Point>> rings, PrintOptions options) {
        Tiling tiling = new Tiling(sheet, rings, options);
        return tiling.needed.stream().map(cell -> tiling.page(title, cell)).toList();
    }

    /** How many pages a sheet is cut into. */
    static int count(Drawn sheet, List<List<Point>> rings, PrintOptions options) {
        return new Tiling(sheet, rings, options).needed.size();
    }

    /** A page in the middle of a piece is needed even where no line runs over it: paper with a hole in it cannot be cut out. */
    private void within(List<Point> ring) {
        PreparedGeometry ground = PreparedGeometryFactory.prepare(JtsBridge.polygon(ring));
        for (Cell cell : touched(Box.around(ring))) {
            Point middle = area(cell, options).centre();
            Coordinate at = new Coordinate(middle.x(), middle.y());
            if (ground.contains(ground.getGeometry().getFactory().createPoint(at))) {
                needed.add(cell);
            }
        }
    }

    /** The part of the sheet that a page shows. */
    static Box area(Cell cell, PrintOptions options) {
        double left = cell.column() * options.stepAcross();
        double top = cell.row() * options.stepDown();
        return new Box(left, top, left + options.printableWidth(), top + options.printableHeight());
    }

    /** What lies within the strip that a page shares with the one before it, or above it, is on that one already. */
    private void need(Cell cell, Box drawn) {
        Box area = area(cell, options);
        boolean isOnlyHere = (cell.column() == 0 || drawn.right() > area.left() + options.overlap())
                && (cell.row() == 0 || drawn.bottom() > area.top() + options.overlap());
        if (isOnlyHere) {
            needed.add(cell);
        }
    }

    private List<Cell> touched(Box box) {
        List<Cell> touched = new ArrayList<>();
        int firstRow = first(box.top(), options.stepDown(), options.printableHeight());
        int firstColumn = first(box.left(), options.stepAcross(), options.printableWidth());
        for (int row = firstRow; row * options.stepDown() <= box.bottom(); row++) {
            for (int column = firstColumn; column * options.stepAcross() <= box.right(); column++) {
                touched.add(new Cell(row, column));
            }
        }
        return touched;
    }

    private static int first(double from, double step, double size) {
        return Math.max(0, (int) Math.ceil((from - size) / step));
    }

    private Page page(String title, Cell cell) {
        Box area = area(cell, options);
        Drawn drawn = new Drawn(strokes.getOrDefault(cell, List.of()), texts.getOrDefault(cell, List.of()));
        Drawn frame = new PageFrame(title, cell, needed, options).drawn(drawn);
        Motion toPaper = options.toPaper(area.left(), area.top());
        return new Page(
                cell.row() + 1,
                cell.column() + 1,
                used(area, drawn),
                options.margin(),
                options.weight(),
                drawn.moved(toPaper),
                frame.moved(toPaper));
    }

    /** A roll is cut off below what is drawn on it; where strips of it are joined side by side they stay as long as one another. */
    private Paper used(Box area, Drawn drawn) {
        boolean isJoinedAside = needed.stream().anyMatch(cell -> cell.column() > 0);
        boolean isWhole = drawn.equals(Drawn.NOTHING) || isJoinedAside;
        return isWhole ? options.paper() : options.used(area, drawn.bounds());
    }
}
