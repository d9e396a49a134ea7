package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import java.util.ArrayList;
import java.util.List;

/**
 * Beside a picture that shows a part of a piece, the whole piece, small, with a frame round that part.
 *
 * @param outline of the piece, upright, in mm
 * @param whole the paper with the outline, in mm
 * @param region what of it the picture shows
 */
record InPlace(Path outline, Box whole, Box region) {
    /** The room in mm that it takes beside the picture, or below it. */
    static final double WIDTH = 34;

    static final double HEIGHT = 44;

    /** Between the picture and the small piece. */
    private static final double GAP = 4;

    /** It stands where the picture leaves more room. */
    static boolean isBelow(Box region) {
        return region.width() > region.height();
    }

    Scene beside(Scene scene) {
        Box box = scene.box();
        double scale = Math.min((WIDTH - GAP) / whole.width(), (HEIGHT - GAP) / whole.height());
        double left = isBelow(region) ? box.left() : box.right() + GAP;
        double top = isBelow(region) ? box.bottom() + GAP : box.top();
        Motion place = Motion.shift(new Vector(-whole.left(), -whole.top()))
                .then(Motion.enlargement(scale))
                .then(Motion.shift(new Vector(left, top)));
        List<Point> frame = new ArrayList<>(region.corners());
        frame.add(frame.get(0));
        List<Stroke> strokes = new ArrayList<>(scene.drawn().strokes());
        strokes.add(PaperLines.stroke(Style.RULE, outline, place));
        strokes.add(new Stroke(Style.WAY, place.of(frame)));
        Drawn drawn = new Drawn(scene.drawn().areas(), strokes, scene.drawn().texts());
        Box room = new Box(left, top, left + whole.width() * scale, top + whole.height() * scale);
        return new Scene(scene.kind(), scene.caption(), scene.piece(), scene.scale(), drawn, box.union(room));
    }
}
