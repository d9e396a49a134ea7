package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.move.Step;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import java.util.ArrayList;
import java.util.List;

/** The picture of a step that draws lines anew: the old course and the new, from the {@link Step}. */
final class TruedScene {
    /** A curve is followed within so many mm of the pattern, to find where it moves farthest. */
    private static final double CLOSELY = 0.1;

    private TruedScene() {}

    static Scene of(Step step, Stage stage) {
        Motion place = stage.place();
        boolean arePaired = step.lines().size() == step.fills().size();
        List<Stroke> strokes = new ArrayList<>(PaperLines.of(step.after(), place));
        step.lines().forEach(line -> strokes.add(PaperLines.stroke(Style.BEFORE, line, place)));
        step.fills().forEach(line -> strokes.add(PaperLines.stroke(Style.DRAWN, line, place)));
        double farthest = 0;
        Point at = null;
        for (int i = 0; i < step.fills().size(); i++) {
            List<Path> old = arePaired ? step.lines().subList(i, i + 1) : step.lines();
            for (Point point : step.fills().get(i).flatten(CLOSELY)) {
                double off = old.stream()
                        .mapToDouble(line -> line.distanceTo(point))
                        .min()
                        .orElse(0);
                if (off > farthest) {
                    farthest = off;
                    at = point;
                }
            }
        }
        Point where = at;
        double most = farthest;
        return stage.scene(
                Scene.Kind.TRUED,
                new StepWords(step).trued(farthest, stage.unit()),
                stage.paper(step.after()),
                strokes,
                labels -> {
                    if (where != null && most > StepWords.PENCIL) {
                        labels.name(StepWords.length(most), place.of(where));
                    }
                    stage.names(step.after(), labels);
                });
    }
}
