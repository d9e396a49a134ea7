package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Draft;
import java.util.ArrayList;
import java.util.List;

/** What the first page says: the two squares to measure, and the usual cautions. */
final class FirstPage {
    private static final double INCHES_4 = 101.6;

    private FirstPage() {}

    /** Drawn from (0, 0), as large as one page's printable area. */
    static Drawn drawn(Draft draft, PrintOptions options) {
        List<Stroke> strokes = new ArrayList<>();
        List<Text> texts = new ArrayList<>();
        // a page of its own: nothing else is laid within this box
        double right = options.stepAcross();
        double bottom = options.stepDown();
        texts.add(new Text(draft.pattern().card().name() + ", size " + draft.size(), new Point(5, 10), 6, 0));
        double y = 19;
        for (String line : List.of(
                "Print this page alone first and measure it.",
                "Print at 100 %, not \u201cfit to page\u201d. Each side of the small square",
                "must be 100 mm, of the large one 4 inches. If not, do not cut.")) {
            texts.add(new Text(line, new Point(5, y), 4.2, 0));
            y += 6;
        }
        square(strokes, texts, new Point(5, y + 2), 100, "100 mm");
        y += 102 + 5;
        square(strokes, texts, new Point(5, y), INCHES_4, "4 in");
        List<String> cautions = List.of(
                "To join the pages, cut along",
                "the dotted frame on one side",
                "of each joint, and lay cross",
                "on cross; then glue. map.svg",
                "shows which page goes where.",
                "",
                "Solid: cut. Dashed: stitch.",
                "",
                "Wash and dry the cloth",
                "before cutting.",
                "",
                "Sew a toile before you",
                "cut good cloth.");
        double line = y + 8;
        for (String caution : cautions) {
            if (!caution.isEmpty()) {
                texts.add(new Text(caution, new Point(111, line), 4.2, 0));
            }
            line += 6;
        }
        strokes.add(Stroke.of(Style.RULE, new Point(0, 0), new Point(right - 1, 0)));
        strokes.add(Stroke.of(Style.RULE, new Point(0, 0), new Point(0, bottom - 1)));
        return new Drawn(strokes, texts);
    }

    private static void square(List<Stroke> strokes, List<Text> texts, Point corner, double side, String name) {
        Point right = new Point(corner.x() + side, corner.y());
        Point low = new Point(corner.x() + side, corner.y() + side);
        Point lowLeft = new Point(corner.x(), corner.y() + side);
        strokes.add(Stroke.of(Style.SQUARE, corner, right, low, lowLeft, corner));
        texts.add(new Text(name, new Point(corner.x() + 5, corner.y() + 10), 5, 0));
    }
}
