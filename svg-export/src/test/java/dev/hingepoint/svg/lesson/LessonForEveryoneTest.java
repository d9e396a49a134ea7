package dev.hingepoint.svg.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.results.CheckedNode;
import com.deque.html.axecore.results.Results;
import com.deque.html.axecore.selenium.AxeBuilder;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.OrderReader;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Tint;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The page for who cannot see it, has a small screen, no script, or only paper. */
class LessonForEveryoneTest extends InBrowser {
    private static final int PHONE = 360;
    private static final String HTML =
            LessonPage.html(List.of(MadeUpLesson.lesson(), MadeUpLesson.lesson()), Unit.MILLIMETRE);

    /** The three alterations of the concert dress. */
    private static final String CONCERT = concert();

    private static String concert() {
        OrderReader.ReadOrder read = OrderReader.read(Path.of("../samples/patterns/concert-order.yaml"));
        return LessonPage.html(
                Lesson.of(PatternFiles.read(read.card()), read.order(), Unit.MILLIMETRE), Unit.MILLIMETRE);
    }

    /** WCAG 2 A and AA and good practice, as axe-core checks them. */
    @Test
    void anAccessibilityCheckerFindsNothing() throws IOException {
        for (String html : List.of(HTML, CONCERT)) {
            browser.open(html, 1280, 800);
            assertNoViolation("at first");
            browser.open(html, PHONE, 740);
            for (String button : List.of(".next", "[data-zoom=larger]", "[data-layer=grid]")) {
                browser.all(button).forEach(one -> browser.ask("arguments[0].click()", one));
            }
            assertNoViolation("on a phone, enlarged, at the second step, on its grid");
        }
    }

    @Test
    void theCheckerFindsNothingInTheListOfLessonsEitherNorDoesItOverflow() throws IOException {
        Lesson lesson = MadeUpLesson.lesson();
        String html = LessonIndex.html(
                lesson.before(),
                List.of(
                        LessonIndex.Entry.of(lesson, "lengthen"),
                        LessonIndex.Entry.of(lesson, "lengthen-again"),
                        LessonIndex.Entry.without("full bust", "a back has no bust")),
                new Lengths(Unit.MILLIMETRE));
        for (int width : new int[] {1280, PHONE}) {
            browser.open(html, width, 740);
            Results results = new AxeBuilder().analyze(browser.driver());
            assertEquals(List.of(), violations(results), width + " px wide");
            assertTrue(
                    results.getPasses().stream().anyMatch(rule -> rule.getId().equals("link-name")));
            assertEquals(
                    true,
                    browser.ask("return document.documentElement.scrollWidth <= innerWidth"),
                    "nothing scrolls sideways");
        }
        assertEquals(2, browser.all(".index svg").size());
        assertEquals(List.of(), browser.console());
    }

    /** That the checker checks: a label taken away, and a text made pale. */
    @Test
    void theCheckerWouldFindSomething() throws IOException {
        browser.open(HTML, 1280, 800);
        browser.ask("document.querySelector('label[for]').remove(); document.querySelector('h2').style.color = '#ccc'");
        List<String> found = violations(new AxeBuilder().analyze(browser.driver()));
        assertTrue(found.stream().anyMatch(one -> one.startsWith("label")), found.toString());
        assertTrue(found.stream().anyMatch(one -> one.startsWith("color-contrast")), found.toString());
    }

    private static void assertNoViolation(String when) {
        Results results = new AxeBuilder().analyze(browser.driver());
        assertEquals(List.of(), violations(results), when);
        assertTrue(
                results.getPasses().stream().anyMatch(rule -> rule.getId().equals("color-contrast")),
                "contrast was checked");
        assertTrue(results.getPasses().stream().anyMatch(rule -> rule.getId().equals("label")), "labels were checked");
        assertEquals(
                List.of(),
                results.getIncomplete().stream()
                        .flatMap(rule -> rule.getNodes().stream())
                        .map(CheckedNode::getHtml)
                        .filter(html -> !html.startsWith("<text "))
                        .toList(),
                "nothing but the words in pictures is left to a person's eye, " + when);
    }

