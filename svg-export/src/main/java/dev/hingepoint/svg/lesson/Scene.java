package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Box;
import dev.hingepoint.svg.page.Drawn;

/**
 * One picture of a lesson.
 *
 * @param caption what is done, in a fitter's words, with this pattern's lengths
 * @param piece the piece that is shown; empty where several are
 * @param drawn in mm on the handout, where {@link Lesson#scale} says how large the pattern is
 * @param box what is shown of it: the same for all pictures of a piece, so that it does not jump from one to the next
 */
public record Scene(Kind kind, String caption, String piece, Drawn drawn, Box box) {
    /** What a picture shows. */
    public enum Kind {
        AS_IT_WAS("As it was"),
        LINES("Draw the lines"),
        SLASHED("Cut"),
        MOVED("Move"),
        REJOINED("Fill and rejoin"),
        TRUED("True"),
        COMPARED("Before and after");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
