package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Point;
import dev.hingepoint.fit.Ease;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.Numbers;
import dev.hingepoint.svg.file.Xml;
import dev.hingepoint.svg.page.SvgPage;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.util.List;

/**
 * A chart of ease, to be looked at: one row a level. The body is the upright line that runs through all rows, the garment the bar that ends as far to its
 * right (or, smaller than the body, to its left) as there is ease, and the ease that is right is shaded.
 */
public final class EaseChart {
    private static final double WIDTH = 200;
    private static final double ROW = 22;
    private static final double TOP = 26;
    private static final double LEFT = 34;
    private static final double RIGHT = 8;

    /** Room in mm of ease beyond the farthest mark. */
    private static final double BEYOND = 20;

    private final List<Ease> rows;
    private final Unit unit;
    private final double from;
    private final double perMillimetre;

    private EaseChart(List<Ease> rows, Unit unit) {
        this.rows = rows;
        this.unit = unit;
        double least = 0;
        double most = 0;
        for (Ease row : rows) {
            least = Math.min(least, Math.min(row.ease(), row.least()));
            most = Math.max(most, Math.max(row.ease(), Double.isInfinite(row.most()) ? row.least() : row.most()));
        }
        this.from = least - BEYOND;
        this.perMillimetre = (WIDTH - LEFT - RIGHT) / (most + BEYOND - from);
    }

    /** The chart as SVG, one row for each level; lengths in the unit. */
    public static String svg(String title, List<Ease> rows, Unit unit) {
        return new EaseChart(List.copyOf(rows), unit).svg(title);
    }

    private double x(double ease) {
        return LEFT + (ease - from) * perMillimetre;
    }

    private String svg(String title) {
        double height = TOP + ROW * rows.size() + 22;
        String w = Numbers.of(WIDTH);
        String h = Numbers.of(height);
        StringBuilder svg = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
                .append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + w + "mm\" height=\"" + h
                        + "mm\" viewBox=\"0 0 " + w + " " + h + "\">\n<title>")
                .append(Xml.escaped(title))
                .append("</title>\n<g font-family=\"'Liberation Sans', Arial, Helvetica, sans-serif\">\n");
        text(svg, title, 4, 8, 5);
        text(svg, "shaded: the ease that is right; bar: the garment; upright line: the body", 4, 15, 3.4);
        for (int i = 0; i < rows.size(); i++) {
            row(svg, rows.get(i), TOP + ROW * i);
        }
        double foot = TOP + ROW * rows.size();
        text(svg, "body", x(0) - Type.width("body", 3.4) / 2, TOP - 4.5, 3.4);
        scale(svg, foot);
        return svg.append("</g>\n</svg>\n").toString();
    }

    private void row(StringBuilder svg, Ease row, double top) {
        double right = Double.isInfinite(row.most()) ? WIDTH - RIGHT : x(row.most());
        rectangle(svg, x(row.least()), top, right - x(row.least()), 12, "#d0d0d0");
        double start = Math.min(0, row.ease());
        rectangle(svg, x(start), top + 4.5, Math.max(0.6, Math.abs(row.ease()) * perMillimetre), 3, "#000");
        line(svg, 0, top - 1.5, 0, top + 13, 0.5);
        text(svg, row.level(), 4, top + 7.5, 4.6);
        String verdict = row.isRight() ? "" : row.isShort() ? "  TOO TIGHT" : "  more than is needed";
        text(
                svg,
                "body " + shown(row.body()) + ", garment " + shown(row.garment()) + ", ease " + shown(row.ease())
                        + verdict,
                LEFT,
                top + 16.5,
                3.4);
    }

    /** A mark at every 50 mm, or 2 inches, of ease. */
    private void scale(StringBuilder svg, double y) {
        double step = unit == Unit.INCH ? 50.8 : 50;
        for (double ease = Math.ceil(from / step) * step; x(ease) <= WIDTH - RIGHT; ease += step) {
            line(svg, ease, y, ease, y + 2, 0.3);
            String words = shown(ease);
            text(svg, words, x(ease) - Type.width(words, 3) / 2, y + 6, 3);
        }
        text(svg, "ease", 4, y + 6, 3.4);
    }

    private String shown(double mm) {
        return new Length(mm).shownIn(unit);
    }

    private static void text(StringBuilder svg, String words, double x, double y, double size) {
        svg.append(SvgPage.text(new Text(words, new Point(x, y), size, 0)));
    }

    private static void rectangle(StringBuilder svg, double x, double y, double width, double height, String fill) {
        svg.append("<rect x=\"" + Numbers.of(x) + "\" y=\"" + Numbers.of(y) + "\" width=\"" + Numbers.of(width)
                + "\" height=\"" + Numbers.of(height) + "\" fill=\"" + fill + "\"/>\n");
    }

    private void line(StringBuilder svg, double ease, double top, double otherEase, double bottom, double width) {
        svg.append("<path d=\"M" + Numbers.of(x(ease)) + " " + Numbers.of(top) + " L" + Numbers.of(x(otherEase)) + " "
                + Numbers.of(bottom) + "\" stroke=\"#000\" stroke-width=\"" + Numbers.of(width) + "\"/>\n");
    }
}
