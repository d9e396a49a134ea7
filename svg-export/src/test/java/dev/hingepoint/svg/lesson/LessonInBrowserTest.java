package dev.hingepoint.svg.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Unit;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** What the page does, in Chromium: two lessons of five steps each. */
class LessonInBrowserTest extends InBrowser {
    private static final String FIRST = "#lesson-1 ";
    private static final String SECOND = "#lesson-2 ";
    private static final String SLIDER = FIRST + "[type=range]";
    private static final String ORIGINAL = FIRST + ".carry .picture .layer-original-lines path";
    private static final String CARRIED = FIRST + ".carried";
    private final Lesson lesson = MadeUpLesson.lesson();

    @BeforeEach
    void open() throws IOException {
        browser.open(LessonPage.html(List.of(lesson, lesson), Unit.MILLIMETRE), 1280, 800);
    }

    @Test
    void buttonsStepForwardAndBackFromTheFirstToTheLastAndNoFurther() {
        assertShows(FIRST, 1);
        click(FIRST + ".previous");
        assertShows(FIRST, 1);
        for (int step = 2; step <= 5; step++) {
            click(FIRST + ".next");
            assertShows(FIRST, step);
        }
        click(FIRST + ".next");
        assertShows(FIRST, 5);
        for (int step = 4; step >= 1; step--) {
            click(FIRST + ".previous");
            assertShows(FIRST, step);
        }
        assertShows(SECOND, 1);
    }

    @Test
    void aButtonThatLeadsNowhereSaysSo() {
        assertEquals("true", browser.find(FIRST + ".previous").getAttribute("aria-disabled"));
        assertEquals("false", browser.find(FIRST + ".next").getAttribute("aria-disabled"));
        for (int i = 0; i < 4; i++) {
            click(FIRST + ".next");
        }
        assertEquals("false", browser.find(FIRST + ".previous").getAttribute("aria-disabled"));
        assertEquals("true", browser.find(FIRST + ".next").getAttribute("aria-disabled"));
    }

    @Test
    void arrowKeysStepTheLessonThatHasTheFocus() {
        focus(SECOND + ".next");
        browser.press(Keys.ARROW_LEFT);
        assertShows(SECOND, 1);
        for (int step = 2; step <= 5; step++) {
            browser.press(Keys.ARROW_RIGHT);
            assertShows(SECOND, step);
        }
        browser.press(Keys.ARROW_RIGHT);
        assertShows(SECOND, 5);
        browser.press(Keys.ARROW_LEFT);
        assertShows(SECOND, 4);
        assertShows(FIRST, 1);
    }

    @Test
    void withNothingInFocusArrowKeysStepTheLessonInView() {
        browser.ask("document.querySelector('#lesson-1 .stepper').scrollIntoView()");
        browser.press(Keys.ARROW_RIGHT);
        assertShows(FIRST, 2);
        browser.ask("document.querySelector('#lesson-2 .stepper').scrollIntoView()");
        browser.press(Keys.ARROW_RIGHT);
        assertShows(FIRST, 2);
        assertShows(SECOND, 2);
    }

    /** Alt and an arrow lead back in the browser's history. */
    @Test
    void keysHeldWithAnArrowAreLeftToTheBrowser() {
        focus(FIRST + ".next");
        new Actions(browser.driver())
                .keyDown(Keys.CONTROL)
                .sendKeys(Keys.ARROW_RIGHT)
                .keyUp(Keys.CONTROL)
                .perform();
        assertShows(FIRST, 1);
    }

    @Test
    void aStepIsAnnouncedPolitelyAndNothingIsBeforeTheFirst() {
        WebElement spoken = browser.find(FIRST + "[role=status]");
        assertEquals("", spoken.getAttribute("textContent"));
        click(FIRST + ".next");
        assertEquals(
                "Step 2 of 5. Draw the lines: back " + lesson.scenes().get(1).caption(),
                spoken.getAttribute("textContent"));
    }