    /** What the checker leaves to a person's eye: words need 4.5:1, lines 3:1 (WCAG 2.2, 1.4.3 and 1.4.11), on the paper and on every tint. */
    @Test
    void wordsAndLinesOfPicturesStandOutFromPaperAndTints() throws IOException {
        browser.open(HTML, 1280, 800);
        List<int[]> grounds = new ArrayList<>(List.of(new int[] {255, 255, 255}));
        Stream.of(Tint.values()).map(Tint::colour).forEach(grounds::add);
        for (int[] ground : grounds) {
            for (int[] words : colours(".picture text", "fill")) {
                assertTrue(contrast(words, ground) >= 4.5, contrast(words, ground) + " for words");
            }
            for (int[] line : colours(".picture g:not(.layer-grid) > path:not([stroke=none])", "stroke")) {
                assertTrue(contrast(line, ground) >= 3, Arrays.toString(line) + " on " + Arrays.toString(ground));
            }
        }
    }

    private static List<int[]> colours(String selector, String property) {
        Object told = browser.ask(
                "return [...new Set([...document.querySelectorAll(arguments[0])]"
                        + ".map(one => getComputedStyle(one)[arguments[1]]))].join(';')",
                selector,
                property);
        List<int[]> colours = Stream.of(told.toString().split(";"))
                .map(rgb -> Stream.of(rgb.replaceAll("[^0-9,]", "").split(","))
                        .mapToInt(Integer::parseInt)
                        .toArray())
                .toList();
        assertTrue(!colours.isEmpty(), selector);
        return colours;
    }

    /** WCAG 2.2, contrast ratio. */
    private static double contrast(int[] one, int[] other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** WCAG 2.2, relative luminance. */
    private static double luminance(int[] rgb) {
        double[] linear = IntStream.of(rgb)
                .mapToDouble(c -> c / 255.0)
                .map(c -> c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4))
                .toArray();
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
    }

    private static List<String> violations(Results results) {
        return results.getViolations().stream()
                .map(rule -> rule.getId() + ": " + rule.getHelp() + " " + rule.getNodes())
                .toList();
    }

    @Test
    void onAPhoneOnlyPicturesAndTablesScrollSideways() throws IOException {
        browser.open(CONCERT, PHONE, 740);
        browser.all(".next, [data-zoom=larger]").forEach(one -> browser.ask("arguments[0].click()", one));
        assertEquals(
                List.of(),
                browser.ask("const wide = document.documentElement.clientWidth;"
                        + " return [...document.body.querySelectorAll('*')]"
                        + ".filter(one => one.closest('.picture, .sideways') === null || one.matches('.picture, .sideways'))"
                        + ".filter(one => one.getBoundingClientRect().right > wide + 0.5).map(one => one.outerHTML)"));
        assertEquals(
                browser.ask("return document.documentElement.clientWidth"),
                browser.ask("return document.documentElement.scrollWidth"));
    }

    /** WCAG 2.2, 2.5.8 asks for 24 px; fingers like 44. */
    @Test
    void whatIsTappedIsLargeEnough() throws IOException {
        browser.open(HTML, PHONE, 740);
        assertEquals(
                List.of(),
                browser.ask("return [...document.querySelectorAll('button, [type=range]')]"
                        + ".filter(one => 44 > one.getBoundingClientRect().height).map(one => one.outerHTML)"));
        assertEquals(
                List.of(),
                browser.ask("return [...document.querySelectorAll('.layers label')]"
                        + ".filter(one => 24 > one.getBoundingClientRect().height).map(one => one.outerHTML)"));
    }

    @Test
    void withoutScriptAllStepsAreThereAndNoButtonThatDoesNothing() throws IOException {
        browser.command("Emulation.setScriptExecutionDisabled", Map.of("value", true));
        try {
            browser.open(HTML, 1280, 800);
            assertEquals(10, browser.shown(".step").size());
            assertEquals(0, browser.shown("button, input").size());
            Carry.Frame full = MadeUpLesson.lesson().carry().frames().get(MadeUpLesson.FRAMES - 1);
            assertEquals(full.told(), browser.find(".told").getText());
            assertEquals(full.lines().get(0).data(), browser.find(".carried").getAttribute("d"));
        } finally {
            browser.command("Emulation.setScriptExecutionDisabled", Map.of("value", false));
        }
    }

