package dev.hingepoint.svg.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFilesTest {
    @TempDir
    private Path folder;

    private static Map<String, String> files(String... namesAndContents) {
        Map<String, String> files = new LinkedHashMap<>();
        for (int i = 0; i < namesAndContents.length; i += 2) {
            files.put(namesAndContents[i], namesAndContents[i + 1]);
        }
        return files;
    }

    /** Everything below a folder, hidden or not: files with what they hold, folders as such. */
    private static Map<String, String> everything(Path folder) throws IOException {
        Map<String, String> all = new TreeMap<>();
        try (Stream<Path> inside = Files.walk(folder)) {
            for (Path path : inside.toList()) {
                all.put(
                        folder.relativize(path).toString(),
                        Files.isDirectory(path) ? "a folder" : Files.readString(path));
            }
        }
        return all;
    }

    @Test
    void allFilesAreWrittenAndReplaced() throws IOException {
        Path deep = folder.resolve("a/b");
        WholeFiles.writeAll(deep, files("one.svg", "1", "pages/two.svg", "2"));
        WholeFiles.writeAll(deep, files("one.svg", "one", "three.svg", "3"));
        assertEquals(
                Map.of("", "a folder", "one.svg", "one", "pages", "a folder", "pages/two.svg", "2", "three.svg", "3"),
                everything(deep));
    }

    @Test
    void anyBytesAreWrittenAsTheyAre() throws IOException {
        byte[] bytes = {0, -1, (byte) 0xC3, 13, 10};
        WholeFiles.writeBytes(folder, Map.of("some.bin", bytes));
        assertArrayEquals(bytes, Files.readAllBytes(folder.resolve("some.bin")));
        assertArrayEquals(
                new byte[] {(byte) 0xC3, (byte) 0xA9},
                WholeFiles.encoded(Map.of("text", "\u00e9")).get("text"));
    }

    /** A folder where a file would stand, first, last or below; a file where a folder would. */
    @Test
    void whereOneCannotBeWrittenAllStaysAsItWas() throws IOException {
        Files.createDirectories(folder.resolve("out/taken.svg/full"));
        Files.writeString(folder.resolve("out/old.svg"), "old");
        Files.writeString(folder.resolve("out/file"), "a file");
        Map<String, String> before = everything(folder);
        for (Map<String, String> contents : List.of(
                files("old.svg", "new", "fresh.svg", "new", "taken.svg", "new"),
                files("taken.svg", "new", "old.svg", "new"),
                files("old.svg", "new", "pages/fresh.svg", "new", "file/below.svg", "new"),
                files("pages/fresh.svg", "new", "taken.svg", "new"))) {
            Refusal refusal = assertThrows(Refusal.class, () -> WholeFiles.writeAll(folder.resolve("out"), contents));
            assertEquals(1, refusal.getMessage().lines().count());
            assertEquals(before, everything(folder));
        }
    }

    @Test
    void aFolderThatCouldNotBeFilledIsNotLeftBehind() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "a file");
        Map<String, String> before = everything(folder);
        assertThrows(Refusal.class, () -> WholeFiles.writeAll(folder.resolve("a/b"), files("x", "1", "x/below", "2")));
        assertThrows(Refusal.class, () -> WholeFiles.writeAll(file.resolve("below"), files("x", "1")));
        assertEquals(before, everything(folder));
    }

    @Test
    void onlyFilesOfTheNamesAskedForAreDeleted() throws IOException {
        WholeFiles.writeAll(folder, files("pages/1.1.svg", "1", "pages/9.9.svg", "9", "pages/mine.svg", "mine"));
        Files.createDirectories(folder.resolve("pages/8.8.svg/full"));
        WholeFiles.deleteOthers(folder, "pages", "[0-9]+\\.[0-9]+\\.svg", Set.of("pages/1.1.svg"));
        assertTrue(Files.exists(folder.resolve("pages/1.1.svg")));
        assertTrue(Files.exists(folder.resolve("pages/mine.svg")));
        assertTrue(Files.exists(folder.resolve("pages/8.8.svg/full")));
        assertFalse(Files.exists(folder.resolve("pages/9.9.svg")));
    }
}
