package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Layer;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Reads what a page's SVG draws, by its XML. */
final class SvgInk {
    private SvgInk() {}

    static Ink read(String svg) throws Exception {
        Element root = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                .getDocumentElement();
        List<Ink.Line> lines = new ArrayList<>();
        List<Ink.Word> words = new ArrayList<>();
        for (Layer layer : Layer.values()) {
            for (Element group : elements(root, "g")) {
                if (group.getAttribute("id").equals(layer.words().replaceAll("[^a-z]+", "-"))) {
                    elements(group, "path").forEach(path -> lines(layer, path, lines));
                    elements(group, "text").forEach(text -> words.add(word(layer, text)));
                }
            }
        }
        return new Ink(lines, words);
    }

    private static void lines(Layer layer, Element path, List<Ink.Line> lines) {
        String dashes = path.getAttribute("stroke-dasharray");
        String offset = path.getAttribute("stroke-dashoffset");
        for (String line : path.getAttribute("d").substring(1).split("M")) {
            List<Point> points = Stream.of(line.split("L"))
                    .map(SvgInk::numbers)
                    .map(xy -> new Point(xy.get(0), xy.get(1)))
                    .toList();
            lines.add(new Ink.Line(
                    layer.words(),
                    points,
                    Double.parseDouble(path.getAttribute("stroke-width")),
                    dashes.isEmpty() ? List.of() : numbers(dashes),
                    offset.isEmpty() ? 0 : Double.parseDouble(offset)));
        }
    }

    private static Ink.Word word(Layer layer, Element text) {
        Point at = new Point(Double.parseDouble(text.getAttribute("x")), Double.parseDouble(text.getAttribute("y")));
        String turn = text.getAttribute("transform").replaceAll("rotate\\(([^ ]*) .*", "$1");
        double angle = turn.isEmpty() ? 0 : StrictMath.toRadians(Double.parseDouble(turn));
        Vector width = new Vector(Double.parseDouble(text.getAttribute("textLength")), 0);
        return new Ink.Word(
                layer.words(),
                text.getTextContent(),
                at,
                Motion.turn(at, angle).of(at.plus(width)),
                Double.parseDouble(text.getAttribute("font-size")));
    }

    private static List<Double> numbers(String text) {
        return Stream.of(text.trim().split(" ")).map(Double::valueOf).toList();
    }

    private static List<Element> elements(Element in, String name) {
        NodeList found = in.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }
}
