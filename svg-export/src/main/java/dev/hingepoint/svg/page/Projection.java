package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Unit;
import java.util.ArrayList;
import java.util.List;

/** A sheet as it is thrown on cloth: on a grid of whole centimetres or inches, under words that say how to measure it. */
final class Projection {
    private static final double HEADING = 14;
    private static final double WORDS = 10;
    private static final double BAND = 50;

    private Projection() {}

    static Drawn of(Drawn sheet, String title, PrintOptions options) {
        boolean isInches = options.unit() == Unit.INCH;
        double step = isInches ? 25.4 : 10;
        // squares that are drawn wider stand as far apart as a person measures: 100 mm, or 4 in
        int wide = isInches ? 4 : 10;
        double top = Math.ceil(BAND / step) * step;
        Drawn below = sheet.moved(Motion.shift(new Vector(0, top)));
        List<Text> words = List.of(
                new Text(title, new Point(step, 18), HEADING, 0),
                new Text(
                        isInches
                                ? "Each square is 1 in; four of them, from wide line to wide line, are 4 in. Measure on the cloth, across and down, before you cut."
                                : "Each square is 1 cm; ten of them, from wide line to wide line, are 100 mm. Measure on the cloth, across and down, before you cut.",
                        new Point(step, 36),
                        WORDS,
                        0));
        Drawn all = below.and(new Drawn(List.of(), words));
        Box box = all.bounds();
        int columns = (int) Math.ceil(box.right() / step);
        int rows = (int) Math.ceil(box.bottom() / step);
        List<Stroke> grid = new ArrayList<>();
        for (int i = 0; i <= columns; i++) {
            Style style = i % wide == 0 ? Style.GRID_TENTH : Style.GRID;
            grid.add(Stroke.of(style, new Point(i * step, 0), new Point(i * step, rows * step)));
        }
        for (int i = 0; i <= rows; i++) {
            Style style = i % wide == 0 ? Style.GRID_TENTH : Style.GRID;
            grid.add(Stroke.of(style, new Point(0, i * step), new Point(columns * step, i * step)));
        }
        return new Drawn(grid, List.of()).and(all);
    }
}
