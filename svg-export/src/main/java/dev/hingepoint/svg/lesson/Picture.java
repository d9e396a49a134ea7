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

/**
 * Puts scenes together: lines cut off at the picture's edge, then words where they leave room.
 *
 * @param view what of the pattern is shown
 * @param unit in which lengths are told
 */
record Picture(View view, Unit unit) {
    /**
     * The scene of a kind.
     *
     * @param piece empty where several are shown
     * @param lettered sets the words
     */
    Scene scene(
            Scene.Kind kind,
            String caption,
            String piece,
            List<Area> areas,
            List<Stroke> strokes,
            Consumer<Labels> lettered) {
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
