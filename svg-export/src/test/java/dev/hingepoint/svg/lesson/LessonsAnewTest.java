package dev.hingepoint.svg.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.PatternFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lessons written where older ones lie. */
class LessonsAnewTest {
    private static final Draft BLOCK =
            PatternFiles.read(Path.of("../samples/patterns/back-block.yaml")).in("36");

    @TempDir
    private Path folder;

    @Test
    void noStepOfAnEarlierLessonStaysInAnyOfTheFolders() throws IOException {
        Path steps = Files.createDirectories(folder.resolve("square-shoulders/steps"));
        Files.writeString(steps.resolve("1.99.svg"), "an older step");
        Files.writeString(steps.resolve("my own notes.txt"), "not ours");
        int written = Lessons.writeAll(BLOCK, Unit.MILLIMETRE, Lessons.Form.USUAL, folder);
        assertFalse(Files.exists(steps.resolve("1.99.svg")));
        assertTrue(Files.exists(steps.resolve("my own notes.txt")));
        assertTrue(Files.exists(steps.resolve("1.1.svg")));
        try (var inside = Files.list(folder)) {
            assertEquals(written, inside.filter(Files::isDirectory).count());
        }
    }
}
