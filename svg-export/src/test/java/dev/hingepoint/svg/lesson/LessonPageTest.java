package dev.hingepoint.svg.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.pattern.Unit;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The page as text. What it does in a browser is tested there. */
class LessonPageTest {
    private static final String DOCTYPE = "<!DOCTYPE html>\n";

    @Test
    void thePageIsWellFormedAndHoldsEveryStepAndCaption() throws Exception {
        Lesson lesson = MadeUpLesson.lesson();
        Document page = parsed(LessonPage.html(List.of(lesson, lesson), Unit.MILLIMETRE));
        List<Element> steps = ofClass(page, "step");
        assertEquals(2 * lesson.scenes().size(), steps.size());
        for (int i = 0; i < steps.size(); i++) {
            Scene scene = lesson.scenes().get(i % lesson.scenes().size());
            assertTrue(steps.get(i).getTextContent().contains(scene.caption()), scene.caption());
            assertEquals(1, steps.get(i).getElementsByTagName("svg").getLength());
        }
    }

    @Test
    void idsAreUniqueAndEveryReferenceIsMet() throws Exception {
        Document page = parsed(LessonPage.html(List.of(MadeUpLesson.lesson(), MadeUpLesson.lesson()), Unit.MILLIMETRE));
        Set<String> ids = new HashSet<>();
        for (Element element : all(page)) {
            if (element.hasAttribute("id")) {
                assertTrue(ids.add(element.getAttribute("id")), element.getAttribute("id"));
            }
        }
        for (Element element : all(page)) {
            for (String reference : List.of("aria-labelledby", "for", "href")) {
                String to = element.getAttribute(reference).replace("#", "");
                assertTrue(to.isEmpty() || ids.contains(to), to);
            }
        }
    }

    /** Names come from strangers' files. */
    @Test
    void whateverAPieceIsCalledThePageStaysWhole() throws Exception {
        String name = "</script></style><!--<img src=x onerror=alert(1)> & \"it's\" ]]> \u0001 \uD83D\uDE00";
        String html = LessonPage.html(List.of(MadeUpLesson.named(name)), Unit.MILLIMETRE);
        Document page = parsed(html);
        assertEquals(0, page.getElementsByTagName("img").getLength());
        assertEquals(
                parsed(LessonPage.html(List.of(MadeUpLesson.lesson()), Unit.MILLIMETRE))
                        .getElementsByTagName("*")
                        .getLength(),
                page.getElementsByTagName("*").getLength());
        assertTrue(page.getDocumentElement().getTextContent().contains(name.replace('\u0001', '\uFFFD')));
        for (String end : List.of("</script", "</style", "<!--", "<img")) {
            assertEquals(
                    LessonPage.html(List.of(MadeUpLesson.lesson()), Unit.MILLIMETRE)
                            .split(end, -1)
                            .length,
                    html.split(end, -1).length,
                    end);
        }
    }

    @Test
    void whatIsToldOfAFrameCannotEndTheScriptItStandsIn() throws Exception {
        Lesson lesson = MadeUpLesson.telling("</script> & \uFFFF \"\\");
        String html = LessonPage.html(List.of(lesson), Unit.MILLIMETRE);
        assertEquals(3, html.split("</script>", -1).length, "one for the frames, one for the page");
        assertTrue(html.contains("\\u003c/script\\u003e \\u0026 \\uffff \\\"\\\\"), "escaped for JSON");
        parsed(html);
    }

    @Test
    void aPathThatManyFramesShareIsWrittenOnceForThem() {
        String html = LessonPage.html(List.of(MadeUpLesson.lesson()), Unit.MILLIMETRE);
        // as it was, as it is in the picture, and once for all thirteen frames
        assertEquals(3 + 1, html.split("M2500 20000L24000 20000", -1).length);
    }

    @Test
    void thePageAsksForNothingAndForbidsTheBrowserTo() {
        String html = LessonPage.html(List.of(MadeUpLesson.lesson()), Unit.MILLIMETRE);
        assertTrue(html.contains("content=\"default-src 'none'; style-src 'sha256-"));
        assertFalse(html.contains(" src="), "nothing is loaded");
        assertFalse(html.contains("url("), "nothing is loaded by the style sheet");
        assertFalse(html.contains("unsafe"), "nothing is let through");
        assertFalse(html.contains(" style=\""), "which the policy would not let through");
        assertEquals(
                Set.of("http://www.w3.org/2000/svg"),
                new HashSet<>(Stream.of(html.split("\""))
                        .filter(text -> text.startsWith("http"))
                        .toList()),
                "the name of SVG, and no address");
    }

