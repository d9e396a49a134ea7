package dev.hingepoint.samples.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the javadoc shows is what the moves and the alterations draw and tell; when that changes it is looked at, and written anew as DEVELOPERS.md says. */
class DocFilesTest {
    private static final Path TOP = Path.of("..");

    @Test
    void theJavadocShowsWhatTheAlterationsDo() throws IOException {
        Path sources = TOP.resolve(DocFiles.SOURCES);
        Map<String, String> drawn = DocFiles.all(Files.readString(TOP.resolve("README.md")));
        try (Stream<Path> files = Files.walk(sources)) {
            assertEquals(
                    new TreeSet<>(drawn.keySet()),
                    files.filter(file -> file.getParent().endsWith("doc-files"))
                            .map(file -> sources.relativize(file).toString().replace('\\', '/'))
                            .collect(Collectors.toCollection(TreeSet::new)));
        }
        for (Map.Entry<String, String> file : drawn.entrySet()) {
            assertEquals(
                    Files.readString(sources.resolve(file.getKey())),
                    file.getValue(),
                    file.getKey() + ": write the pictures of the javadoc anew, as DEVELOPERS.md says");
        }
    }
}
