package dev.hingepoint.svg.figure;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A figure, what its dress shows, and what that is called.
 *
 * @param labels words by the place that they name
 */
record Sketch(View view, Differences differences, List<Wrinkle> wrinkles, Map<Place, String> labels) {
    /** How high a head is in mm, and where the figure's crown is. */
    private static final double HEAD = 13.8;

    private static final Point CROWN = new Point(18.3, 3);

    /** Where labels begin, beside arms that hang beside the body, and beside one that hangs before it. */
    private static final double BESIDE_ARMS = 36;

    private static final double BESIDE_BODY = 30.5;

    Drawn drawn() {
        Figure figure = Figure.of(view, differences);
        List<Stroke> strokes = new ArrayList<>();
        figure.arm().ifPresentOrElse(arm -> behind(figure, arm, strokes), () -> {
            strokes.addAll(whole(Style.FIGURE, figure.outline()));
            strokes.addAll(whole(Style.SEAM, figure.seams()));
            strokes.addAll(whole(Style.WRINKLE, folds(false)));
        });
        strokes.addAll(whole(Style.WRINKLE, folds(true)));
        LabelColumn written = LabelColumn.at(view.isSide() ? BESIDE_BODY : BESIDE_ARMS);
        labels.forEach((spot, words) -> written.add(words, place().of(figure.at(spot))));
        return new Drawn(strokes, List.of()).and(written.drawn());
    }

    /** What the arm hides is left out, and so are folds where there is no cloth. */
    private void behind(Figure figure, Figure.Arm arm, List<Stroke> strokes) {
        Hidden hidden = new Hidden(arm.ring().moved(place()));
        Hidden cloth = new Hidden(figure.cloth().orElseThrow().moved(place()));
        strokes.addAll(drawn(Style.FIGURE, hidden.outside(moved(figure.outline()))));
        strokes.addAll(drawn(Style.SEAM, hidden.outside(moved(figure.seams()))));
        List<Path> folds =
                cloth.within(moved(folds(false))).stream().map(Path::through).toList();
        strokes.addAll(drawn(Style.WRINKLE, hidden.outside(folds)));
        strokes.addAll(whole(Style.FIGURE, arm.outline()));
        strokes.addAll(whole(Style.SEAM, arm.seams()));
    }

    private List<Path> folds(boolean onSleeve) {
        return wrinkles.stream()
                .filter(wrinkle -> wrinkle.isOnSleeve() == onSleeve)
                .flatMap(wrinkle -> wrinkle.folds().stream())
                .flatMap(fold -> fold.paths().stream())
                .toList();
    }

    /** From heads to mm; a figure that looks to the right is mirrored. */
    private Motion place() {
        double across = view == View.SIDE_FRONT ? -HEAD : HEAD;
        Point origin = new Point(0, 0);
        return Motion.between(
                origin, new Vector(1, 0), new Vector(0, 1), CROWN, new Vector(across, 0), new Vector(0, HEAD));
    }

    private List<Path> moved(List<Path> paths) {
        return paths.stream().map(path -> path.moved(place())).toList();
    }

    private List<Stroke> whole(Style style, List<Path> paths) {
        return drawn(
                style,
                moved(paths).stream()
                        .map(path -> path.flatten(Tolerance.FLATTENING))
                        .toList());
    }

    private static List<Stroke> drawn(Style style, List<List<Point>> lines) {
        return lines.stream().map(line -> new Stroke(style, line)).toList();
    }
}
