package dev.hingepoint.svg.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Wrong input of every kind is refused in one line that names the file and the reason. */
class WrongInputTest {
    @TempDir
    private Path folder;

    static Stream<Arguments> spoiltDrawings() {
        return Stream.of(
                spoilt("a gap", "M75 0 L190 45", "M75 3 L190 45", "apart"),
                spoilt(
                        "a crossing outline",
                        "M190 45 C165 120 160 200 220 215",
                        "M190 45 L-50 500 L220 215",
                        "crosses"),
                spoilt("not a number", "M75 0 L190 45", "M75 0 LNaN 45", "number"),
                spoilt("infinite", "M75 0 L190 45", "M75 0 L1e999 45", "number"),
                spoilt("no scale", "width=\"900mm\" height=\"1100mm\"", "", "scale"),
                spoilt("px scale", "width=\"900mm\" height=\"1100mm\"", "width=\"900px\" height=\"1100\"", "scale"),
                spoilt(
                        "per cent scale",
                        "width=\"900mm\" height=\"1100mm\"",
                        "width=\"100%\" height=\"100%\"",
                        "scale"),
                spoilt("a negative width", "width=\"900mm\"", "width=\"-900mm\"", "not -900mm"),
                spoilt("no height", "height=\"1100mm\"", "height=\"0mm\"", "not 0mm"),
                spoilt("a width beyond all", "width=\"900mm\"", "width=\"9e12cm\"", "not 9e12cm"),
                spoilt("nothing left", "<g id=\"front-40\"", "<g transform=\"scale(0)\" id=\"front-40\"", "transform"),
                spoilt(
                        "entities in another encoding",
                        "<svg ",
                        "<?xml version=\"1.0\" encoding=\"ISO-8859-1\"?><!DOCTYPE svg [<!ENTITY x \"y\">]><svg ",
                        "entities"),
                spoilt(
                        "no such encoding",
                        "<svg ",
                        "<?xml version=\"1.0\" encoding=\"utf-99\"?><svg ",
                        "not text in utf-99"),
                spoilt("another form", "data-form=\"1\"", "data-form=\"2\"", "form"),
                spoilt("no svg", "<svg xmlns", "<svg xmlns:x", "svg"),
                spoilt("cut short", "</svg>", "", "XML"),
                spoilt("an unknown kind", "data-kind=\"hem\"", "data-kind=\"cuff\"", "data-kind"),
                spoilt("an unknown mark", "data-mark=\"grain\"", "data-mark=\"arrow\"", "data-mark"),
                spoilt(
                        "an unnamed level",
                        "data-mark=\"level\" data-name=\"waist\"",
                        "data-mark=\"level\"",
                        "data-name"),
                spoilt("a level in the air", "M0 400 L200 400", "M0 400 L100 400", "level"),
                spoilt("two edges of one name", "data-edge=\"shoulder\"", "data-edge=\"neckline\"", "name"),
                spoilt("a piece twice", "data-size=\"42\"", "data-size=\"40\"", "twice"),
                spoilt("no cut", "data-cut=\"1 on fold\"", "", "cut"),
                spoilt("cut nonsense", "data-cut=\"1 on fold\"", "data-cut=\"often\"", "cut"),
                spoilt("a closed edge", "M75 0 L190 45", "M75 0 L190 45 Z", "open"),
                spoilt("an edge of two lines", "M75 0 L190 45", "M75 0 L190 45 M0 0 L5 5", "one line"),
                spoilt("an edge of no piece", "</svg>", "<path data-edge=\"x\" d=\"M0 0L1 1\"/></svg>", "piece"),
                spoilt(
                        "a bad transform",
                        "<g id=\"front-40\"",
                        "<g transform=\"spin(3)\" id=\"front-40\"",
                        "transform"),
                spoilt(
                        "an outside entity",
                        "<svg ",
                        "<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><svg ",
                        "entities"),
                spoilt(
                        "entities that multiply",
                        "<svg ",
                        "<!DOCTYPE svg [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;&a;&a;\">]><svg ",
                        "entities"));
    }