    @Test
    void onPaperEachStepHasAPageAndTheTablesTheirOwn() throws IOException {
        browser.open(HTML, 1280, 800);
        browser.find(".next").click();
        List<String> pages = text(browser.print());
        List<Scene> scenes = MadeUpLesson.lesson().scenes();
        List<String> kinds = pages.stream().map(LessonForEveryoneTest::kind).toList();
        List<String> lesson = List.of("why", "steps", "steps", "steps", "steps", "steps", "carried", "outcome");
        assertEquals(
                Stream.of(lesson, lesson).flatMap(List::stream).toList(),
                kinds.stream().filter(kind -> !kind.equals("more")).toList(),
                pages.toString());
        int step = 0;
        for (String page : pages) {
            assertTrue(!page.contains("Previous") && !page.contains("Play"), page);
            if (kind(page).equals("steps")) {
                Scene scene = scenes.get(step % scenes.size());
                assertEquals(2, page.split("Step \\d+ of", -1).length, "one step: " + page);
                assertTrue(page.contains("Step " + (step % scenes.size() + 1) + " of 5"), page);
                assertTrue(page.contains(scene.caption()), page);
                step++;
            }
        }
    }

    /** What a printed page is of; what runs over is "more" of the page before. */
    private static String kind(String page) {
        return page.contains("Ordered for the")
                ? "why"
                : page.contains(" of 5. ")
                        ? "steps"
                        : page.contains("24 mm of 24 mm")
                                ? "carried"
                                : page.contains("What changed") ? "outcome" : "more";
    }

    /** Whatever the slider stands at: afterwards it stands there again. */
    @Test
    void onPaperTheFullAmountIsDrawn() throws IOException {
        browser.open(HTML, 1280, 800);
        String before = browser.find(".carried").getAttribute("d");
        text(browser.print());
        assertEquals(before, browser.find(".carried").getAttribute("d"));
    }

    /** Black lines on the lightest greys: a tint is read as paper, a line as ink, and lines are told apart by width and dashes, not by colour. */
    @Test
    void onABlackAndWhitePrintLinesStandOutFromTints() throws IOException {
        browser.open(HTML, 1280, 800);
        Path pdf = browser.print();
        int firstStep =
                text(pdf).stream().map(LessonForEveryoneTest::kind).toList().indexOf("steps");
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(firstStep, 150, ImageType.GRAY);
            int ink = 0;
            int tint = 0;
            int between = 0;
            for (int y = 0; y < page.getHeight(); y++) {
                for (int x = 0; x < page.getWidth(); x++) {
                    int grey = page.getRaster().getSample(x, y, 0);
                    ink += grey < 60 ? 1 : 0;
                    tint += grey > 190 && grey < 250 ? 1 : 0;
                    between += grey >= 60 && grey <= 190 ? 1 : 0;
                }
            }
            assertTrue(tint > 100_000, "the part is tinted: " + tint);
            assertTrue(ink > 5_000, "its lines are black: " + ink);
            assertTrue(between < ink, "nothing but the edges of lines is in between: " + between);
        }
        browser.command("Emulation.setEmulatedMedia", Map.of("media", "print"));
        try {
            assertEquals(
                    List.of("rgb(0, 0, 0)"),
                    browser.ask("return [...new Set([...document.querySelectorAll("
                            + "'.picture g:not(.layer-grid) > path:not([stroke=none])')]"
                            + ".map(path => getComputedStyle(path).stroke))]"));
        } finally {
            browser.command("Emulation.setEmulatedMedia", Map.of("media", ""));
        }
    }

    private static List<String> text(Path pdf) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            for (int i = 1; i <= document.getNumberOfPages(); i++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(i);
                stripper.setEndPage(i);
                pages.add(stripper.getText(document).replaceAll("\\s+", " "));
            }
        }
        return pages;
    }
}
