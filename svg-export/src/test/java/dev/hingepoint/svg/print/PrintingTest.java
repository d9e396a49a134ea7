package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.svg.file.Drawings;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Clipping;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.SvgPage;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Polygon;

class PrintingTest {
    @TempDir
    private Path folder;

    private Draft draft;

    @BeforeEach
    void readTheTunic() {
        Path card = Drawings.write(folder, UnaryOperator.identity(), UnaryOperator.identity());
        draft = PatternFiles.read(card).in("40");
    }

    private Printed printed(String paper) {
        return Printing.print(draft, PrintOptions.of(Paper.named(paper)).forWhom("Ida", "25 November"));
    }

    @ParameterizedTest
    @CsvSource({"-1, 10", "30, 10", "NaN, 10", "10, 6", "10, -3", "10, 300", "10, NaN"})
    void marginsAndOverlapsThatLeaveNoRoomAreRefused(double margin, double overlap) {
        Paper paper = Paper.A4;
        Refusal refusal = assertThrows(
                Refusal.class, () -> PrintOptions.of(paper).withMargin(margin).withOverlap(overlap));
        assertTrue(refusal.getMessage().matches("(a margin|the overlap).* mm.*"), refusal.getMessage());
        assertEquals(1, refusal.getMessage().lines().count());
    }

    @ParameterizedTest
    @ValueSource(strings = {"a4", "letter"})
    void nothingIsDrawnOutsideThePrintableArea(String paper) {
        for (Page page : printed(paper).all()) {
            Box printable =
                    new Box(10, 10, page.paper().width() - 10, page.paper().height() - 10).grownBy(1e-6);
            for (Stroke stroke : page.drawn().strokes()) {
                stroke.points().forEach(point -> assertEquals(0, printable.distanceTo(point)));
            }
        }
    }

    /** A word in the middle of a wide piece, on a page that no line touches, is not lost. */
    @Test
    void everyWordOfTheSheetIsOnSomePage() {
        for (String paper : List.of("a4", "letter", "a2")) {
            Printed printed = printed(paper);
            List<String> onPages = printed.pages().stream()
                    .flatMap(page -> page.drawn().texts().stream())
                    .map(Text::words)
                    .toList();
            printed.sheet().texts().forEach(text -> assertTrue(onPages.contains(text.words()), text.words()));
        }
        Drawn lonely = new Drawn(List.of(), List.of(new Text("alone", new Point(500, 700), 5, 0)));
        assertEquals(
                1,
                Tiling.pages("t", lonely, List.of(), PrintOptions.of(Paper.A4)).size());
    }

    /** The project's sources, derived: max(1, ceil((W - o) / (p - o))) pages for a width W, a printable width p and an overlap o. */
    @ParameterizedTest
    @ValueSource(doubles = {50, 189, 191, 369, 371, 1000, 1234.5})
    void asManyPagesAsTheWidthAsksFor(double width) {
        PrintOptions options = PrintOptions.of(Paper.A4);
        Drawn line = new Drawn(List.of(Stroke.of(Style.CUTTING, new Point(0, 5), new Point(width, 5))), List.of());
        int expected = (int) Math.max(1, Math.ceil((width - options.overlap()) / (190 - options.overlap())));
        assertEquals(expected, Tiling.pages("t", line, List.of(), options).size());
    }

    @Test
    void noPieceLiesOnAnother() {
        List<Polygon> pieces = printed("a4").pieces().stream()
                .map(piece -> JtsBridge.polygon(piece.rings().get(0)))
                .toList();
        assertEquals(2, pieces.size());
        assertFalse(pieces.get(0).intersects(pieces.get(1)));
    }

    /** Labels lie inside their piece, and touch neither a line nor each other. */
    @Test
    void noWordTouchesALineOrAnother() {
        PieceDrawing front =
                PieceDrawing.of(List.of(draft), printed("a4").options()).get(0);
        Drawn drawn = front.drawn(List.of()).drawn();
        List<Polygon> rooms = drawn.texts().stream().map(ClearWords::room).toList();
        assertTrue(rooms.size() >= 10, "the label and the lines' names");
        Polygon cut = JtsBridge.polygon(front.cutting().get(0));
        for (int i = 0; i < rooms.size(); i++) {
            assertTrue(cut.contains(rooms.get(i)));
            for (Stroke stroke : drawn.strokes()) {
                assertFalse(
                        rooms.get(i)
                                .intersects(JtsBridge.lineString(dev.hingepoint.curve.Path.through(stroke.points()))),
                        drawn.texts().get(i).words());
            }
            for (int k = 0; k < i; k++) {
                assertFalse(
                        rooms.get(i).intersects(rooms.get(k)),
                        drawn.texts().get(i).words());
            }
        }
    }