    @Test
    void changesAreToldWithTheirSignsAndWhatDidNotChangeStandsApart() throws Exception {
        Document page = parsed(LessonPage.html(List.of(MadeUpLesson.lesson()), Unit.MILLIMETRE));
        assertEquals(
                List.of(
                        "Piece Edge Before After Difference",
                        "back centre back 400.0 mm 424.0 mm +24.0 mm",
                        "back side seam 300.3 mm 323.9 mm +23.7 mm",
                        "Level Before After Difference",
                        "hip 1000.0 mm 998.5 mm \u22121.5 mm",
                        "Piece Edge Length",
                        "back neckline 80.0 mm",
                        "back shoulder 128.3 mm",
                        "Level Length",
                        "bust 930.0 mm"),
                rows(page));
    }

    @Test
    void inInchesLengthsAreReadOffARulerAndNoChangeLooksLikeNone() throws Exception {
        Document page = parsed(LessonPage.html(List.of(MadeUpLesson.lesson()), Unit.INCH));
        List<String> rows = rows(page);
        // 24 mm is 15.1 sixteenths; 400 mm is 15 3/4 in (15.748) and 424 mm 16 11/16 in (16.693)
        assertTrue(rows.contains("back centre back 15 3/4 in 16 11/16 in +15/16 in"), rows.toString());
        // 1.5 mm is 0.94 of a sixteenth
        assertTrue(rows.contains("hip 39 3/8 in 39 5/16 in \u22121/16 in"), rows.toString());
        assertEquals("+ under 1/16 in", new Lengths(Unit.INCH).difference(0.4));
        assertEquals("\u22120.4 mm", new Lengths(Unit.MILLIMETRE).difference(-0.4));
        assertEquals("42.40 cm", new Lengths(Unit.CENTIMETRE).of(424));
    }

    /** A square is 1 cm of the pattern: 2 mm at 1:5. Counted by hand on a box of 60 by 100 mm. */
    @Test
    void theGridCountsCentimetresOrInches() {
        Lesson lesson = MadeUpLesson.lesson();
        assertEquals(
                31 + 51,
                new Lengths(Unit.MILLIMETRE)
                        .grid(
                                lesson.scenes().get(0).box(),
                                lesson.scenes().get(0).scale())
                        .strokes()
                        .size());
        // 5.08 mm: 11 fall across, 0 to 55.88, and 19 up and down, 0 to 96.52 and 20 with 0
        assertEquals(
                12 + 20,
                new Lengths(Unit.INCH)
                        .grid(
                                lesson.scenes().get(0).box(),
                                lesson.scenes().get(0).scale())
                        .strokes()
                        .size());
    }

    @Test
    void everyLayerThatIsOfferedCanBeHidden() throws Exception {
        String html = LessonPage.html(List.of(MadeUpLesson.lesson()), Unit.MILLIMETRE);
        List<String> offered = all(parsed(html)).stream()
                .map(element -> element.getAttribute("data-layer"))
                .filter(layer -> !layer.isEmpty())
                .distinct()
                .toList();
        assertEquals(7, offered.size(), offered.toString());
        offered.forEach(layer -> assertTrue(html.contains(".without-" + layer + " .picture .layer-" + layer), layer));
    }

    @Test
    void severalLessonsHaveContentsAndOneHasNone() throws Exception {
        Lesson lesson = MadeUpLesson.lesson();
        assertEquals(
                0,
                parsed(LessonPage.html(List.of(lesson), Unit.INCH))
                        .getElementsByTagName("nav")
                        .getLength());
        Document three = parsed(LessonPage.html(List.of(lesson, lesson, lesson), Unit.INCH));
        assertEquals(3, three.getElementsByTagName("a").getLength());
    }

    @Test
    void aPageNeedsALesson() {
        assertThrows(IllegalArgumentException.class, () -> LessonPage.html(List.of(), Unit.INCH));
    }

    @Test
    void thePageIsTheSameTextInAnyLocale() {
        Locale usual = Locale.getDefault();
        String html = LessonPage.html(List.of(MadeUpLesson.lesson()), Unit.MILLIMETRE);
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertEquals(html, LessonPage.html(List.of(MadeUpLesson.lesson()), Unit.MILLIMETRE));
        } finally {
            Locale.setDefault(usual);
        }
    }

    private static List<String> rows(Document page) {
        return elements(page.getElementsByTagName("tr")).stream()
                .map(row -> String.join(
                        " ",
                        elements(row.getChildNodes()).stream()
                                .map(Element::getTextContent)
                                .toList()))
                .toList();
    }

    private static List<Element> ofClass(Document page, String name) {
        return all(page).stream()
                .filter(element ->
                        List.of(element.getAttribute("class").split(" ")).contains(name))
                .toList();
    }

    private static List<Element> all(Document page) {
        return elements(page.getElementsByTagName("*"));
    }

    private static List<Element> elements(NodeList nodes) {
        return IntStream.range(0, nodes.getLength())
                .mapToObj(nodes::item)
                .filter(Element.class::isInstance)
                .map(Element.class::cast)
                .toList();
    }

    /** As XML, without the document type, which a hardened parser does not read. */
    private static Document parsed(String html) throws Exception {
        assertTrue(html.startsWith(DOCTYPE));
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(html.substring(DOCTYPE.length()))));
    }
}
