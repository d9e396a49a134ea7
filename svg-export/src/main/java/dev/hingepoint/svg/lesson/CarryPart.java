package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.svg.file.LedgerJson;
import dev.hingepoint.svg.file.Numbers;
import dev.hingepoint.svg.file.Xml;
import dev.hingepoint.svg.page.Layer;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.SvgPage;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The amount that a slider carries from nothing to full, frame by frame, over the lines as they were. In the page itself stands the full amount: what is printed, and seen without script. */
record CarryPart(Lesson lesson, String id, Lengths lengths) {
    /** The cutting line, and what is drawn on the paper but its darts and levels, would only crowd a small picture. */
    private static final Set<Style> SHOWN_SMALL = EnumSet.of(Style.STITCHING, Style.ON_FOLD, Style.DART, Style.LEVEL);

    /** So much of the width of all pieces a small picture shows at least, and of their height. */
    private static final double WIDE = 0.6;

    private static final double HIGH = 0.5;

    /** And all of it where more than so much moves: nothing is cut off for little. */
    private static final double MOST = 2.0 / 3;

    /** Dots of the screen (CSS px, 96 an inch) that a mm of a line's width takes, as on paper. */
    private static final double DOTS = 96 / 25.4;

    private static final String CONTROLS = """
            <label for="%1$s-amount">Amount</label>
            <input type="range" id="%1$s-amount" autocomplete="off" min="0" max="%2$s" step="1" value="%2$s" aria-valuetext="%3$s"/>
            <button type="button" class="play">Play</button>
            <button type="button" class="near" data-moves="%4$s">Where it moves</button>
            """;

    String html() {
        List<Carry.Frame> frames = lesson.carry().frames();
        Carry.Frame full = frames.get(frames.size() - 1);
        String told = Xml.escaped(full.told());
        Set<Layer> layers = EnumSet.of(Layer.GRID, Layer.ORIGINAL);
        full.lines().forEach(line -> layers.add(line.layer()));
        String picture =
                "<figure>\n<figcaption class=\"told\">" + told + "</figcaption>\n<div class=\"picture\" role=\"group\""
                        + " aria-label=\"Picture of the amount carried\">\n" + picture(frames.get(0), full)
                        + "</div>\n</figure>\n<script type=\"application/json\">"
                        + json(frames) + "</script>\n";
        String controls = CONTROLS.formatted(id, frames.size() - 1, told, moves());
        return new Viewer("carry", "Carry the amount", controls, layers, picture).html(lengths);
    }

    /** What moves, from nothing to the full amount in one small picture: the lines as they were, and as they are. */
    String small() {
        List<Carry.Frame> frames = lesson.carry().frames();
        StringBuilder svg = new StringBuilder(
                SvgPage.opening(widened(), lesson.title() + ": the lines as they were, dotted, and as they are"));
        svg.append("<g class=\"layer-" + Layer.ORIGINAL.id() + "\">\n");
        drawn(frames.get(0)).forEach(line -> svg.append(path("", Style.BEFORE, line.data())));
        svg.append("</g>\n<g class=\"layer-" + Layer.STITCHING.id() + "\">\n");
        drawn(frames.get(frames.size() - 1)).forEach(line -> svg.append(path("", Style.NOW, line.data())));
        return svg.append("</g>\n</svg>\n").toString();
    }

    /** What moves, with so much of the pieces round it that one sees which they are. */
    private Box widened() {
        Box all = lesson.carry().box();
        Box moves = lesson.carry().moves();
        double width = grown(moves.width(), all.width(), WIDE);
        double height = grown(moves.height(), all.height(), HIGH);
        double left = within(moves.centre().x() - width / 2, all.left(), all.right() - width);
        double top = within(moves.centre().y() - height / 2, all.top(), all.bottom() - height);
        return new Box(left, top, left + width, top + height);
    }

    private static double grown(double moves, double all, double least) {
        return moves > MOST * all ? all : Math.max(moves, least * all);
    }

