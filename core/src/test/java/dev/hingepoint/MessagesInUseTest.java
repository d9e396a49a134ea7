package dev.hingepoint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The bundle and the sources of all modules know the same messages. */
class MessagesInUseTest {
    private static final ResourceBundle ENGLISH = ResourceBundle.getBundle("dev.hingepoint.messages", Locale.ROOT);
    private static final Pattern LITERAL = Pattern.compile("'(?:[^'\\\\]|\\\\.)'|\"((?:[^\"\\\\]|\\\\.)*)\"");
    private static final Pattern CALL = Pattern.compile("\\b(?:Message\\.(?:of|joined)|refuse)\\(\\s*(?=\")");
    private static final Pattern NO_LITERAL =
            Pattern.compile("\\b(?:Message\\.(?:of|joined)|refuse)\\((?!\\s*\")\\s*([^,)]*)");

    /** Programs of other people's, as it were, that say their refusals in plain words. */
    private static final Path EXAMPLES = Path.of("samples", "example");

    private static final List<String> SOURCES = sources();

    private static List<String> sources() {
        return Stream.of("core", "svg-export", "samples")
                .map(module -> Path.of("..", module, "src", "main", "java"))
                .flatMap(MessagesInUseTest::files)
                .toList();
    }

    private static Stream<String> files(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            List<String> read = new ArrayList<>();
            for (Path file : files.filter(path -> path.toString().endsWith(".java"))
                    .filter(path -> !path.getParent().endsWith(EXAMPLES))
                    .toList()) {
                read.add(Files.readString(file));
            }
            return read.stream();
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    /** A message as it is written in a source: its key, and what it is given. */
    private record Use(String key, int arguments) {
        /** The places that the bundle's sentence leaves open. */
        Set<Integer> places() {
            return Pattern.compile("\\{([0-9])}")
                    .matcher(ENGLISH.getString(key))
                    .results()
                    .map(place -> Integer.parseInt(place.group(1)))
                    .collect(Collectors.toCollection(TreeSet::new));
        }

        Set<Integer> given() {
            return Stream.iterate(0, index -> index < arguments, index -> index + 1)
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static List<Use> uses() {
        List<Use> uses = new ArrayList<>();
        for (String source : SOURCES) {
            Matcher call = CALL.matcher(source);
            while (call.find()) {
                List<String> arguments = arguments(source, call.end());
                String key = arguments.get(0).strip();
                boolean isJoined = call.group().contains("joined");
                uses.add(new Use(key.substring(1, key.length() - 1), isJoined ? 2 : arguments.size() - 1));
            }
        }
        return uses;
    }

    /** What stands between a call's brackets, parted at its own commas. */
    private static List<String> arguments(String source, int start) {
        List<String> arguments = new ArrayList<>();
        int depth = 0;
        int from = start;
        for (int i = start; depth >= 0; i++) {
            char c = source.charAt(i);
            Matcher literal = LITERAL.matcher(source).region(i, source.length());
            if (literal.lookingAt()) {
                i = literal.end() - 1;
            } else if (c == '(') {
                depth++;
            } else if (c == ')' && --depth < 0 || c == ',' && depth == 0) {
                arguments.add(source.substring(from, i));
                from = i + 1;
            }
        }
        return arguments;
    }

    @Test
    void everyKeyInTheSourcesHasItsWords() {
        List<Use> uses = uses();
        assertTrue(uses.size() > 200, "the search for messages finds only " + uses.size());
        assertEquals(
                List.of(),
                uses.stream()
                        .map(Use::key)
                        .filter(key -> !ENGLISH.containsKey(key))
                        .toList());
    }

    /** A key stands as it is wherever a message is made, so that it can be searched for; two hand one on. */
    @Test
    void noKeyIsPutTogether() {
        List<String> handedOn = List.of("key", "String key");
        assertEquals(
                List.of(),
                SOURCES.stream()
                        .flatMap(source -> NO_LITERAL.matcher(source).results().map(found -> found.group(1)))
                        .filter(found -> !handedOn.contains(found))
                        .toList());
    }

    @Test
    void everyPlaceInTheWordsIsGivenAndEveryArgumentIsTold() {
        assertEquals(
                List.of(),
                uses().stream().filter(use -> !use.places().equals(use.given())).toList());
    }

    @Test
    void noWordsAreUnused() {
        String all = String.join("", SOURCES);
        assertEquals(
                List.of(),
                ENGLISH.keySet().stream()
                        .sorted()
                        .filter(key -> !all.contains('"' + key + '"'))
                        .toList());
    }

    /** One key, one sentence: what is said alike has one key, but for words that only put others together. */
    @Test
    void noSentenceIsWrittenTwice() {
        List<String> sentences = ENGLISH.keySet().stream()
                .map(ENGLISH::getString)
                .filter(words -> words.matches(".*[a-z]{2}.*"))
                .sorted()
                .toList();
        assertEquals(sentences.stream().distinct().toList(), sentences);
    }
}
