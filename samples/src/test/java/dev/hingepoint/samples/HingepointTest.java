package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.file.PatternFiles;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The program as a person calls it: exit codes, what it prints, what it writes. */
class HingepointTest {
    private static final Path PATTERNS = Path.of("patterns");

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return Hingepoint.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
    }

    private Path order(String alterations) throws IOException {
        for (String name : new String[] {"larkfield.svg", "larkfield.yaml", "shell.svg", "shell.yaml"}) {
            Files.copy(PATTERNS.resolve(name), folder.resolve(name));
        }
        return Files.writeString(
                folder.resolve("order.yaml"), "pattern: larkfield.yaml\nsize: \"40\"\nalterations:\n" + alterations);
    }

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
            pages = files.map(HingepointTest::text).collect(Collectors.joining());
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
    void aSeamThatNoLongerMatchesIsExit1() throws IOException {
        order("");
        Path drawing = folder.resolve("larkfield.yaml");
        Files.writeString(drawing, Files.readString(drawing).replace("ease: 15..35 mm", "ease: 60..70 mm"));
        assertEquals(1, run("walk", drawing.toString(), "--size", "40"));
        assertTrue(out.toString().contains("DIFFERS"), out.toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "alter",
                "alter nothing.yaml --out x",
                "walk patterns/larkfield.yaml --size 99",
                "print patterns/larkfield.yaml --size 40 --paper papyrus --out x",
                "stretch",
                "walk patterns --size 40",
                "alter patterns/larkfield.yaml --out x"
            })
    void aWrongCallIsExit2AndOneLine(String call) {
        int code = run(call.isEmpty() ? new String[0] : call.split(" "));
        assertEquals(2, code, out.toString());
        assertEquals(1, err.toString().lines().count(), err.toString());
    }

    /** An empty name is not the folder that one happens to be in. */
    @Test
    void anEmptyNameIsRefused() throws IOException {
        String card = PATTERNS.resolve("larkfield.yaml").toString();
        String order = PATTERNS.resolve("concert-order.yaml").toString();
        for (String[] call : new String[][] {
            {"alter", order, "--out", ""},
            {"alter", "", "--out", "x"},
            {"print", card, "--size", "40", "--out", " "},
            {"plan", card, "--body", PATTERNS.resolve("ida.yaml").toString(), "--out", ""},
            {"measure", card, "--sheet", ""},
            {"walk", "a\0b", "--size", "40"}
        }) {
            err.getBuffer().setLength(0);
            assertEquals(2, run(call), out.toString());
            assertEquals(1, err.toString().lines().count(), err.toString());
            assertTrue(err.toString().contains("file or folder"), err.toString());
        }
        assertFalse(Files.exists(Path.of("altered.svg")));
    }

    @Test
    void helpIsForPeopleWhoSew() {
        for (String command : new String[] {"alter", "print", "walk"}) {
            assertEquals(0, run(command, "--help"));
            assertTrue(out.toString().contains("Example: hingepoint " + command), out.toString());
        }
        assertEquals(0, run("--version"));
    }

    @Test
    void nothingIsLeftBesideWhatIsWritten() throws IOException {
        run("alter", PATTERNS.resolve("concert-order.yaml").toString(), "--out", folder.toString());
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(3, files.count());
        }
    }

    /** From a tape measure to pages: plan, alter, print; and planned again, nothing is left to do. */
    @Test
    void threeCommandsLeadFromABodyToPages() throws IOException {
        order("  - sway back: {wedge: 12 mm}\n");
        Path body = Files.copy(PATTERNS.resolve("ida.yaml"), folder.resolve("ida.yaml"));
        String card = folder.resolve("larkfield.yaml").toString();
        String ordered = folder.resolve("ida-order.yaml").toString();
        String altered = folder.resolve("altered").toString();
        assertEquals(0, run("plan", card, "--body", body.toString(), "--out", ordered, "--check"), err.toString());
        assertTrue(out.toString().contains("look again on the next toile"), out.toString());
        assertEquals(0, run("alter", ordered, "--out", altered), err.toString());
        assertEquals(0, run("print", altered + "/altered.yaml", "--size", "40", "--out", altered), err.toString());
        out.getBuffer().setLength(0);
        String again = folder.resolve("again.yaml").toString();
        Files.copy(Path.of(altered, "altered.yaml"), folder.resolve("altered.yaml"));
        Files.copy(Path.of(altered, "altered.svg"), folder.resolve("altered.svg"));
        assertEquals(
                0, run("plan", folder.resolve("altered.yaml").toString(), "--body", body.toString(), "--out", again));
        assertTrue(Files.readString(Path.of(again)).contains("alterations: []"), out.toString());
        assertEquals(0, run("alter", again, "--out", folder.resolve("same").toString()), err.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "unit: cm\\nupper bust: 87\\nhip: 10 | hip",
                "unit: cm\\nupper bust: -87 | upper bust",
                "unit: cm\\nupper bust: 34.25\\nfull bust: 37.8\\nwaist: 30\\nhip: 41.7 | write unit: in",
                "unit: cm\\nwaist: 76 | upper bust",
                "unit: furlongs\\nupper bust: 87 | unit",
                "unit: cm\\nupper bust: 87\\nobserved: {folds run: back only} | folds at back waist",
                "unit: cm\\nupper bust: 87\\ncloth: {stretch across: much} | per cent"
            })
    void nonsenseBodiesAreRefusedInOneLineWithNothingWritten(String written, String says) throws IOException {
        order("  - sway back: {wedge: 12 mm}\n");
        Path body = Files.writeString(folder.resolve("body.yaml"), written.replace("\\n", "\n"));
        Path plan = folder.resolve("plan.yaml");
        String card = folder.resolve("larkfield.yaml").toString();
        assertEquals(2, run("plan", card, "--body", body.toString(), "--out", plan.toString()), out.toString());
        assertEquals(1, err.toString().lines().count(), err.toString());
        assertTrue(err.toString().contains(says), err.toString());
        assertFalse(Files.exists(plan));
    }

    @Test
    void measuresEverySizeAndDrawsChartAndSheet() throws IOException {
        String card = PATTERNS.resolve("larkfield.yaml").toString();
        assertEquals(0, run("measure", card, "--unit", "in"), err.toString());
        assertTrue(out.toString().contains("centre back length"), out.toString());
        out.getBuffer().setLength(0);
        Path chart = folder.resolve("chart.svg");
        Path sheet = folder.resolve("sheet.svg");
        String body = PATTERNS.resolve("ida.yaml").toString();
        assertEquals(
                0,
                run(
                        "measure",
                        card,
                        "--size",
                        "40",
                        "--body",
                        body,
                        "--json",
                        "--chart",
                        chart.toString(),
                        "--sheet",
                        sheet.toString()),
                err.toString());
        Map<?, ?> json = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(out.toString());
        Map<?, ?> size = (Map<?, ?>) ((Map<?, ?>) json.get("sizes")).get("40");
        double bust = ((Number) ((Map<?, ?>) size.get("finished")).get("bust girth")).doubleValue();
        assertEquals(PatternFiles.read(Path.of(card)).in("40").girth("bust"), bust, 1e-3);
        assertTrue(Files.readString(chart).contains("TOO TIGHT"));
        assertTrue(Files.readString(sheet).contains("upper bust"));
        assertEquals(0, run("measure", PATTERNS.resolve("back-block.yaml").toString()), "a back alone has no way in");
        assertEquals(2, run("measure", card, "--unit", "parsec"));
        assertFalse(err.toString().contains("Refusal"), err.toString());
        assertEquals(2, run("measure"));
        assertEquals(2, run("measure", card, "--chart", chart.toString()));
    }

    @Test
    void withoutABodyItAsks() throws IOException {
        InputStream before = System.in;
        try {
            String typed = "cm\n87\n92\n75\n\n100\n" + "\n".repeat(13);
            System.setIn(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
            assertEquals(0, run("plan", PATTERNS.resolve("larkfield.yaml").toString()), err.toString());
        } finally {
            System.setIn(before);
        }
        assertTrue(out.toString().contains("round the body over the fullest part of the bust"));
        assertTrue(out.toString().contains("size 40"), out.toString());
    }

    /** A list of edges whose ends no other seam joins is walked as drawn. */
    @Test
    void aCardWithoutTheSeamsBetweenIsWalked() throws IOException {
        order("  - sway back: {wedge: 12 mm}\n");
        Path card = folder.resolve("larkfield.yaml");
        Files.writeString(
                card,
                Files.readString(card)
                        .lines()
                        .filter(line -> !line.contains("{join: front/side") && !line.contains("{join: back/shoulder"))
                        .collect(Collectors.joining("\n", "", "\n")));
        assertEquals(0, run("walk", card.toString(), "--size", "40"), err.toString() + out);
        assertTrue(out.toString().contains("2 seams"), out.toString());
    }

    @Test
    void aDrawingInMetresTakenForMillimetresIsRefused() throws IOException {
        order("  - sway back: {wedge: 12 mm}\n");
        Path drawing = folder.resolve("larkfield.svg");
        Files.writeString(
                drawing,
                Files.readString(drawing)
                        .replace("<g id=\"front-34\"", "<g transform=\"scale(1000)\" id=\"front-34\""));
        assertEquals(2, run("walk", folder.resolve("larkfield.yaml").toString(), "--size", "40"));
        assertTrue(err.toString().contains("scale") && err.toString().lines().count() == 1, err.toString());
    }

    /** A page of an earlier, larger print does not stay among the new ones. */
    @Test
    void noPageOfAnEarlierPrintStays() throws IOException {
        String card = PATTERNS.resolve("larkfield.yaml").toString();
        assertEquals(0, run("print", card, "--size", "48", "--out", folder.toString()), err.toString());
        assertEquals(0, run("print", card, "--size", "34", "--out", folder.toString()), err.toString());
        Path alone = folder.resolve("alone");
        assertEquals(0, run("print", card, "--size", "34", "--out", alone.toString()), err.toString());
        try (Stream<Path> both = Files.list(folder.resolve("pages"));
                Stream<Path> one = Files.list(alone.resolve("pages"))) {
            assertEquals(one.count(), both.count());
        }
    }
}
