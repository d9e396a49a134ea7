package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.file.PatternFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code alter} as a person calls it, and what is done with what it wrote. */
class AlterCommandTest extends CalledProgram {
    @Test
    void altersWalksAndPrintsTheConcertDress() throws IOException {
        assertEquals(
                0,
                run("alter", PATTERNS.resolve("concert-order.yaml").toString(), "--out", folder.toString()),
                err.toString());
        assertTrue(out.toString().contains("toile"));
        Pattern before = PatternFiles.read(PATTERNS.resolve("larkfield.yaml"));
        Pattern after = PatternFiles.read(folder.resolve("altered.yaml"));
        for (Piece piece : before.nest()) {
            Piece now = after.nest().stream()
                    .filter(piece::isSamePieceAs)
                    .findFirst()
                    .orElseThrow();
            boolean isAltered = piece.size().equals("40") && !piece.name().equals("sleeve");
            assertEquals(isAltered, !now.equals(piece), piece.toString());
        }
        Draft old = before.in("40");
        Draft now = after.in("40");
        assertEquals(
                old.piece("back").sewnLength("centre back") - 12,
                now.piece("back").sewnLength("centre back"),
                0.3);
        assertEquals(before.in("44").girth("hip"), now.girth("hip"), 0.5);
        assertEquals(old.girth("bust") + 40, now.girth("bust"), 1);
        assertTrue(Files.readString(folder.resolve("ledger.json")).contains("\"amounts\": {\"wedge\": 12"));

        assertEquals(0, run("walk", folder.resolve("altered.yaml").toString(), "--size", "40"), out.toString());
        assertEquals(
                0, run("print", folder.resolve("altered.yaml").toString(), "--size", "40", "--out", folder.toString()));
        assertTrue(Files.exists(folder.resolve("pages/0.1.svg")));
        assertTrue(Files.exists(folder.resolve("map.svg")));
        assertEquals("", err.toString());
    }

    /** Made up, read back, walked, printed, altered again; the other sizes stay as they were drawn. */
    @Test
    void makesUpTheConcertDress() throws IOException {
        Path order = order("  - sway back: {wedge: 12 mm}\nmake:\n  - facing: {edge: neckline, depth: 50 mm}\n");
        Path made = folder.resolve("made");
        assertEquals(0, run("alter", order.toString(), "--out", made.toString()), err.toString());
        assertTrue(out.toString().contains("facing"), out.toString());
        String ledger = Files.readString(made.resolve("ledger.json"));
        assertTrue(ledger.contains("\"make\": [\n   {\"name\": \"facing\""), ledger);
        String card = made.resolve("altered.yaml").toString();
        assertEquals(0, run("walk", card, "--size", "40"), out.toString());
        assertTrue(out.toString().contains("front/neckline to front neckline facing/joined edge"), out.toString());
        assertEquals(0, run("walk", card, "--size", "42"), out.toString());
        assertEquals(0, run("print", card, "--size", "40", "--out", made.toString()), err.toString());
        assertTrue(Files.readString(made.resolve("map.svg")).contains("back neckline facing"));
        Path again = Files.writeString(
                made.resolve("again.yaml"),
                "pattern: altered.yaml\nsize: \"40\"\nalterations:\n  - hip blend: {hip: \"42\"}\n");
        Path twice = folder.resolve("twice");
        assertEquals(0, run("alter", again.toString(), "--out", twice.toString()), err.toString());
        assertEquals(0, run("walk", twice.resolve("altered.yaml").toString(), "--size", "40"), out.toString());
        assertTrue(Files.readString(twice.resolve("altered.yaml")).contains("- facing: {edge: neckline"));
        Files.writeString(again, Files.readString(again).replace("size: \"40\"", "size: \"42\""));
        assertEquals(2, run("alter", again.toString(), "--out", twice.toString()));
        assertTrue(err.toString().contains("size 40 of this pattern is made up in its own way"), err.toString());
    }

