package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.file.Numbers;
import java.text.Bidi;
import java.util.HexFormat;
import java.util.List;

/**
 * What is drawn on a page, in the operators of a PDF (ISO 32000-1, annex A). All of it is in mm from the paper's upper left corner, as the page is: the first operator says
 * where that lies in a PDF, whose points run up from the lower left. So its numbers are those of {@link SvgPage}, digit by digit.
 */
final class PdfContent {
    /** Points of a PDF to the mm: each is 1/72 in (8.3.2.3). */
    static final double POINTS = 72 / 25.4;

    /** The name by which the words ask for their font. */
    static final String FONT = "F";

    /** Decimals of a factor: at the far end of the longest paper, 5 m, nothing is off by more than a ten-thousandth of a mm. */
    private static final int FACTOR_DECIMALS = 8;

    private static final HexFormat HEX = HexFormat.of();

    private final StringBuilder operators = new StringBuilder();

    private PdfContent(Page page) {
        String scale = Numbers.of(POINTS, FACTOR_DECIMALS);
        String top = Numbers.of(page.paper().height() * POINTS, FACTOR_DECIMALS);
        operators.append(scale + " 0 0 -" + scale + " 0 " + top + " cm\n1 j\n");
        page.layers().forEach((layer, drawn) -> {
            operators.append("/OC /" + layer.name() + " BDC\n");
            drawn.areas().forEach(this::area);
            Look.group(drawn.strokes(), page.weight()).forEach(this::strokes);
            texts(drawn.texts(), page.printable());
            operators.append("EMC\n");
        });
    }

    static String of(Page page) {
        return new PdfContent(page).operators.toString();
    }

    private void area(Area area) {
        for (int part : area.tint().colour()) {
            numbers(part / 255.0);
        }
        operators.append("rg\n");
        path(area.ring());
        operators.append("f 0 g\n");
    }

    private void path(List<Point> points) {
        String operator = "m ";
        for (Point point : points) {
            numbers(point.x(), point.y()).append(operator);
            operator = "l ";
        }
    }

    /** Each stroke is a path of its own, so that its dashes begin anew (8.4.3.6). */
    private void strokes(Look look, List<Stroke> strokes) {
        numbers(look.width()).append("w [");
        look.dashes().forEach(this::numbers);
        operators.append("] ");
        numbers(look.offset()).append("d\n");
        strokes.forEach(stroke -> path(stroke.points()));
        operators.append("S\n");
    }

    private void texts(List<Text> texts, Box clip) {
        if (texts.isEmpty()) {
            return;
        }
        operators.append("q ");
        numbers(clip.left(), clip.top(), clip.width(), clip.height()).append("re W n BT\n");
        texts.stream().filter(text -> !text.words().isEmpty()).forEach(this::text);
        operators.append("ET Q\n");
    }

    private void text(Text text) {
        Vector along = Vector.ofAngle(text.angle());
        Vector up = along.left();
        operators.append("/" + FONT + " ");
        numbers(text.size()).append("Tf ");
        for (double factor : new double[] {along.x(), along.y(), up.x(), up.y()}) {
            operators.append(Numbers.of(factor, FACTOR_DECIMALS)).append(' ');
        }
        numbers(text.at().x(), text.at().y()).append("Tm <");
        inOrderOfSight(text.words())
                .codePoints()
                .forEach(character -> operators.append(HEX.toHexDigits((char) Type.glyph(character))));
        operators.append("> Tj\n");
    }

    /** A PDF sets glyphs from left to right as they come; words of a script that runs from right to left are turned round (Unicode annex 9). */
    private static String inOrderOfSight(String words) {
        char[] characters = words.toCharArray();
        if (!Bidi.requiresBidi(characters, 0, characters.length)) {
            return words;
        }
        Bidi runs = new Bidi(words, Bidi.DIRECTION_LEFT_TO_RIGHT);
        byte[] levels = new byte[runs.getRunCount()];
        String[] parts = new String[runs.getRunCount()];
        for (int i = 0; i < parts.length; i++) {
            levels[i] = (byte) runs.getRunLevel(i);
            String part = words.substring(runs.getRunStart(i), runs.getRunLimit(i));
            parts[i] = levels[i] % 2 == 0
                    ? part
                    : new StringBuilder(part).reverse().toString();
        }
        Bidi.reorderVisually(levels, 0, parts, 0, parts.length);
        return String.join("", parts);
    }

    private StringBuilder numbers(double... numbers) {
        for (double number : numbers) {
            operators.append(Numbers.of(number)).append(' ');
        }
        return operators;
    }
}
