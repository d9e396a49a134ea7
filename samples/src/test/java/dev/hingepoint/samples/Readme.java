package dev.hingepoint.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The README, taken apart. */
final class Readme {
    static final Path TOP = Path.of("..");

    private static final Pattern FENCED = Pattern.compile("(?ms)^```(\\w*)\n(.*?)^```$");
    private static final Pattern INLINE = Pattern.compile("`([^`\n]+)`");

    private Readme() {}

    static String text() throws IOException {
        return Files.readString(TOP.resolve("README.md"));
    }

    /** Every block of a language, in order; of none, the commands. */
    static List<String> blocks(String language) throws IOException {
        return FENCED.matcher(text())
                .results()
                .filter(block -> block.group(1).equals(language))
                .map(block -> block.group(2))
                .toList();
    }

    /** What is set as code within the text. */
    static Stream<String> inline() throws IOException {
        return INLINE
                .matcher(FENCED.matcher(text()).replaceAll(""))
                .results()
                .map(code -> code.group(1))
                .toList()
                .stream();
    }
}
