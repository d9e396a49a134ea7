package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.svg.file.Numbers;
import dev.hingepoint.svg.file.Xml;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a page as SVG at true scale: width, height and viewBox in mm, and the page size for a browser that prints it. Each {@link Layer} is one group. */
public final class SvgPage {
    private static final int DECIMALS = 4;

    /** A picture on a screen is looked at, not cut from: a hundredth of a mm is well below a dot of it, even enlarged. */
    private static final int INLINE_DECIMALS = 2;

    private SvgPage() {}

    /** The page as a whole SVG document, the same text in any locale. */
    public static String write(Page page) {
        return write(page, page.printable(), "page " + page.name());
    }

    /** One drawing on a sheet of its own. */
    public static String write(double width, double height, Drawn drawn, String title) {
        Paper sheet = new Paper("", width, height, Paper.Kind.SHEET);
        Page page = new Page(1, 1, sheet, 0, 1, drawn, Drawn.NOTHING);
        return write(page, page.printable(), title);
    }

    /**
     * The same drawing as a picture inside another document: no size of its own, each layer a group of the class {@code layer-} and its id, and named for who cannot see it.
     *
     * @param box what of it is shown, in the drawing's mm
     */
    public static String inline(Drawn drawn, Box box, String title) {
        Paper sheet = new Paper("", box.right(), box.bottom(), Paper.Kind.SHEET);
        StringBuilder svg = new StringBuilder(opening(box, title));
        new Page(1, 1, sheet, 0, 1, drawn, Drawn.NOTHING).layers().forEach((layer, on) -> {
            svg.append("<g class=\"layer-" + layer.id() + "\">\n");
            content(svg, on, 1, INLINE_DECIMALS);
            on.texts().forEach(text -> svg.append(text(text)));
            svg.append("</g>\n");
        });
        return svg.append("</svg>\n").toString();
    }

    /** How a picture inside another document begins. Its name is a label, since a title would stand over the picture as soon as someone points at it. */
    public static String opening(Box box, String title) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"" + Xml.escaped(title)
                + "\" viewBox=\"" + Numbers.of(box.left()) + " " + Numbers.of(box.top()) + " "
                + Numbers.of(box.width()) + " " + Numbers.of(box.height()) + "\">\n";
    }

    private static String write(Page page, Box clip, String title) {
        String w = Numbers.of(page.paper().width());
        String h = Numbers.of(page.paper().height());
        StringBuilder svg = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + w + "mm\" height=\"" + h
                + "mm\" viewBox=\"0 0 " + w + " " + h + "\">\n<title>" + Xml.escaped(title)
                + "</title>\n<style>@page{size:" + w + "mm " + h + "mm;margin:0}svg{background:#fff}</style>\n");
        svg.append("<clipPath id=\"printable\"><rect x=\"" + Numbers.of(clip.left()) + "\" y=\""
                + Numbers.of(clip.top()) + "\" width=\"" + Numbers.of(clip.width()) + "\" height=\""
                + Numbers.of(clip.height()) + "\"/></clipPath>\n");
        svg.append("<g font-family=\"'Liberation Sans', Arial, Helvetica, sans-serif\">\n");
        page.layers().forEach((layer, drawn) -> layer(svg, layer, drawn, page.weight()));
        return svg.append("</g>\n</svg>\n").toString();
    }

    private static void layer(StringBuilder svg, Layer layer, Drawn drawn, double weight) {
        svg.append("<g id=\"" + layer.id() + "\">\n");
        content(svg, drawn, weight, DECIMALS);
        if (!drawn.texts().isEmpty()) {
            svg.append("<g clip-path=\"url(#printable)\">\n");
            drawn.texts().forEach(text -> svg.append(text(text)));
            svg.append("</g>\n");
        }
        svg.append("</g>\n");
    }

    private static void content(StringBuilder svg, Drawn drawn, double weight, int decimals) {
        drawn.areas().forEach(area -> area(svg, area, decimals));
        Look.group(drawn.strokes(), weight).forEach((look, strokes) -> {
            svg.append("<path fill=\"none\" stroke=\"#000\" stroke-linejoin=\"round\" ")
                    .append(attributes(look))
                    .append(" d=\"");
            strokes.forEach(stroke -> data(svg, stroke.points(), decimals));
            svg.append("\"/>\n");
        });
    }

    private static void area(StringBuilder svg, Area area, int decimals) {
        int[] colour = area.tint().colour();
        svg.append("<path stroke=\"none\" fill=\"#")
                .append(String.format(Locale.ROOT, "%02x%02x%02x", colour[0], colour[1], colour[2]))
                .append("\" d=\"");
        data(svg, area.ring(), decimals);
        svg.append("Z\"/>\n");
    }

    private static String attributes(Look look) {
        String width = "stroke-width=\"" + Numbers.of(look.width()) + "\"";
        if (look.dashes().isEmpty()) {
            return width;
        }
        String dashes = look.dashes().stream().map(Numbers::of).collect(Collectors.joining(" "));
        String offset = Numbers.of(look.offset());
        return width + " stroke-dasharray=\"" + dashes + "\""
                + (offset.equals("0") ? "" : " stroke-dashoffset=\"" + offset + "\"");
    }

    private static void data(StringBuilder data, List<Point> points, int decimals) {
        for (int i = 0; i < points.size(); i++) {
            data.append(i == 0 ? 'M' : 'L')
                    .append(Numbers.of(points.get(i).x(), decimals))
                    .append(' ')
                    .append(Numbers.of(points.get(i).y(), decimals));
        }
    }

    public static String text(Text text) {
        String x = Numbers.of(text.at().x());
        String y = Numbers.of(text.at().y());
        String turn = Math.abs(text.angle()) < 1e-9
                ? ""
                : " transform=\"rotate(" + Numbers.of(StrictMath.toDegrees(text.angle())) + " " + x + " " + y + ")\"";
        // the spaces that part what stands on one line are as wide as they were measured
        String spaces = text.words().contains("  ") ? " xml:space=\"preserve\"" : "";
        return "<text" + spaces + " x=\"" + x + "\" y=\"" + y + "\" font-size=\"" + Numbers.of(text.size())
                + "\" textLength=\""
                + Numbers.of(text.width()) + "\" lengthAdjust=\"spacingAndGlyphs\"" + turn + ">"
                + Xml.escaped(text.words())
                + "</text>\n";
    }
}
