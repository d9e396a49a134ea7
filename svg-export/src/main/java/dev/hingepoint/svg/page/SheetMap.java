package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.List;

/** The map: the whole sheet small, with the pages and their names, to tape them together by. */
final class SheetMap {
    private static final double MARGIN = 10;
    private static final double HEADING = 12;

    private SheetMap() {}

    static String write(Printed printed) {
        PrintOptions options = printed.options();
        int rows = printed.pages().stream().mapToInt(Page::row).max().orElseThrow();
        int columns = printed.pages().stream().mapToInt(Page::column).max().orElseThrow();
        double sheetWidth = columns * options.stepAcross() + options.overlap();
        double sheetHeight = rows * options.stepDown() + options.overlap();
        double width = options.paper().width();
        double height = options.paper().height();
        double scale = Math.min((width - 2 * MARGIN) / sheetWidth, (height - 2 * MARGIN - HEADING) / sheetHeight);
        Motion small = new Motion(scale, 0, 0, scale, MARGIN, MARGIN + HEADING);

        List<Stroke> strokes = new ArrayList<>();
        List<Text> texts = new ArrayList<>();
        texts.add(new Text(
                printed.pages().size() + " pages of " + options.paper().name()
                        + ": how they go together (row.column). Not to scale.",
                new Point(MARGIN, MARGIN + 4),
                4,
                0));
        for (Page page : printed.pages()) {
            Point corner = new Point((page.column() - 1) * options.stepAcross(), (page.row() - 1) * options.stepDown());
            Vector across = new Vector(options.printableWidth(), 0);
            Vector down = new Vector(0, options.printableHeight());
            strokes.add(Stroke.of(
                            Style.SQUARE,
                            corner,
                            corner.plus(across),
                            corner.plus(across).plus(down),
                            corner.plus(down),
                            corner)
                    .moved(small));
            double size = Math.min(8, 40 * scale);
            Point at = small.of(corner.plus(down))
                    .plus(new Vector(options.overlap() * scale + 1, -options.overlap() * scale - 1));
            texts.add(new Text(page.name(), at, size, 0));
        }
        printed.sheet().strokes().stream()
                .filter(stroke -> stroke.style() == Style.CUTTING)
                .forEach(stroke -> strokes.add(stroke.moved(small)));
        for (Printed.Placed piece : printed.pieces()) {
            double size = Math.min(7, 60 * scale);
            Point middle = small.of(piece.box().centre());
            texts.add(new Text(
                    piece.piece(), middle.minus(new Vector(Type.width(piece.piece(), size) / 2, 0)), size, 0));
        }
        return SvgPage.write(
                width, height, new Box(0, 0, width, height), new Drawn(strokes, texts), "map of the pages");
    }
}