    @Test
    void theSliderCarriesTheLinesFromWhereTheyWereToTheFullAmount() {
        List<String> original = data(ORIGINAL);
        assertEquals(original, data(CARRIED), "nothing is carried at first");
        focus(SLIDER);
        Set<List<String>> drawn = new HashSet<>();
        for (Carry.Frame frame : lesson.carry().frames()) {
            assertFrame(frame);
            drawn.add(data(CARRIED));
            browser.press(Keys.ARROW_RIGHT);
        }
        assertEquals(MadeUpLesson.FRAMES, drawn.size(), "the lines move at each stop");
        assertFrame(lesson.carry().frames().get(MadeUpLesson.FRAMES - 1));
        assertShows(FIRST, 1);
        browser.press(Keys.ARROW_LEFT);
        assertFrame(lesson.carry().frames().get(MadeUpLesson.FRAMES - 2));
        browser.press(Keys.END);
        assertFrame(lesson.carry().frames().get(MadeUpLesson.FRAMES - 1));
        browser.press(Keys.HOME);
        assertFrame(lesson.carry().frames().get(0));
        assertEquals(original, data(ORIGINAL), "the original stays");
    }

    @Test
    void playCarriesItByItselfToTheEnd() throws InterruptedException {
        click(FIRST + ".play");
        browser.waitUntil(() -> browser.find(SLIDER).getAttribute("value").equals("" + (MadeUpLesson.FRAMES - 1)));
        assertFrame(lesson.carry().frames().get(MadeUpLesson.FRAMES - 1));
        assertEquals("Play", browser.find(FIRST + ".play").getText());
    }

    @Test
    void eachLayerIsHiddenByItsBoxInItsOwnPicturesAlone() {
        for (String viewer : List.of(FIRST + ".stepper ", FIRST + ".carry ")) {
            String other = viewer.contains("stepper") ? FIRST + ".carry " : FIRST + ".stepper ";
            for (String layer : List.of("original-lines", "stitching-lines", "cutting-lines", "grid")) {
                boolean isShownFirst = !layer.equals("grid");
                String lines = ".picture .layer-" + layer;
                boolean elsewhere = isDrawn(other + lines);
                assertEquals(isShownFirst, isDrawn(viewer + lines), layer);
                click(viewer + "[data-layer=" + layer + "]");
                assertEquals(!isShownFirst, isDrawn(viewer + lines), layer);
                assertEquals(elsewhere, isDrawn(other + lines), layer + ", of the other pictures");
                click(viewer + "[data-layer=" + layer + "]");
                assertEquals(isShownFirst, isDrawn(viewer + lines), layer);
            }
        }
    }

