package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.svg.file.Numbers;
import dev.hingepoint.svg.file.Xml;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

/** Writes a page as SVG at true scale: width, height and viewBox in mm, and the page size for a browser that prints it. */
public final class SvgPage {
    private SvgPage() {}

    public static String write(Page page) {
        double margin = page.margin();
        Box printable = new Box(
                margin, margin, page.paper().width() - margin, page.paper().height() - margin);
        return write(page.paper().width(), page.paper().height(), printable, page.drawn(), "page " + page.name());
    }

    /** One drawing on a sheet of its own, everything within {@code clip}. */
    static String write(double width, double height, Box clip, Drawn drawn, String title) {
        String w = Numbers.of(width);
        String h = Numbers.of(height);
        StringBuilder svg = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + w + "mm\" height=\"" + h
                + "mm\" viewBox=\"0 0 " + w + " " + h + "\">\n<title>" + Xml.escaped(title)
                + "</title>\n<style>@page{size:" + w + "mm " + h + "mm;margin:0}</style>\n");
        svg.append("<clipPath id=\"printable\"><rect x=\"" + Numbers.of(clip.left()) + "\" y=\""
                + Numbers.of(clip.top()) + "\" width=\"" + Numbers.of(clip.width()) + "\" height=\""
                + Numbers.of(clip.height()) + "\"/></clipPath>\n");
        drawn.strokes().stream()
                .sorted(Comparator.comparing(Stroke::style))
                .collect(Collectors.groupingBy(SvgPage::look, LinkedHashMap::new, Collectors.toList()))
                .forEach((look, strokes) -> {
                    svg.append("<path fill=\"none\" stroke=\"#000\" stroke-linejoin=\"round\" ")
                            .append(look)
                            .append(" d=\"");
                    strokes.forEach(stroke -> data(svg, stroke.points()));
                    svg.append("\"/>\n");
                });
        svg.append(
                "<g clip-path=\"url(#printable)\" font-family=\"'Liberation Sans', Arial, Helvetica, sans-serif\">\n");
        drawn.texts().forEach(text -> svg.append(text(text)));
        return svg.append("</g>\n</svg>\n").toString();
    }

    /** The attributes that strokes share which are drawn as one path. */
    private static String look(Stroke stroke) {
        Style style = stroke.style();
        String look = "stroke-width=\"" + Numbers.of(style.width()) + "\"";
        if (style.dashes().isEmpty()) {
            return look;
        }
        String offset = Numbers.of(stroke.before() % style.dashLength());
        return look + " stroke-dasharray=\"" + style.dashes() + "\""
                + (offset.equals("0") ? "" : " stroke-dashoffset=\"" + offset + "\"");
    }

    private static void data(StringBuilder data, List<Point> points) {
        for (int i = 0; i < points.size(); i++) {
            data.append(i == 0 ? 'M' : 'L')
                    .append(Numbers.of(points.get(i).x()))
                    .append(' ')
                    .append(Numbers.of(points.get(i).y()));
        }
    }

    static String text(Text text) {
        String x = Numbers.of(text.at().x());
        String y = Numbers.of(text.at().y());
        String turn = Math.abs(text.angle()) < 1e-9
                ? ""
                : " transform=\"rotate(" + Numbers.of(StrictMath.toDegrees(text.angle())) + " " + x + " " + y + ")\"";
        return "<text x=\"" + x + "\" y=\"" + y + "\" font-size=\"" + Numbers.of(text.size()) + "\" textLength=\""
                + Numbers.of(text.width()) + "\" lengthAdjust=\"spacingAndGlyphs\"" + turn + ">"
                + Xml.escaped(text.words())
                + "</text>\n";
    }
}
