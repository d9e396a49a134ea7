package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** A sheet as it is thrown on cloth: on a grid of whole centimetres or inches, under words that say how to measure it. */
final class Projection {
    private static final double HEADING = 14;
    private static final double WORDS = 10;
    private static final double BAND = 50;

    private Projection() {}

    static Drawn of(Drawn sheet, String title, PrintOptions options) {
        boolean isInches = options.unit() == Unit.INCH;
        double step = (isInches ? Unit.INCH : Unit.CENTIMETRE).inMillimetres();
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
        double right = Math.ceil(box.right() / step) * step;
        double bottom = Math.ceil(box.bottom() / step) * step;
        List<Box> texts = all.texts().stream().map(Text::bounds).toList();
        List<Stroke> grid = new ArrayList<>();
        for (int i = 0; i * step <= right; i++) {
            double x = i * step;
            Style style = i % wide == 0 ? Style.GRID_WIDE : Style.GRID;
            between(texts, bottom, text -> text.left() < x && x < text.right(), Box::top, Box::bottom)
                    .forEach(part -> grid.add(Stroke.of(style, new Point(x, part[0]), new Point(x, part[1]))));
        }
        for (int i = 0; i * step <= bottom; i++) {
            double y = i * step;
            Style style = i % wide == 0 ? Style.GRID_WIDE : Style.GRID;
            between(texts, right, text -> text.top() < y && y < text.bottom(), Box::left, Box::right)
                    .forEach(part -> grid.add(Stroke.of(style, new Point(part[0], y), new Point(part[1], y))));
        }
        return new Drawn(grid, List.of()).and(all);
    }

    /** The parts of a line of the grid, from where to where, that run through no words: the light would drown those. */
    private static List<double[]> between(
            List<Box> texts,
            double length,
            Predicate<Box> isCrossed,
            ToDoubleFunction<Box> from,
            ToDoubleFunction<Box> to) {
        List<double[]> parts = new ArrayList<>();
        double begun = 0;
        for (Box text : texts.stream()
                .filter(isCrossed)
                .sorted(Comparator.comparingDouble(from))
                .toList()) {
            if (from.applyAsDouble(text) > begun) {
                parts.add(new double[] {begun, from.applyAsDouble(text)});
            }
            begun = Math.max(begun, to.applyAsDouble(text));
        }
        if (begun < length) {
            parts.add(new double[] {begun, length});
        }
        return parts;
    }
}
