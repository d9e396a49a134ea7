package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Layer;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.SvgPage;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Pictures to look at closely: with layers to show or hide, which are the key to their lines as well, and a zoom.
 *
 * @param kind what the page's script knows it by
 * @param controls what steers it
 * @param layers what its pictures have
 */
record Viewer(String kind, String heading, String controls, Set<Layer> layers, String pictures) {
    /** The layers that can be hidden, in the order they are offered, each with the line that stands for it in the key. */
    private static final Map<Layer, Style> HIDEABLE = Collections.unmodifiableMap(new EnumMap<>(Map.of(
            Layer.GRID,
            Style.GRID_WIDE,
            Layer.ORIGINAL,
            Style.BEFORE,
            Layer.STITCHING,
            Style.STITCHING,
            Layer.MARKS,
            Style.LEVEL,
            Layer.CUTTING,
            Style.CUTTING,
            Layer.STEP,
            Style.SLASH,
            Layer.LABELS,
            Style.LEADER)));

    private static final String ZOOM = """
            <div class="zoom" role="group" aria-label="Size of the picture">
            <button type="button" data-zoom="smaller">Smaller</button>
            <span class="percent">100 %</span>
            <button type="button" data-zoom="larger">Larger</button>
            <button type="button" data-zoom="whole">Whole</button>
            </div>
            """;

    /** The grid is hidden at first: it is for counting, and crowds a first look. */
    String html(Lengths lengths) {
        return "<div class=\"viewer " + kind + " without-grid\">\n<h3>" + heading + "</h3>\n<div class=\"controls\">\n"
                + controls + ZOOM + "</div>\n" + pictures + boxes(lengths) + "</div>\n";
    }

    private String boxes(Lengths lengths) {
        return listed(
                layers,
                layer -> "<label><input type=\"checkbox\" autocomplete=\"off\" data-layer=\"" + layer.id() + "\""
                        + (layer == Layer.GRID ? "" : " checked=\"checked\"") + "/> " + told(layer, lengths)
                        + "</label>\n",
                "<fieldset class=\"layers\">\n<legend>Lines shown</legend>\n",
                "</fieldset>\n");
    }

    /** What the lines mean, for paper, where nothing can be hidden. */
    static String key(Set<Layer> layers, Lengths lengths) {
        return listed(
                layers,
                layer -> "<li>" + told(layer, lengths) + "</li>\n",
                "<div class=\"key\">\n<h3>Lines</h3>\n<ul>\n",
                "</ul>\n</div>\n");
    }

    private static String listed(Set<Layer> layers, Function<Layer, String> one, String before, String after) {
        return HIDEABLE.keySet().stream()
                .filter(layers::contains)
                .map(one)
                .collect(Collectors.joining("", before, after));
    }

    private static String told(Layer layer, Lengths lengths) {
        String words = switch (layer) {
            case GRID -> lengths.gridWords();
            case STEP -> "cuts, hinges and moves";
            default -> layer.words();
        };
        return "<span class=\"swatch\" aria-hidden=\"true\">" + swatch(HIDEABLE.get(layer)) + "</span> "
                + Words.capitalised(words);
    }

    private static String swatch(Style style) {
        Stroke line = Stroke.of(style, new Point(0, 1), new Point(14, 1));
        return SvgPage.inline(
                new Drawn(List.of(line), List.of()),
                new Box(0, 0, 14, 2),
                style.layer().words());
    }
}
