package dev.hingepoint.samples;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;

/** The program as a person calls it, with a folder of one's own; what it prints is kept. */
abstract class CalledProgram {
    static final Path PATTERNS = Path.of("patterns");

    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();

    @TempDir
    Path folder;

    /** Its exit code. */
    int run(String... arguments) {
        return Hingepoint.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
    }

    /** An order in the folder, beside a copy of the patterns that it may name. */
    Path order(String alterations) throws IOException {
        for (String name : new String[] {"larkfield.svg", "larkfield.yaml", "shell.svg", "shell.yaml"}) {
            Files.copy(PATTERNS.resolve(name), folder.resolve(name));
        }
        return Files.writeString(
                folder.resolve("order.yaml"), "pattern: larkfield.yaml\nsize: \"40\"\nalterations:\n" + alterations);
    }

    /** Every file in the folder, by its name. */
    List<String> written() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }
}
