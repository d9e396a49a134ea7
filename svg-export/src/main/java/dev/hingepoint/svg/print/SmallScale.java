package dev.hingepoint.svg.print;

import dev.hingepoint.Reason;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.util.ArrayList;
import java.util.List;

/** The band below each page of a small print: that it is not for cutting, how small it is, and a square to hold it against. */
final class SmallScale {
    /** Height in mm of the band. */
    static final double BAND = 30;

    /** Side in mm of the square, as it is printed. */
    private static final double SQUARE = 25;

    private static final double GAP = 2.5;
    private static final double TYPE = 4;

    private SmallScale() {}

    /** "1:2, not for cutting". */
    static String warning(Scale scale) {
        return scale.words() + ", not for cutting";
    }

    /** The band below the part of the sheet that a page shows. */
    static Drawn band(Box area, String name, String title, PrintOptions options) {
        double top = area.bottom() + GAP;
        Box square = new Box(area.left() + 1, top, area.left() + 1 + SQUARE, top + SQUARE);
        double left = square.right() + 5;
        List<Text> texts = new ArrayList<>();
        texts.add(new Text(name, new Point(left, top + 5), 5, 0));
        texts.add(new Text(title, new Point(left + Type.width(name, 5) + 3, top + 5), 2.8, 0));
        texts.add(new Text(warning(options.scale()), new Point(left, top + 12), TYPE, 0));
        texts.add(new Text(
                "Each side of the square is " + Reason.millimetres(SQUARE) + " here, and "
                        + Reason.millimetres(SQUARE / options.scale().factor()) + " of the pieces.",
                new Point(left, top + 18),
                2.8,
                0));
        if (!options.calibration().isTrue()) {
            texts.add(new Text(PageFrame.madeFor(options.calibration()), new Point(left, top + 23), 2.8, 0));
        }
        return new Drawn(List.of(new Stroke(Style.SQUARE, square.corners())), texts);
    }
}
