package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.alter.Options;
import dev.hingepoint.curve.Box;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.samples.draft.Larkfield;
import dev.hingepoint.svg.lesson.Carry;
import dev.hingepoint.svg.lesson.Lesson;
import dev.hingepoint.svg.lesson.Scene;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A lesson of every alteration of the catalogue on the Larkfield dress, by its own example. */
class LessonsTest {
    private static final Draft DRESS = Larkfield.dress().in("40");

    static Stream<Alteration> alterations() {
        return Catalogue.all().stream();
    }

    private static Options options(Alteration alteration) {
        return Options.of(new AlterationRequest(alteration.name(), new TreeMap<>(alteration.example())));
    }

    private static Lesson lesson(Alteration alteration, Unit unit) {
        return Lesson.of(DRESS, alteration, options(alteration), unit);
    }

    @ParameterizedTest
    @MethodSource("alterations")
    void itsPicturesAreItsOwnStepsInTheirOrder(Alteration alteration) {
        Altered altered = Catalogue.checked(DRESS, alteration, options(alteration));
        List<Scene.Kind> kinds = new ArrayList<>(List.of(Scene.Kind.AS_IT_WAS));
        for (Step step : altered.steps()) {
            kinds.addAll(
                    step.isCut()
                            ? List.of(Scene.Kind.LINES, Scene.Kind.SLASHED, Scene.Kind.MOVED, Scene.Kind.REJOINED)
                            : List.of(Scene.Kind.TRUED));
        }
        kinds.add(Scene.Kind.COMPARED);
        Lesson lesson = lesson(alteration, Unit.MILLIMETRE);
        assertEquals(kinds, lesson.scenes().stream().map(Scene::kind).toList());
        for (Step step : altered.steps()) {
            assertTrue(
                    lesson.scenes().stream().anyMatch(scene -> scene.caption().startsWith(step.caption())),
                    step.caption());
        }
        assertTrue(lesson.why().isPresent());
        assertTrue(lesson.carry().frames().size() >= 13);
    }

    @ParameterizedTest
    @MethodSource("alterations")
    void peopleReadLengthsAndNotDegrees(Alteration alteration) {
        for (Scene scene : lesson(alteration, Unit.MILLIMETRE).scenes()) {
            assertFalse(scene.caption().matches("(?i).*(degree|\u00b0|radian).*"), scene.caption());
            assertFalse(scene.caption().isBlank());
        }
        for (Scene scene : lesson(alteration, Unit.INCH).scenes()) {
            String words = scene.caption() + scene.drawn().texts();
            assertFalse(words.matches("(?s).*[0-9] mm\\b.*"), words);
        }
    }

    /** Nothing hangs out of a picture, and no label lies on another. */
    @ParameterizedTest
    @MethodSource("alterations")
    void everyPictureIsWholeAndCanBeRead(Alteration alteration) {
        for (Scene scene : lesson(alteration, Unit.MILLIMETRE).scenes()) {
            for (Stroke stroke : scene.drawn().strokes()) {
                stroke.points()
                        .forEach(
                                point -> assertTrue(scene.box().distanceTo(point) < 1e-6, scene.kind() + ": " + point));
            }
            List<Text> texts = scene.drawn().texts();
            for (int i = 0; i < texts.size(); i++) {
                Text text = texts.get(i);
                assertTrue(text.size() >= 4, "to be read at arm's length");
                text.corners().forEach(corner -> assertTrue(scene.box().distanceTo(corner) < 1e-6, text.words()));
                for (Text other : texts.subList(0, i)) {
                    boolean apart = text.bounds().left() >= other.bounds().right()
                            || other.bounds().left() >= text.bounds().right()
                            || text.bounds().top() >= other.bounds().bottom()
                            || other.bounds().top() >= text.bounds().bottom();
                    assertTrue(apart, scene.caption() + ": " + text.words() + " lies on " + other.words());
                }
            }
        }
    }

    /** Derived: the fold takes out at centre back what was ordered, and the part that swings goes no farther than its farthest end, here that at centre back or the hem. */
    @Test
    void theNumbersOfACaptionAreThePatterns() {
        List<Scene> scenes =
                lesson(Catalogue.named("sway back"), Unit.MILLIMETRE).scenes();
        assertEquals(
                "Fold out 12 mm at centre back at the waist, running to nothing at the side seam",
                scenes.get(3).caption().split("\\.")[0]);
        String lines = scenes.get(1).caption();
        double told = Double.parseDouble(lines.replaceAll(".*?([0-9.]+) mm long.*", "$1"));
        // across the paper, the waist dart's intake in it
        assertEquals(DRESS.piece("back").levelFrame("waist").paperWidth(), told, 1);
        assertTrue(
                scenes.get(2).caption().contains("not through the side seam"),
                scenes.get(2).caption());
        assertTrue(scenes.get(scenes.size() - 1).caption().contains("the centre back is 12 mm shorter"));
    }

    /** Derived: a pencil line of 0.3 mm, and a ruler of sixteenths, show no less than themselves. */
    @ParameterizedTest
    @MethodSource("alterations")
    void nobodyIsToldToMoveALineByLessThanAPencilDraws(Alteration alteration) {
        for (Scene scene : lesson(alteration, Unit.MILLIMETRE).scenes()) {
            assertFalse(scene.caption().matches(".* 0\\.[0-2][0-9]? mm at most.*"), scene.caption());
        }
        for (Scene scene : lesson(alteration, Unit.INCH).scenes()) {
            assertFalse(scene.caption().contains("under 1/16 in at most"), scene.caption());
        }
    }

