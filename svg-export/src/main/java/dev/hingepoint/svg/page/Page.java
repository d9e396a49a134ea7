package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One page to print: everything on it in mm from the paper's upper left corner, lines cut off at the printable area. This is the one page model that every writer writes from.
 *
 * @param row of the page in the sheet, from 1; 0 for a page that is read and not taped in
 * @param column of the page in the sheet, from 1
 * @param weight how many times as wide as usual its lines are drawn
 * @param drawn what is printed of the pattern, or to read
 * @param frame what the page says of itself: its name, and how it is joined to its neighbours
 */
public record Page(int row, int column, Paper paper, double margin, double weight, Drawn drawn, Drawn frame) {
    /** "2.3": row and column. */
    public String name() {
        return row + "." + column;
    }

    /** The part of the paper that is printed on. */
    public Box printable() {
        return new Box(margin, margin, paper.width() - margin, paper.height() - margin);
    }

    /** All that is on it, layer by layer, the lowest first. */
    public Map<Layer, Drawn> layers() {
        Map<Layer, List<Stroke>> strokes = Stream.of(drawn, frame)
                .flatMap(part -> part.strokes().stream())
                .collect(Collectors.groupingBy(stroke -> stroke.style().layer()));
        List<Area> areas =
                Stream.of(drawn, frame).flatMap(part -> part.areas().stream()).toList();
        Map<Layer, List<Text>> texts = Map.of(Layer.LABELS, drawn.texts(), Layer.PAGE, frame.texts());
        Map<Layer, Drawn> layers = new EnumMap<>(Layer.class);
        for (Layer layer : Layer.values()) {
            Drawn on = new Drawn(
                    layer == Layer.PARTS ? areas : List.of(),
                    strokes.getOrDefault(layer, List.of()),
                    texts.getOrDefault(layer, List.of()));
            if (!on.equals(Drawn.NOTHING)) {
                layers.put(layer, on);
            }
        }
        return layers;
    }
}
