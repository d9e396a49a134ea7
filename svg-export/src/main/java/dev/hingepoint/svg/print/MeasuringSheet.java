package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Point;
import dev.hingepoint.fit.Measure;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.SvgPage;
import dev.hingepoint.svg.page.Text;
import java.util.ArrayList;
import java.util.List;

/** A form to print, on which a body is written down: each measurement by its name in a body file, where the tape runs, and room to write. */
public final class MeasuringSheet {
    private static final double LEFT = 14;
    private static final double ROOM = 145;
    private static final double RIGHT = 196;
    private static final double ROW = 11.6;

    private MeasuringSheet() {}

    /** One A4 page as SVG. */
    public static String svg() {
        Paper paper = Paper.A4;
        List<Stroke> strokes = new ArrayList<>();
        List<Text> texts = new ArrayList<>();
        text(texts, "Measurements", LEFT, 20, 7);
        text(texts, "Who for, and the date:", LEFT, 29, 4);
        line(strokes, LEFT + 45, 30, RIGHT);
        text(
                texts,
                "Measure over what is worn under the garment. Tie a tape round the waist. Have somebody else hold the tape.",
                LEFT,
                37,
                3.2);
        text(texts, "unit: cm or in", ROOM, 44, 3.6);
        double y = 50;
        for (Measure measure : Measure.values()) {
            text(texts, measure.words(), LEFT, y, 4);
            text(texts, measure.runs(), LEFT, y + 4.4, 2.9);
            line(strokes, ROOM, y + 2, RIGHT);
            y += ROW;
        }
        y += 1;
        for (String[] asked : new String[][] {
            {"stretch across, stretch down", "of the cloth: from 10 cm to 12.5 cm is 25 %"},
            {"folds at back waist", "on a toile: how much can be pinched out"},
            {"folds run", "back only, all round, or below the seat"},
            {"back hem", "level, drops, or rides up"}
        }) {
            text(texts, asked[0], LEFT, y, 4);
            text(texts, asked[1], LEFT + 60, y, 2.9);
            line(strokes, ROOM, y + 1, RIGHT);
            y += 7.5;
        }
        return SvgPage.write(paper.width(), paper.height(), new Drawn(strokes, texts), "measuring sheet");
    }

    private static void text(List<Text> texts, String words, double x, double y, double size) {
        texts.add(new Text(words, new Point(x, y), size, 0));
    }

    private static void line(List<Stroke> strokes, double from, double y, double to) {
        strokes.add(Stroke.of(Style.MARK, new Point(from, y), new Point(to, y)));
    }
}