    @Test
    void theFirstPageHasBothSquaresAndSaysWhatToDo() {
        Page first = printed("a4").all().get(0);
        assertEquals("0.1", first.name());
        List<Stroke> squares = first.drawn().strokes().stream()
                .filter(s -> s.style() == Style.SQUARE)
                .toList();
        assertEquals(2, squares.size());
        assertEquals(100, squares.get(0).bounds().width(), 1e-9);
        assertEquals(100, squares.get(0).bounds().height(), 1e-9);
        assertEquals(101.6, squares.get(1).bounds().width(), 1e-9);
        String words =
                String.join(" ", first.drawn().texts().stream().map(Text::words).toList());
        assertTrue(words.contains("Print this page alone first"), words);
        assertTrue(words.contains("toile"), words);
    }

    @Test
    void everyPieceSaysWhatItIs() {
        String words = String.join(
                "|", printed("a4").sheet().texts().stream().map(Text::words).toList());
        for (String expected : List.of(
                "Test tunic",
                "FRONT  1 of 2",
                "BACK  2 of 2",
                "for Ida, 25 November",
                "size 40",
                "cut 1 on fold",
                "cut 1 pair",
                "30 mm: hem",
                "none: centre front",
                "place on fold",
                "waist",
                "bust apex",
                "hip")) {
            assertTrue(words.contains(expected), expected + " is not in " + words);
        }
    }

    @Test
    void pagesAreTrueToScaleAndWellFormed() throws Exception {
        Map<String, String> files = Printing.contents(printed("a4"));
        assertTrue(files.containsKey("map.svg"));
        DocumentBuilderFactory strict = DocumentBuilderFactory.newInstance();
        strict.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        for (Map.Entry<String, String> file : files.entrySet()) {
            var root = strict.newDocumentBuilder()
                    .parse(new ByteArrayInputStream(file.getValue().getBytes(StandardCharsets.UTF_8)))
                    .getDocumentElement();
            assertEquals("210mm", root.getAttribute("width"), file.getKey());
            assertEquals("297mm", root.getAttribute("height"));
            assertEquals("0 0 210 297", root.getAttribute("viewBox"));
            assertTrue(file.getValue().contains("@page{size:210mm 297mm;margin:0}"));
        }
    }

    @Test
    void theSameBytesInAnyLocale() {
        Map<String, String> expected = Printing.contents(printed("a4"));
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG", "de")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertEquals(expected, Printing.contents(printed("a4")));
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    /** The widths in the font's own table: Liberation Sans is as wide as Arial, whose digits are 1139 of 2048 units and "A" 1366. */
    @Test
    void textIsAsWideAsItsFontSetsIt() {
        assertEquals(1139 / 2048.0 * 10, Type.width("7", 10), 1e-9);
        assertEquals((1366 + 2 * 1139) / 2048.0, Type.width("A42", 1), 1e-9);
    }

    /** A dash that a page joint cuts goes on where it was: neighbouring pages lie over each other without a break. */
    @Test
    void dashesRunOnFromPageToPage() {
        Stroke line = Stroke.of(Style.STITCHING, new Point(0, 0), new Point(30, 40), new Point(130, 40));
        List<Stroke> parts = Clipping.clipped(line, new Box(6, 0, 100, 100));
        assertEquals(1, parts.size());
        assertEquals(10, parts.get(0).before(), 1e-9);
        Stroke right = Clipping.clipped(parts.get(0), new Box(40, 0, 100, 100)).get(0);
        assertEquals(60, right.before(), 1e-9);
        String svg = SvgPage.write(100, 100, new Drawn(parts, List.of()), "test");
        assertTrue(svg.contains("stroke-dasharray=\"4 2\" stroke-dashoffset=\"4\""), svg);
    }
}
