package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The program as a person calls it: exit codes, help, and what it refuses; {@code walk} as well. */
class HingepointTest extends CalledProgram {
    @Test
    void aSeamThatNoLongerMatchesIsExit1() throws IOException {
        order("");
        Path drawing = folder.resolve("larkfield.yaml");
        Files.writeString(drawing, Files.readString(drawing).replace("ease: 15..35 mm", "ease: 60..70 mm"));
        assertEquals(1, run("walk", drawing.toString(), "--size", "40"));
        assertTrue(out.toString().contains("DIFFERS"), out.toString());
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
        for (String command : new String[] {"plan", "alter", "print", "measure", "lesson", "walk"}) {
            out.getBuffer().setLength(0);
            assertEquals(0, run(command, "--help"));
            assertTrue(out.toString().matches("(?s).*Examples?: hingepoint " + command + ".*"), out.toString());
        }
        assertEquals(0, run("--version"));
    }
}
