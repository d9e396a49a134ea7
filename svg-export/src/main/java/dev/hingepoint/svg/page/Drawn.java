package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import java.util.List;
import java.util.stream.Stream;

/** What is drawn on a sheet: strokes and texts. */
public record Drawn(List<Stroke> strokes, List<Text> texts) {
    static final Drawn NOTHING = new Drawn(List.of(), List.of());

    public Drawn {
        strokes = List.copyOf(strokes);
        texts = List.copyOf(texts);
    }

    Drawn moved(Motion motion) {
        return new Drawn(
                strokes.stream().map(stroke -> stroke.moved(motion)).toList(),
                texts.stream().map(text -> text.moved(motion)).toList());
    }

    /** The smallest upright box that holds all of it. */
    Box bounds() {
        return Stream.concat(
                        strokes.stream().map(Stroke::bounds), texts.stream().map(Text::bounds))
                .reduce(Box::union)
                .orElseThrow();
    }

    Drawn and(Drawn other) {
        return new Drawn(
                Stream.concat(strokes.stream(), other.strokes.stream()).toList(),
                Stream.concat(texts.stream(), other.texts.stream()).toList());
    }
}
