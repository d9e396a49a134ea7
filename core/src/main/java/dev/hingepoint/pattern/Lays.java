package dev.hingepoint.pattern;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which ways round the pieces may be laid, on cloth and on paper.
 *
 * @param byPiece keys are {@code default} or a piece's name; the more particular one holds
 */
public record Lays(Map<String, Way> byPiece) {
    /** What a piece may do to lie where there is room. Its grain stays where it is but for the last. */
    public enum Way {
        /** As it is drawn: the cloth has a nap, or a pattern that runs one way. */
        ONE_WAY("one way"),
        /** Also upside down. */
        TWO_WAYS("two ways"),
        /** Also turned by a quarter: it does not matter how its grain runs. */
        ANY_WAY("any way");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        /** As it is written on a card. */
        public String words() {
            return words;
        }

        /** Empty for words that no way is written in. */
        public static Optional<Way> named(String words) {
            return Stream.of(values()).filter(way -> way.words.equals(words)).findFirst();
        }
    }

    /** Where nothing is said, nothing is turned. */
    public static final Lays ONE_WAY = new Lays(Map.of());

    /** The name under which stands what holds for every piece that is not named itself. */
    public static final String DEFAULT = "default";

    public Lays {
        byPiece = Collections.unmodifiableMap(new LinkedHashMap<>(byPiece));
    }

    /** What a piece may do: what is said of it by name, else of all, else {@link Way#ONE_WAY}. */
    public Way of(Piece piece) {
        return byPiece.getOrDefault(piece.name(), byPiece.getOrDefault(DEFAULT, Way.ONE_WAY));
    }
}
