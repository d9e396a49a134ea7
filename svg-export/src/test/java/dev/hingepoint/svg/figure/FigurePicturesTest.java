package dev.hingepoint.svg.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class FigurePicturesTest {
    private static final List<String> WHICH = List.of("without", "right", "wrong");

    static List<String> alterations() {
        return Catalogue.all().stream().map(Alteration::name).toList();
    }

    private static List<Drawn> drawn(String alteration) {
        FigurePictures pictures = FigurePictures.of(alteration).orElseThrow();
        return Stream.of(pictures.without(), pictures.right(), pictures.wrong())
                .map(FigurePicture::drawn)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("alterations")
    void allLiesWithinThePicture(String alteration) {
        for (Drawn drawn : drawn(alteration)) {
            Box box = drawn.bounds();
            assertTrue(
                    box.left() >= 0
                            && box.top() >= 0
                            && box.right() <= FigurePicture.WIDTH
                            && box.bottom() <= FigurePicture.HEIGHT,
                    box.toString());
        }
    }

    /** Type of 2.8 mm is what is set here as the smallest to read on a handout. */
    @ParameterizedTest
    @MethodSource("alterations")
    void labelsCanBeReadAndLieOnNothing(String alteration) {
        for (Drawn drawn : drawn(alteration)) {
            List<Text> texts = drawn.texts();
            assertFalse(texts.isEmpty());
            for (int i = 0; i < texts.size(); i++) {
                Text text = texts.get(i);
                assertTrue(text.size() >= 2.8);
                texts.subList(i + 1, texts.size())
                        .forEach(other -> assertTrue(areApart(text.bounds(), other.bounds()), text + " on " + other));
                for (Stroke stroke : drawn.strokes()) {
                    assertTrue(
                            stroke.points().stream()
                                    .allMatch(point -> text.bounds().distanceTo(point) > 0.3),
                            text.words() + " lies on " + stroke.style());
                }
            }
        }
    }

    private static boolean areApart(Box one, Box other) {
        return one.right() <= other.left()
                || other.right() <= one.left()
                || one.bottom() <= other.top()
                || other.bottom() <= one.top();
    }

    @ParameterizedTest
    @MethodSource("alterations")
    void leadersDoNotCross(String alteration) {
        for (Drawn drawn : drawn(alteration)) {
            List<Stroke> leaders = drawn.strokes().stream()
                    .filter(stroke -> stroke.style() == Style.LEADER)
                    .toList();
            for (int i = 0; i < leaders.size(); i++) {
                Path leader = Path.through(leaders.get(i).points());
                for (Stroke other : leaders.subList(i + 1, leaders.size())) {
                    List<Point> ends = other.points();
                    assertTrue(
                            leader.crossings(new Line(ends.get(0), ends.get(1))).isEmpty());
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("alterations")
    void onlyTheRightCureHasNoWrinkles(String alteration) {
        List<Drawn> drawn = drawn(alteration);
        assertTrue(wrinkles(drawn.get(0)) > 0);
        assertEquals(0, wrinkles(drawn.get(1)));
        assertTrue(wrinkles(drawn.get(2)) > 0);
        assertNotEquals(lines(drawn.get(0)), lines(drawn.get(1)));
        assertNotEquals(lines(drawn.get(0)), lines(drawn.get(2)));
    }

    private static long wrinkles(Drawn drawn) {
        return drawn.strokes().stream()
                .filter(stroke -> stroke.style() == Style.WRINKLE)
                .count();
    }

    private static List<Stroke> lines(Drawn drawn) {
        return drawn.strokes().stream()
                .filter(stroke -> stroke.style() != Style.LEADER && stroke.style() != Style.MARK)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("alterations")
    void linesAreSmooth(String alteration) {
        for (String which : WHICH) {
            Figure figure = figure(alteration, which);
            Stream.concat(
                            Stream.concat(figure.outline().stream(), figure.seams().stream()),
                            figure.arm().stream()
                                    .flatMap(arm -> Stream.concat(arm.outline().stream(), arm.seams().stream())))
                    .forEach(path -> assertEquals(List.of(), path.corners(Tolerance.CORNER), path.toString()));
        }
    }

    private static Figure figure(String alteration, String which) {
        Sketch sketch = Sketches.of(alteration).orElseThrow().sketch(which);
        return Figure.of(sketch.view(), sketch.differences());
    }

    /** Of seven and a half heads, as figures are commonly drawn (from memory). */
    @ParameterizedTest
    @EnumSource(View.class)
    void aFigureIsSevenAndAHalfHeadsHigh(View view) {
        Figure figure = Figure.of(view, Differences.NONE);
        Box all = figure.outline().stream().map(Path::bounds).reduce(Box::union).orElseThrow();
        assertEquals(7.5, all.height(), 0.02);
        double head = view.isSide()
                ? figure.outline().get(0).bounds().height()
                : figure.outline().get(0).bounds().bottom();
        assertEquals(1, head, 0.02);
    }
}
