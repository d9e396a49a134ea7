package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import java.util.List;
import java.util.stream.Stream;

/** What is drawn on a sheet: tinted areas, strokes over them, and texts. */
public record Drawn(List<Area> areas, List<Stroke> strokes, List<Text> texts) {
    public static final Drawn NOTHING = new Drawn(List.of(), List.of());

    public Drawn {
        areas = List.copyOf(areas);
        strokes = List.copyOf(strokes);
        texts = List.copyOf(texts);
    }

    public Drawn(List<Stroke> strokes, List<Text> texts) {
        this(List.of(), strokes, texts);
    }

    public Drawn moved(Motion motion) {
        return new Drawn(
                areas.stream().map(area -> area.moved(motion)).toList(),
                strokes.stream().map(stroke -> stroke.moved(motion)).toList(),
                texts.stream().map(text -> text.moved(motion)).toList());
    }

    /** The smallest upright box that holds all of it. */
    public Box bounds() {
        return Stream.of(
                        areas.stream().map(Area::bounds),
                        strokes.stream().map(Stroke::bounds),
                        texts.stream().map(Text::bounds))
                .flatMap(boxes -> boxes)
                .reduce(Box::union)
                .orElseThrow();
    }

    /** All of them together. */
    public static Drawn of(List<Drawn> parts) {
        return new Drawn(
                parts.stream().flatMap(part -> part.areas.stream()).toList(),
                parts.stream().flatMap(part -> part.strokes.stream()).toList(),
                parts.stream().flatMap(part -> part.texts.stream()).toList());
    }

    public Drawn and(Drawn other) {
        return of(List.of(this, other));
    }
}
