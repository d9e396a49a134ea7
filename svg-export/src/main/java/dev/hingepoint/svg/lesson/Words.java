package dev.hingepoint.svg.lesson;

import java.util.List;
import java.util.Locale;

/** Words as they stand in a heading, a list or a sentence. */
final class Words {
    private Words() {}

    /** With a capital letter at its beginning. */
    static String capitalised(String words) {
        int first = words.isEmpty() ? 0 : words.offsetByCodePoints(0, 1);
        return words.substring(0, first).toUpperCase(Locale.ROOT) + words.substring(first);
    }

    /** "bust, waist and hip". */
    static String joined(List<String> words) {
        return words.size() < 2
                ? String.join("", words)
                : String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
    }

    /** With a full stop at its end, which captions are written without. */
    static String sentence(String words) {
        return words.endsWith(".") ? words : words + ".";
    }
}
