package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.svg.file.OrderReader;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.print.BeforeAfter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is what the code is and draws. */
class ReadmeTest {
    /** The full bust, its parts moved. */
    private static final String LESSON_STEP = "1.4";

    @Test
    void itsExampleIsTheOneThatCompiles() throws IOException {
        String example =
                unbroken(Files.readString(Path.of("src/main/java/dev/hingepoint/samples/example/FiveLines.java")));
        String snippet = unbroken(Readme.blocks("java").get(0));
        assertTrue(example.contains(snippet), snippet);
    }

    /** The formatter may break lines of the example otherwise. */
    private static String unbroken(String text) {
        return text.replaceAll("\\s+", "");
    }

    @Test
    void itsPictureIsTheDemos() throws IOException {
        OrderReader.ReadOrder order = OrderReader.read(Path.of("patterns/concert-order.yaml"));
        Fitting fitting = Fitting.of(PatternFiles.read(order.card()), order.order());
        assertEquals(
                BeforeAfter.svg(fitting.before(), fitting.after()),
                Files.readString(Path.of("pictures/before-after.svg")));
    }

    /** Altered, written, read again and printed, as the demo does it. */
    @Test
    void itsPagesAreTheDemos(@TempDir Path folder) throws IOException {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        Hingepoint.run(nowhere, nowhere, "alter", "patterns/concert-order.yaml", "--out", folder.toString());
        String card = folder.resolve("altered.yaml").toString();
        String out = folder.toString();
        Hingepoint.run(
                nowhere,
                nowhere,
                "print",
                card,
                "--size",
                "40",
                "--for",
                "Ida, second row",
                "--body",
                "patterns/ida.yaml",
                "--out",
                out);
        for (String[] shown : new String[][] {{"0.1", "first-page"}, {"4.2", "page"}}) {
            assertEquals(
                    Files.readString(folder.resolve("pages/" + shown[0] + ".svg")),
                    Files.readString(Path.of("pictures/" + shown[1] + ".svg")));
        }
    }

    @Test
    void itsLessonIsTheDemos(@TempDir Path folder) throws IOException {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        Hingepoint.run(nowhere, nowhere, "lesson", "patterns/concert-order.yaml", "--out", folder.toString());
        assertEquals(
                Files.readString(folder.resolve("steps/" + LESSON_STEP + ".svg")),
                Files.readString(Path.of("pictures/lesson-step.svg")));
    }

    @Test
    void itsOrderIsTheDemos() throws IOException {
        String readme = Readme.text();
        for (String line :
                Files.readString(Path.of("patterns/concert-order.yaml")).split("\n")) {
            assertTrue(line.startsWith("#") || readme.contains(line), line);
        }
    }
}
