package dev.hingepoint.samples.docs;

import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Divide;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Tint;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The three moves, each on a piece of the dress, with amounts large enough to see: the lines on the paper as it was, and the paper afterwards. */
final class MovePictures {
    private static final double BETWEEN = 30;
    private static final double LABELS = 2 * Picture.TYPE;
    private static final double TOP = 3 * Picture.TYPE;

    /** Below the waist a move of the neck or the shoulders has nothing to show: so much in mm of the piece is shown. */
    private static final double BODICE = 480;

    private MovePictures() {}

    static Map<String, String> of(Draft dress) {
        Map<String, String> pictures = new LinkedHashMap<>();
        pictures.put("cut.svg", cut(step(dress, "full seat", Map.of("wedge", "40 mm"), "Open")));
        pictures.put("redraw.svg", redraw(step(dress, "neckline", Map.of("lower", "60 mm"), "Redraw")));
        pictures.put("divide.svg", divide(dress.piece("back")));
        return pictures;
    }

    /** The step of an alteration whose caption begins so. */
    private static Step step(Draft dress, String alteration, Map<String, Object> amounts, String caption) {
        return Catalogue.alter(dress, new AlterationRequest(alteration, amounts)).steps().stream()
                .filter(step -> step.caption().startsWith(caption))
                .findFirst()
                .orElseThrow();
    }

    private static String cut(Step step) {
        Picture picture = new Picture();
        Motion left = before(picture, step);
        moved(step).forEach(part -> picture.area(Tint.FIRST, part.outline(), left));
        step.hinges().forEach(hinge -> picture.dot(hinge, left));
        Motion right = after(picture, step);
        picture.line(Style.BEFORE, step.before().outline(), right);
        moved(step).forEach(part -> picture.area(Tint.FIRST, part.outline().moved(part.motion()), right));
        picture.lines(Style.AFTER, Picture.lines(step.after()), right);
        step.hinges().forEach(hinge -> picture.dot(hinge, right));
        return picture.svg(step.caption());
    }

    private static List<Step.Part> moved(Step step) {
        return step.parts().stream()
                .filter(part -> !part.motion().equals(Motion.STAY))
                .toList();
    }

    private static String redraw(Step step) {
        Picture picture = new Picture();
        before(picture, step);
        Motion right = after(picture, step);
        picture.line(Style.BEFORE, step.before().outline(), right);
        picture.lines(Style.MARK, Picture.lines(step.after()), right);
        picture.lines(Style.AFTER, step.fills(), right);
        return picture.svg(step.caption(), bodice());
    }

    private static String divide(Piece back) {
        Path styleLine = Path.through(
                Place.fraction("armhole", "shoulder", 0.5).on(back).point(),
                Place.along("centre back", "neckline", 130).on(back).point());
        Divide divide = new Divide(
                "Divide the back along the yoke line",
                styleLine,
                Place.corner("shoulder", "neckline"),
                "back yoke",
                "lower back",
                "yoke seam");
        Divide.Divided divided = divide.on(back);
        Picture picture = new Picture();
        before(picture, divided.step());
        Motion right = after(picture, divided.step());
        Motion apart = Motion.shift(new Vector(0, BETWEEN)).then(right);
        part(picture, divided.first(), divide.seam(), right);
        part(picture, divided.second(), divide.seam(), apart);
        return picture.svg(divided.step().caption(), bodice());
    }

    private static void part(Picture picture, Piece part, String seam, Motion place) {
        picture.lines(Style.MARK, Picture.lines(part), place);
        picture.line(Style.AFTER, part.edge(seam).path(), place);
    }

    /** The paper as it was, with the lines of the step; answers with where it lies. */
    private static Motion before(Picture picture, Step step) {
        Motion place = place(step, 0);
        picture.words(step.caption(), 0, 0);
        picture.words("before, with the lines", 0, LABELS);
        picture.lines(Style.MARK, Picture.lines(step.before()), place);
        picture.lines(Style.SLASH, step.lines(), place);
        return place;
    }

    private static Motion after(Picture picture, Step step) {
        Motion place =
                place(step, Picture.SCALE * step.before().outline().bounds().width() + BETWEEN);
        double left =
                place.of(step.before().outline().bounds().corners().get(0)).x();
        picture.words("after", left, LABELS);
        return place;
    }

    private static double bodice() {
        return TOP + Picture.SCALE * BODICE;
    }

    private static Motion place(Step step, double x) {
        Box box = step.before().outline().bounds();
        return Picture.small(box, x, TOP);
    }
}