    /** The cut from the bust down to the hem is ruled in one line; the one that begins on it says so, and how far down. The caption measures from the neckline, so it is seen. */
    @Test
    void whatBeginsOnAnotherLineSaysOnWhich() {
        Scene lines =
                lesson(Catalogue.named("full bust"), Unit.MILLIMETRE).scenes().get(1);
        String caption = lines.caption();
        assertTrue(caption.contains("draw 4 lines: 1) from the bust apex to the hem,"), caption);
        assertTrue(caption.matches(".*from line 1, [0-9.]+ mm from its beginning, to the centre front.*"), caption);
        assertFalse(caption.contains("where the lines meet"), caption);
        Box front = DRESS.piece("front").outline().bounds();
        assertTrue(lines.box().height() / lines.scale() > front.height(), "the whole front is shown");
    }

    /** Derived: half of the dress's girth is drawn, so a level of the picture is told twice where the caption tells the whole body. */
    @Test
    void whatIsDrawnForHalfOfTheBodyIsToldTwice() {
        List<Scene> scenes =
                lesson(Catalogue.named("full bust"), Unit.MILLIMETRE).scenes();
        Scene compared = scenes.get(scenes.size() - 1);
        assertTrue(compared.caption().contains("the bust is 40 mm wider round the body"), compared.caption());
        assertTrue(
                words(compared).contains("bust 2 \u00d7 +20 mm"),
                words(compared).toString());
    }

    /** What is told of a line that is drawn anew names the line. */
    @Test
    void aCloseViewNamesItsEdges() {
        List<Scene> scenes = lesson(Catalogue.named("armhole"), Unit.MILLIMETRE).scenes();
        assertTrue(words(scenes.get(1)).containsAll(List.of("armhole", "side seam", "shoulder", "bust")));
    }

    private static List<String> words(Scene scene) {
        return scene.drawn().texts().stream().map(Text::words).toList();
    }

    /** The width at the cuff is come to from the width that there was, so it is none of what grows from nothing; nor is how far above the waist a wedge lies. */
    @Test
    void theSliderTellsWhatGrowsFromNothing() {
        assertEquals(
                List.of("length 0 mm of 30 mm", "length 30 mm of 30 mm"),
                ends("sleeve", "length", "+30 mm", "cuff", "240 mm"));
        assertEquals(
                List.of("wedge 0 mm of 12 mm", "wedge 12 mm of 12 mm"),
                ends("sway back", "wedge", "12 mm", "above", "20 mm"));
        assertEquals(
                List.of("0 % of the way", "100 % of the way"), ends("sleeve", "cuff", "240 mm", "length", "+0 mm"));
    }

    private static List<String> ends(String alteration, String one, String amount, String other, String further) {
        AlterationRequest request =
                AlterationRequest.of(alteration).with(one, amount).with(other, further);
        List<Carry.Frame> frames = Lesson.of(DRESS, Catalogue.named(alteration), Options.of(request), Unit.MILLIMETRE)
                .carry()
                .frames();
        return List.of(frames.get(0).told(), frames.get(frames.size() - 1).told());
    }

    /** The upper and the lower side of a front that is spread hang together at the apex, and take that hinge along. */
    @Test
    void aHingeGoesWhereItsPartsGo() {
        Lesson lesson = lesson(Catalogue.named("full bust"), Unit.MILLIMETRE);
        Map<Scene.Kind, List<Stroke>> rings = new EnumMap<>(Scene.Kind.class);
        lesson.scenes()
                .forEach(scene -> rings.put(
                        scene.kind(),
                        scene.drawn().strokes().stream()
                                .filter(stroke -> stroke.style() == Style.HINGE)
                                .toList()));
        assertEquals(2, rings.get(Scene.Kind.SLASHED).size());
        assertEquals(2, rings.get(Scene.Kind.MOVED).size());
        Scene moved = lesson.scenes().stream()
                .filter(scene -> scene.kind() == Scene.Kind.MOVED)
                .findFirst()
                .orElseThrow();
        double apart = DRESS.piece("front")
                        .point("bust apex")
                        .distanceTo(lesson.after().piece("front").point("bust apex"))
                * moved.scale();
        assertTrue(apart > 1);
        double went = rings.get(Scene.Kind.SLASHED).stream()
                .mapToDouble(ring -> rings.get(Scene.Kind.MOVED).stream()
                        .mapToDouble(other ->
                                other.points().get(0).distanceTo(ring.points().get(0)))
                        .min()
                        .orElseThrow())
                .max()
                .orElseThrow();
        assertEquals(apart, went, 0.01);
    }

    /** One that nobody but a developer knows has its pictures and its slider as well. */
    @Test
    void anAlterationOfOnesOwnHasItsLessonForFree() {
        Alteration own = new Alteration() {
            @Override
            public String name() {
                return "long choir back";
            }

            @Override
            public Map<String, Object> example() {
                return Map.of("by", "15 mm");
            }

            @Override
            public Altered alter(Draft draft, Options options) {
                double by = options.requiredAmount("by", "by: 15 mm").mm();
                return Catalogue.alter(
                        draft, new AlterationRequest("lengthen", Map.of("by", by + " mm", "above", "waist")));
            }
        };
        Lesson lesson = lesson(own, Unit.MILLIMETRE);
        assertEquals("Long choir back", lesson.title());
        assertTrue(lesson.why().isEmpty());
        assertTrue(lesson.scenes().stream().anyMatch(scene -> scene.kind() == Scene.Kind.MOVED));
        assertFalse(lesson.carry()
                .frames()
                .get(1)
                .lines()
                .equals(lesson.carry().frames().get(0).lines()));
    }
}