    private static Arguments spoilt(String what, String from, String to, String says) {
        return Arguments.of(what, from, to, says);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spoiltDrawings")
    void aSpoiltDrawingIsRefused(String what, String from, String to, String says) {
        Path card = Drawings.write(
                folder,
                drawing -> {
                    String spoilt = drawing.replace(from, to);
                    assertFalse(spoilt.equals(drawing), "nothing was spoilt");
                    return spoilt;
                },
                UnaryOperator.identity());
        requireOneLine("tunic.svg", says, assertThrows(Refusal.class, () -> PatternFiles.read(card)));
    }

    static Stream<Arguments> spoiltCards() {
        return Stream.of(
                spoilt("no pattern", "pattern: Test tunic\n", "", "pattern"),
                spoilt("no drawing", "drawing: tunic.svg\n", "", "drawing"),
                spoilt("another form", "form: 1", "form: 7", "form"),
                spoilt("a drawing that climbs out", "drawing: tunic.svg", "drawing: ../tunic.svg", "folder"),
                spoilt("an absolute drawing", "drawing: tunic.svg", "drawing: /etc/passwd", "folder"),
                spoilt("a drawing that is not there", "drawing: tunic.svg", "drawing: other.svg", "no such file"),
                spoilt("a seam without a side", "to: back/side seam", "too: back/side seam", "too"),
                spoilt("a seam of no edge", "join: front/side seam", "join: front", "edge"),
                spoilt("an ease that runs backwards", "0..6 mm", "6..0 mm", "ease"),
                spoilt("an allowance of no length", "default: 10 mm", "default: some", "length"),
                spoilt("a negative allowance", "default: 10 mm", "default: -10 mm", "between"),
                spoilt(
                        "an allowance of an edge not drawn",
                        "hem: 30 mm",
                        "arm hole: 30 mm",
                        "no edge 'arm hole'; there are neckline, shoulder, armhole"),
                spoilt(
                        "an allowance of a piece's edge not drawn",
                        "back/centre back: 15",
                        "back/centre front: 15",
                        "back: there is no edge 'centre front'; there are neckline"),
                spoilt(
                        "an allowance of a piece not drawn",
                        "back/centre back: 15",
                        "bak/centre back: 15",
                        "no piece 'bak'; there are front, back"),
                spoilt(
                        "a base size not drawn",
                        "base size: \"40\"",
                        "base size: \"41\"",
                        "no size '41'; there are 40, 42"),
                spoilt(
                        "a seam of an edge not drawn",
                        "to: back/side seam",
                        "to: back/inseam",
                        "back: there is no edge 'inseam'"),
                spoilt("a seam of a piece not drawn", "to: back/side seam", "to: rear/side seam", "no piece 'rear'"),
                spoilt(
                        "a seam joined to itself",
                        "to: back/side seam",
                        "to: front/side seam",
                        "front/side seam is joined to itself"),
                spoilt(
                        "a seam that names an edge twice",
                        "to: back/side seam",
                        "to: [back/side seam, back/side seam]",
                        "joined to itself"),
                spoilt("a seam of nothing", "to: back/side seam", "to: [~]", "names no edge"),
                spoilt(
                        "an opening of an edge not drawn",
                        "openings: {back/centre back",
                        "openings: {back/centre",
                        "back: there is no edge 'centre'"),
                spoilt(
                        "an opening from elsewhere",
                        "from: neckline",
                        "from: armhole",
                        "its ends are at hem and neckline"),
                spoilt(
                        "an opening longer than its edge",
                        "length: 550 mm",
                        "length: 1550 mm",
                        "open for 1550 mm, since it is 980 mm long in size 40"),
                spoilt("an opening of nothing", "length: 550 mm", "length: 0 mm", "open for 0 mm"),
                spoilt("a stretch without per cent", "down: 5 %", "down: 5", "per cent"),
                spoilt("a key twice", "form: 1", "form: 1\nform: 1", "form is given twice"),
                spoilt("no mapping", Drawings.CARD, "- a\n- b\n", "names and values"),
                spoilt("no YAML", "seams:", "seams: [", "bracket"),
                spoilt("no end of brackets", "form: 1", "form: 1\nx: " + "[".repeat(200_000), "YAML"),
                spoilt(
                        "a card that constructs objects",
                        "pattern: Test tunic",
                        "pattern: !!javax.script.ScriptEngineManager [x]",
                        "YAML"),
                spoilt("aliases that multiply", "form: 1", bomb(), "YAML"));
    }

    private static String bomb() {
        StringBuilder yaml = new StringBuilder("form: 1\na0: &a0 [x, x]\n");
        for (int i = 1; i < 30; i++) {
            yaml.append("a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
        }
        return yaml.toString();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spoiltCards")
    void aSpoiltCardIsRefused(String what, String from, String to, String says) {
        Path card = Drawings.write(folder, UnaryOperator.identity(), text -> {
            String spoilt = text.replace(from, to);
            assertFalse(spoilt.equals(text), "nothing was spoilt");
            return spoilt;
        });
        Refusal refusal = assertThrows(Refusal.class, () -> PatternFiles.read(card));
        requireOneLine("", says, refusal);
    }

    private static void requireOneLine(String file, String says, Refusal refusal) {
        String message = refusal.getMessage();
        assertTrue(message.startsWith(file), message);
        assertTrue(message.contains(says), message);
        assertFalse(message.matches(".*(null|[A-Z][a-z]+\\[|Exception|java|NaN|vector).*"), message);
        assertEquals(1, message.lines().count(), message);
        assertTrue(refusal.reason().where().file().isPresent(), message);
    }

    /** Bytes that are no text are told of in the refusal, and nowhere else. */
    @Test
    void bytesThatAreNoTextAreRefusedInOneLine() throws Exception {
        Path card = Drawings.write(folder, UnaryOperator.identity(), UnaryOperator.identity());
        Path drawing = folder.resolve("tunic.svg");
        byte[] text = Files.readAllBytes(drawing);
        text[text.length / 2] = (byte) 0xFF;
        Files.write(drawing, text);
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        PrintStream before = System.err;
        Refusal refusal;
        try {
            System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
            refusal = assertThrows(Refusal.class, () -> PatternFiles.read(card));
        } finally {
            System.setErr(before);
        }
        requireOneLine("tunic.svg", "not text in UTF-8", refusal);
        assertEquals("", printed.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aDrawingInAnotherEncodingIsRead() throws Exception {
        Path card = Drawings.write(folder, UnaryOperator.identity(), UnaryOperator.identity());
        var expected = PatternFiles.read(card);
        Path drawing = folder.resolve("tunic.svg");
        String text = Files.readString(drawing);
        for (String encoding : new String[] {"UTF-16", "UTF-16LE", "ISO-8859-1", "UTF-8"}) {
            String declared = "<?xml version=\"1.0\" encoding=\"" + encoding + "\"?>" + text;
            Files.write(drawing, (encoding.equals("UTF-16LE") ? "\uFEFF" + declared : declared).getBytes(encoding));
            assertEquals(expected, PatternFiles.read(card), encoding);
        }
        Files.writeString(drawing, "\uFEFF" + text);
        assertEquals(expected, PatternFiles.read(card));
    }

    @Test
    void aHarmlessDocumentTypeIsNotLoaded() {
        Path card = Drawings.write(
                folder,
                drawing -> "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" \"http://localhost:1/svg11.dtd\">\n"
                        + drawing,
                UnaryOperator.identity());
        assertEquals(4, PatternFiles.read(card).nest().size());
    }

    @Test
    void whatIsNotThePatternsIsCountedAndLeftAlone() {
        Path card = Drawings.write(
                folder,
                drawing -> drawing.replace("</svg>", "<rect/><g><text>hello</text></g></svg>"),
                text -> text + "colour: blue\n");
        var notes = PatternFiles.readWithNotes(card).notes();
        assertTrue(notes.get(0).contains("2 drawn elements"), notes.toString());
        assertTrue(notes.get(1).contains("colour"), notes.toString());
    }

    @Test
    void aFolderThatCannotBeWrittenLeavesNothing() throws Exception {
        Path card = Drawings.write(folder, UnaryOperator.identity(), UnaryOperator.identity());
        Path file = Files.writeString(folder.resolve("taken"), "x");
        var pattern = PatternFiles.read(card);
        assertThrows(Refusal.class, () -> PatternFiles.write(pattern, file, "altered"));
        assertEquals("x", Files.readString(file));
    }
}