    private static double within(double place, double least, double most) {
        return Math.max(least, Math.min(most, place));
    }

    private static Stream<Carry.Line> drawn(Carry.Frame frame) {
        return frame.lines().stream()
                .filter(line ->
                        SHOWN_SMALL.contains(line.style()) && !line.data().isEmpty());
    }

    /** Left, top, width and height. */
    private String moves() {
        Box moves = lesson.carry().moves();
        return Stream.of(moves.left(), moves.top(), moves.width(), moves.height())
                .map(Numbers::of)
                .collect(Collectors.joining(" "));
    }

    private String picture(Carry.Frame nothing, Carry.Frame full) {
        StringBuilder svg = new StringBuilder(
                SvgPage.opening(lesson.carry().box(), "The lines as the amount grows, over the lines as they were"));
        svg.append("<g class=\"layer-" + Layer.GRID.id() + "\">\n");
        for (Style style : List.of(Style.GRID, Style.GRID_WIDE)) {
            svg.append(path("", style, gridData(style)));
        }
        svg.append("</g>\n<g class=\"layer-" + Layer.ORIGINAL.id() + "\">\n");
        nothing.lines().forEach(line -> svg.append(path("", Style.BEFORE, line.data())));
        svg.append("</g>\n");
        full.lines()
                .forEach(line -> svg.append("<g class=\"layer-" + line.layer().id() + "\">"
                        + path(" class=\"carried\"", line.style(), line.data()) + "</g>\n"));
        return svg.append("</svg>\n").toString();
    }

    private String gridData(Style style) {
        StringBuilder data = new StringBuilder();
        for (Stroke line : lengths.grid(lesson.carry().box(), Carry.UNITS).strokes()) {
            if (line.style() == style) {
                Point from = line.points().get(0);
                Point to = line.points().get(1);
                data.append("M" + Numbers.of(from.x()) + " " + Numbers.of(from.y()) + "L" + Numbers.of(to.x()) + " "
                        + Numbers.of(to.y()));
            }
        }
        return data.toString();
    }

    /** A line as wide as on paper, however large the pattern is shown: the style sheet keeps its width as the picture grows. */
    private static String path(String attributes, Style style, String data) {
        String dashes = style.dashes().stream()
                .map(length -> Numbers.of(length * DOTS, 2))
                .collect(Collectors.joining(" "));
        return "<path" + attributes + " fill=\"none\" stroke=\"#000\" stroke-linejoin=\"round\" stroke-width=\""
                + Numbers.of(style.width() * DOTS, 2) + "\""
                + (dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"") + " d=\"" + Xml.escaped(data)
                + "\"/>\n";
    }

    /** What is told of each frame, each path once, and which paths a frame shows. */
    private static String json(List<Carry.Frame> frames) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        List<String> shown = new ArrayList<>();
        for (Carry.Frame frame : frames) {
            shown.add(frame.lines().stream()
                    .map(line -> {
                        numbers.putIfAbsent(line.data(), numbers.size());
                        return numbers.get(line.data()).toString();
                    })
                    .collect(Collectors.joining(",", "[", "]")));
        }
        String told =
                frames.stream().map(frame -> LedgerJson.text(frame.told())).collect(Collectors.joining(","));
        String paths = numbers.keySet().stream().map(LedgerJson::text).collect(Collectors.joining(",\n"));
        return inScript(
                "{\"told\":[" + told + "],\n\"paths\":[" + paths + "],\n\"frames\":[" + String.join(",", shown) + "]}");
    }

    /** Text outside ASCII, and what could end a script or begin markup, as escapes of JSON: it can only stand inside strings. */
    private static String inScript(String json) {
        StringBuilder escaped = new StringBuilder(json.length());
        json.chars().forEach(c -> {
            if (c == '<' || c == '>' || c == '&' || c > '~') {
                escaped.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                escaped.append((char) c);
            }
        });
        return escaped.toString();
    }
}