    /** The README's example: every seam walks, and every pair of notches meets. */
    @Test
    void makesUpTheConcertDressWithEveryChoice() throws IOException {
        Path order = order("""
                  - full bust: {spread: 20 mm}
                  - hip blend: {hip: "44"}
                make:
                  - sleeveless: {finish: facing, depth: 40 mm}
                  - binding: {edge: neckline, width: 8 mm, cloth: contrast}
                  - yoke: {piece: both, from: armhole 60 mm, to: centre 90 mm, curve: 12 mm, cloth: contrast}
                  - finish: {edge: side seam, as: French}
                  - finish: {edge: hem, as: narrow}
                  - cloth: {piece: back, as: lining}
                """);
        Path made = folder.resolve("made");
        assertEquals(0, run("alter", order.toString(), "--out", made.toString()), err.toString());
        out.getBuffer().setLength(0);
        String card = made.resolve("altered.yaml").toString();
        assertEquals(0, run("walk", card, "--size", "40"), out.toString());
        assertFalse(out.toString().contains("miss each other"), out.toString());
        assertTrue(out.toString().contains("front/yoke seam to front yoke/yoke seam"), out.toString());
        assertFalse(out.toString().contains("sleeve"), out.toString());
        assertEquals(0, run("print", card, "--size", "40", "--out", made.toString()), err.toString());
        String pages;
        try (Stream<Path> files = Files.list(made.resolve("pages"))) {
            pages = files.map(AlterCommandTest::text).collect(Collectors.joining());
        }
        for (String says : new String[] {"FRONT YOKE", "trim to 3 mm", "understitch", "cut 1 pair lining"}) {
            assertTrue(pages.contains(says), says);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    @Test
    void theSameOrderGivesTheSameBytes() throws IOException {
        Path one = folder.resolve("one");
        Path other = folder.resolve("other");
        run("alter", PATTERNS.resolve("concert-order.yaml").toString(), "--out", one.toString());
        run("alter", PATTERNS.resolve("concert-order.yaml").toString(), "--out", other.toString());
        for (String name : new String[] {"altered.svg", "altered.yaml", "ledger.json"}) {
            assertEquals(Files.readString(one.resolve(name)), Files.readString(other.resolve(name)));
        }
    }

    /** Written, read and written again, a pattern is the same to the last byte, whatever was done to it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "  - full bust: {spread: 20 mm}\n  - hip blend: {hip: \"44\"}\n  - sway back: {wedge: 12 mm}",
                "  - sway back: {wedge: 23.7 mm, above: 31 mm}",
                "  - full bust: {spread: -7.3 mm}",
                "  - hip blend: {waist: +17 mm, hip: -13 mm}",
                "  - sway back: {wedge: 9 mm, method: shoulder}",
                "[]"
            })
    void whatIsWrittenIsReadAndWrittenAlike(String alterations) throws IOException {
        Path order = order(alterations + "\n");
        Files.writeString(order, Files.readString(order).replace("alterations:\n[]", "alterations: []"));
        assertEquals(
                0, run("alter", order.toString(), "--out", folder.resolve("one").toString()), err.toString());
        Path card = folder.resolve("one/altered.yaml");
        Map<String, String> again = PatternFiles.contents(PatternFiles.read(card), "altered");
        again.forEach((name, contents) -> {
            List<String> written = read(folder.resolve("one").resolve(name));
            List<String> rewritten = contents.lines().toList();
            assertEquals(written.size(), rewritten.size());
            for (int i = 0; i < written.size(); i++) {
                assertEquals(written.get(i), rewritten.get(i), name + ", line " + (i + 1));
            }
        });
    }

    /** A pattern drawn upside down, on its head's side, or on its other side is altered as the upright one is, and its pages print it upright. */
    @ParameterizedTest
    @ValueSource(doubles = {180, 130, -100, 91})
    void aPatternThatLiesOtherwiseIsAlteredAlike(double degrees) throws IOException {
        Path order =
                order("  - full bust: {spread: 20 mm}\n  - hip blend: {hip: \"44\"}\n  - sway back: {wedge: 12 mm}\n");
        assertEquals(
                0,
                run(
                        "alter",
                        order.toString(),
                        "--out",
                        folder.resolve("upright").toString()),
                err.toString());
        Path drawing = folder.resolve("larkfield.svg");
        Files.writeString(
                drawing, Files.readString(drawing).replace("<g id", "<g transform=\"rotate(" + degrees + ")\" id"));
        assertEquals(
                0,
                run("alter", order.toString(), "--out", folder.resolve("turned").toString()),
                err.toString());
        Draft upright =
                PatternFiles.read(folder.resolve("upright/altered.yaml")).in("40");
        Path card = folder.resolve("turned/altered.yaml");
        Draft turned = PatternFiles.read(card).in("40");
        for (Piece piece : upright.pieces()) {
            Piece other = turned.piece(piece.name());
            piece.edges()
                    .forEach(edge -> assertEquals(
                            piece.sewnLength(edge.name()), other.sewnLength(edge.name()), 2e-3, edge.name()));
            assertEquals(piece.area(), other.area(), 1);
        }
        for (String level : upright.levels()) {
            assertEquals(upright.girth(level), turned.girth(level), 2e-3, level);
        }
        assertEquals(0, run("print", card.toString(), "--size", "40", "--out", folder.toString()), err.toString());
    }

    private static List<String> read(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    @Test
    void anAlteredPatternCanBeAlteredAgain() throws IOException {
        run("alter", PATTERNS.resolve("concert-order.yaml").toString(), "--out", folder.toString());
        Path again = Files.writeString(
                folder.resolve("again.yaml"),
                "pattern: altered.yaml\nsize: \"40\"\nalterations:\n  - hip blend: {waist: +20 mm}\n");
        assertEquals(
                0,
                run("alter", again.toString(), "--out", folder.resolve("twice").toString()),
                err.toString());
        var altered = PatternFiles.read(folder.resolve("twice/altered.yaml"))
                .card()
                .altered()
                .orElseThrow();
        assertEquals(4, altered.alterations().size());
    }

    /** Refused: exit 2, one line that says why, nothing written. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "  - sway back: {wedge: 3000 mm} | largest",
                "  - sway back: {wedge: -12 mm} | more than 0",
                "  - sway back: {wedge: about a thumb} | length",
                "  - sway back: {depth: 12 mm} | option",
                "  - sway back: {wedge: 12 mm, at: knee} | level",
                "  - full bust: {spread: 20 mm, girth: +40 mm} | one amount",
                "  - full bust: {spread: -200 mm} | largest",
                "  - full bust: {spread: 20 mm, dart: ease} | use dart: side",
                "  - full bust: {spread: 900 mm} | largest",
                "  - hip blend: {hip: 44} | quotes",
                "  - hip blend: {hip: \"99\"} | size",
                "  - hip blend: {bust: +20 mm} | size only",
                "  - hip blend: {} | amount",
                "  - square shoulders: {by: -10 mm} | sloping shoulders",
                "  - sloping shoulders: {by: 90 mm} | largest",
                "  - narrow shoulders: {by: 300 mm} | largest",
                "  - forward shoulders: {by: 400 mm} | largest",
                "  - round back: {by: 12 mm, neck: dart} | fold",
                "  - round back: {by: 12 mm, at: shoulder blade} | level",
                "  - armhole: {lower: 10 mm, raise: 10 mm} | one amount",
                "  - armhole: {lower: 90 mm} | largest",
                "  - full upper arm: {by: 900 mm} | largest",
                "  - sleeve: {length: 30 mm} | +30 mm",
                "  - tuck: {by: 3 mm} | no alteration",
                "  - full bust | list of names",
                "'' | alterations"
            })
    void whatCannotBeDoneIsRefused(String alterations, String says) throws IOException {
        Path to = folder.resolve("out");
        int code = run("alter", order(alterations + "\n").toString(), "--out", to.toString());
        assertEquals(2, code, out.toString());
        assertEquals(1, err.toString().lines().count(), err.toString());
        assertTrue(err.toString().startsWith("order.yaml: "), err.toString());
        assertTrue(err.toString().contains(says), err.toString());
        assertFalse(err.toString().contains("Exception"), err.toString());
        assertFalse(Files.exists(to));
        assertEquals("", out.toString());
    }

    @Test
    void withoutAnApexThereIsNoFullBust() throws IOException {
        Path order = order("  - full bust: {spread: 20 mm}\n");
        Path drawing = folder.resolve("larkfield.svg");
        Files.writeString(
                drawing, Files.readString(drawing).replace("data-name=\"bust apex\"", "data-name=\"pocket\""));
        assertEquals(
                2, run("alter", order.toString(), "--out", folder.resolve("out").toString()));
        assertTrue(err.toString().contains("bust apex"), err.toString());
    }

    /** Apexes where no fitter would mark one: off the paper, at the hem, on the centre line, on the armhole. */
    @ParameterizedTest
    @CsvSource({"-400, 268", "94, 1070", "0, 268", "94, 20", "255, 268", "94, 5000", "160, 130"})
    void anApexOutOfPlaceIsRefusedOrWorks(double x, double y) throws IOException {
        Path order = order("  - full bust: {spread: 20 mm}\n");
        Path drawing = folder.resolve("larkfield.svg");
        String moved = Files.readString(drawing)
                .replaceAll(
                        "(data-name=\"bust apex\") cx=\"[0-9.]+\" cy=\"[0-9.]+\"",
                        "$1 cx=\"" + x + "\" cy=\"" + y + "\"");
        Files.writeString(drawing, moved);
        int code = run("alter", order.toString(), "--out", folder.resolve("out").toString());
        assertEquals(code == 2 ? 1 : 0, err.toString().lines().count(), err.toString());
        assertEquals(code == 2, !Files.exists(folder.resolve("out")), err.toString());
        assertFalse(err.toString().contains("our mistake"), err.toString());
    }

    @Test
    void onAFoldTheSwayBackGoesToTheShoulderAndTellsOfTheNeckline() throws IOException {
        Path order = order("  - sway back: {wedge: 12 mm}\n");
        Files.writeString(order, Files.readString(order).replace("larkfield.yaml", "shell.yaml"));
        assertEquals(
                0, run("alter", order.toString(), "--out", folder.resolve("out").toString()), err.toString());
        assertTrue(out.toString().contains("neckline of the back"), out.toString());
        assertTrue(out.toString().contains("neck end of the shoulder"), out.toString());
    }

    @Test
    void nothingIsLeftBesideWhatIsWritten() throws IOException {
        run("alter", PATTERNS.resolve("concert-order.yaml").toString(), "--out", folder.toString());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(3, files.count());
        }
    }
}
