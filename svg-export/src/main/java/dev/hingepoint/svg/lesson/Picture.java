package dev.hingepoint.svg.lesson;

import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.page.Area;
import dev.hingepoint.svg.page.Clipping;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Puts a scene together: lines cut off at the picture's edge, then words where they leave room. */
final class Picture {
    private Picture() {}

    /** @param lettered sets the words */
    static Scene scene(
            Scene.Kind kind,
            String caption,
            String piece,
            List<Area> areas,
            List<Stroke> strokes,
            Consumer<Labels> lettered,
            View view,
            Unit unit) {
        List<Stroke> shown = new ArrayList<>(strokes.stream()
                .flatMap(stroke -> Clipping.clipped(stroke, view.box()).stream())
                .toList());
        Labels labels = new Labels(view.box(), shown, unit);
        lettered.accept(labels);
        shown.addAll(labels.leaders());
        Drawn drawn = new Drawn(areas, shown, labels.texts());
        return new Scene(kind, Length.retold(caption, unit), piece, view.scale(), drawn, view.box());
    }
}
