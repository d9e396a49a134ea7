package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Golden drawings: the picture of every alteration was looked at, and stays as it is; one that should change is looked at and written anew. */
class PicturesTest {
    private static final Path FOLDER = Path.of("pictures/alterations");

    @Test
    void everyAlterationDrawsWhatWasLookedAt() throws IOException {
        Map<String, String> drawn = Pictures.all();
        try (Stream<Path> files = Files.list(FOLDER)) {
            assertEquals(
                    new TreeSet<>(drawn.keySet()),
                    files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new)));
        }
        for (Map.Entry<String, String> picture : drawn.entrySet()) {
            assertEquals(Files.readString(FOLDER.resolve(picture.getKey())), picture.getValue(), picture.getKey());
        }
    }
}