    @Test
    void aPictureIsEnlargedInItsBoxAndScrolledByKeysWhichThenDoNotStep() throws InterruptedException {
        String picture = FIRST + ".step.now .picture";
        double width = number("return document.querySelector(arguments[0]).getBoundingClientRect().width", picture);
        for (int i = 0; i < 4; i++) {
            click(FIRST + ".stepper [data-zoom=larger]");
        }
        assertEquals("400 %", browser.find(FIRST + ".stepper .percent").getText());
        assertEquals("100 %", browser.find(FIRST + ".carry .percent").getText());
        assertEquals(4, wider(picture), 0.02);
        assertEquals(
                width,
                number("return document.querySelector(arguments[0]).getBoundingClientRect().width", picture),
                0.01,
                "the box stays");
        assertEquals(0.5, middle(picture), 0.01, "the middle stays in the middle");
        focus(picture);
        browser.press(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
        browser.waitUntil(() -> middle(picture) > 0.5);
        assertShows(FIRST, 1);
        click(FIRST + ".next");
        assertShows(FIRST, 2);
        assertTrue(middle(picture) > 0.5, "the next picture shows the same part");
        click(FIRST + ".stepper [data-zoom=smaller]");
        assertEquals("283 %", browser.find(FIRST + ".stepper .percent").getText());
        click(FIRST + ".stepper [data-zoom=whole]");
        assertEquals(1, wider(picture), 0.02);
    }

    /** A wedge of 12 mm on a long dress is a few dots: what moves is shown large, and in the middle. */
    @Test
    void whatMovesIsShownLargeAndInTheMiddle() {
        String picture = FIRST + ".carry .picture";
        click(FIRST + ".carry .near");
        Box moves = MadeUpLesson.lesson().carry().moves();
        String visible = "const picture = document.querySelector(arguments[0]).getBoundingClientRect();"
                + "const svg = document.querySelector(arguments[0] + ' svg').getScreenCTM();"
                + "const at = new DOMPoint(arguments[1], arguments[2]).matrixTransform(svg);";
        assertEquals(
                0.5,
                number(
                        visible + "return (at.y - picture.top) / picture.height",
                        picture,
                        moves.centre().x(),
                        moves.centre().y()),
                0.05);
        for (Point corner : moves.corners()) {
            assertEquals(
                    true,
                    browser.ask(
                            visible + "return at.x >= picture.left - 1 && at.x <= picture.right + 1"
                                    + " && at.y >= picture.top - 1 && at.y <= picture.bottom + 1",
                            picture,
                            corner.x(),
                            corner.y()),
                    corner.toString());
        }
        assertTrue(wider(picture) > 1.3, "larger");
        click(FIRST + ".carry [data-zoom=whole]");
        assertEquals(1, wider(picture), 0.02);
    }

    @Test
    void whateverIsDoneThePageWritesNothingToTheConsoleAndAsksForNothing() {
        for (String button :
                List.of(".next", ".previous", ".play", "[data-zoom=larger]", "[data-layer=grid]", "nav a")) {
            browser.all(button).forEach(one -> browser.ask("arguments[0].click()", one));
        }
        focus(SLIDER);
        browser.press(Keys.END);
        assertEquals(List.of(), browser.console());
        assertEquals(List.of(browser.driver().getCurrentUrl().replaceFirst("#.*", "")), browser.asked());
    }

    /** That the policy is one, and these checks would see a page that breaks it. */
    @Test
    void thePolicyStopsWhatIsPutInLater() throws InterruptedException {
        browser.ask(
                "const i = document.createElement('img'); i.src = 'https://example.org/x.png'; document.body.append(i);"
                        + "const s = document.createElement('script'); s.textContent = 'document.title = 1'; document.body.append(s)");
        browser.waitUntil(() -> !browser.console().isEmpty());
        assertNotEquals("1", browser.driver().getTitle());
    }

    private void assertShows(String lesson, int step) {
        List<WebElement> shown = browser.shown(lesson + ".step");
        assertEquals(1, shown.size(), "one step is shown");
        assertEquals(
                this.lesson.scenes().get(step - 1).caption(),
                shown.get(0).findElement(By.cssSelector("figcaption p")).getText());
        assertEquals("Step " + step + " of 5", browser.find(lesson + ".where").getText());
    }

    private static void assertFrame(Carry.Frame frame) {
        assertEquals(frame.lines().stream().map(Carry.Line::data).toList(), data(CARRIED));
        assertEquals(frame.told(), browser.find(SLIDER).getAttribute("aria-valuetext"));
        assertEquals(frame.told(), browser.find(FIRST + ".told").getText());
    }

    private static List<String> data(String selector) {
        return browser.all(selector).stream()
                .map(path -> path.getAttribute("d"))
                .toList();
    }

    private static void click(String selector) {
        browser.find(selector).click();
    }

    private static void focus(String selector) {
        browser.ask("arguments[0].focus()", browser.find(selector));
    }

    private static boolean isDrawn(String selector) {
        return (Boolean) browser.ask(
                "return [...document.querySelectorAll(arguments[0])].some(one => one.getClientRects().length)",
                selector);
    }

    private static double number(String script, Object... arguments) {
        return ((Number) browser.ask(script, arguments)).doubleValue();
    }

    /** How many times as wide as its box a picture is. */
    private static double wider(String picture) {
        return number("const p = document.querySelector(arguments[0]); return p.scrollWidth / p.clientWidth", picture);
    }

    /** What of a picture is in the middle of its box: 0 its left edge, 1 its right. */
    private static double middle(String picture) {
        return number(
                "const p = document.querySelector(arguments[0]);"
                        + " return (p.scrollLeft + p.clientWidth / 2) / p.scrollWidth",
                picture);
    }
}
