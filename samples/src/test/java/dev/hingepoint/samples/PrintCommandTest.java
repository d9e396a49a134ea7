package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code print} as a person calls it. */
class PrintCommandTest extends CalledProgram {
    private static final String DRESS = "patterns/larkfield.yaml";

    private int print(String card, String... options) {
        List<String> call = new ArrayList<>(List.of("print", card, "--out", folder.toString()));
        call.addAll(List.of(options));
        return run(call.toArray(String[]::new));
    }

    private String pages() throws IOException {
        StringBuilder pages = new StringBuilder();
        for (String file : written()) {
            if (file.startsWith("pages/")) {
                pages.append(Files.readString(folder.resolve(file)));
            }
        }
        return pages.toString();
    }

    @Test
    void writesOnePdfAndTheSamePagesOneByOneAndSaysHowFewTheyAre() throws IOException {
        assertEquals(0, print(DRESS, "--size", "40"), err.toString());
        List<String> written = written();
        assertTrue(written.containsAll(List.of("map.svg", "pages.pdf", "pages/0.1.svg")), written.toString());
        Matcher told = Pattern.compile("(\\d+) pages of A4 to tape together, and (\\d+) to read")
                .matcher(out.toString());
        assertTrue(told.find(), out.toString());
        assertEquals(
                written.stream().filter(file -> file.startsWith("pages/")).count(),
                Integer.parseInt(told.group(1)) + Integer.parseInt(told.group(2)));
        Matcher least =
                Pattern.compile("area of the pieces alone would fill (\\d+)").matcher(out.toString());
        assertTrue(least.find(), out.toString());
        assertTrue(Integer.parseInt(least.group(1)) <= Integer.parseInt(told.group(1)));
        // the project's aim for the dress on A4
        assertTrue(Files.size(folder.resolve("pages.pdf")) < 300_000);
        assertTrue(out.toString().contains("Print page 0.1 alone first, at 100 %"), out.toString());
        assertTrue(out.toString().contains("toile"), out.toString());
    }

    @Test
    void theOriginalIsDrawnUnderWhatWasAltered() throws IOException {
        Path altered = folder.resolve("altered");
        Hingepoint.run(
                new PrintWriter(out, true),
                new PrintWriter(err, true),
                "alter",
                "patterns/concert-order.yaml",
                "--out",
                altered.toString());
        String card = altered.resolve("altered.yaml").toString();
        assertEquals(0, print(card, "--size", "40"), err.toString());
        assertFalse(pages().contains("id=\"original-lines\""));
        assertEquals(0, print(card, "--size", "40", "--original", DRESS), err.toString());
        assertTrue(pages().contains("id=\"original-lines\""));
        assertTrue(pages().contains("as drawn, before it was altered"));
    }

    @Test
    void severalSizesLieInOneAnother() throws IOException {
        assertEquals(0, print(DRESS, "--size", "38, 40,42"), err.toString());
        assertTrue(pages().contains("sizes 38, 40, 42"));
        assertEquals(0, print(DRESS, "--size", "all", "--paper", "a0"), err.toString());
        assertTrue(pages().contains("sizes 34, 36, 38, 40, 42, 44, 46, 48"));
    }

    @Test
    void theClothIsAsWideAsIsSaid() throws IOException {
        assertEquals(0, print(DRESS, "--size", "40", "--cloth", "150cm", "--nap"), err.toString());
        Matcher wide = Pattern.compile("main cloth, 150 cm wide: (\\d+) cm").matcher(pages());
        assertTrue(wide.find());
        assertEquals(0, Integer.parseInt(wide.group(1)) % 5);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--size 39 | there is no size '39'",
                "--size 40,40 | each once",
                "--size , | size",
                "--size 40 --paper foolscap | there is no paper",
                "--size 40 --paper 100x150 | too small for the first page's squares",
                "--size 40 --margin 40mm | first page's squares",
                "--size 40 --margin wide | no length",
                "--size 40 --overlap 5mm | must be more than 6 mm",
                "--size 40 --measured 94x100mm | fit to page",
                "--size 40 --measured 98.5 | no measured square",
                "--size 40 --scale 1:3 | there is no scale",
                "--size 40 --cloth 30cm | a cloth of at least",
                "--size 40 --cloth silk | no length",
                "--size 40 --original missing.yaml | there is no such file",
                "--size 40 --original patterns/shell.yaml | name the card that was altered",
                "--size 40 --cloth lining=90cm | no piece is cut from the cloth 'lining'",
                "--size 40 --body missing.yaml | there is no such file",
                "--size 40 --unit ell | no unit",
            })
    void whatIsWrongIsRefusedInOneLineAndNothingIsWritten(String options, String says) throws IOException {
        assertEquals(2, print(DRESS, options.split(" ")), out.toString());
        assertEquals(1, err.toString().lines().count(), err.toString());
        assertTrue(err.toString().contains(says), err.toString());
        assertEquals(List.of(), written());
    }

    /** A page of an earlier print would be taped in with these. */
    @Test
    void pagesOfAnEarlierPrintAreGone() throws IOException {
        Files.createDirectories(folder.resolve("pages"));
        Path others = Files.writeString(folder.resolve("pages/notes.txt"), "not ours");
        assertEquals(0, print(DRESS, "--size", "40"), err.toString());
        assertEquals(0, print(DRESS, "--size", "40", "--paper", "a0"), err.toString());
        assertTrue(
                written().stream().filter(file -> file.endsWith(".svg")).count() <= 4,
                written().toString());
        assertTrue(Files.exists(others));
    }

    @Test
    void inInchesTheStepsAndTheLabelsAreToldInInchesToo() throws IOException {
        Path altered = folder.resolve("altered");
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        assertEquals(
                0,
                Hingepoint.run(nowhere, nowhere, "alter", "patterns/concert-order.yaml", "--out", altered.toString()));
        assertEquals(
                0, print(altered.resolve("altered.yaml").toString(), "--size", "40", "--unit", "in"), err.toString());
        String pages = pages();
        assertTrue(pages.contains("Fold out 1/2 in at centre back"), "the steps");
        assertTrue(pages.contains("sway back: wedge 1/2 in"), "the label");
        assertFalse(pages.contains("12 mm"));
    }
}
