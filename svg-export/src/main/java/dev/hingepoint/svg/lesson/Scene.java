package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Box;
import dev.hingepoint.svg.page.Drawn;

/**
 * One picture of a lesson.
 *
 * @param caption what is done, in a fitter's words, with this pattern's lengths
 * @param piece the piece that is shown; empty where several are
 * @param scale mm of the picture for one mm of the pattern: 0.2 is 1:5
 * @param drawn in mm of the picture
 * @param box the picture's edge
 */
public record Scene(Kind kind, String caption, String piece, double scale, Drawn drawn, Box box) {
    /** What a picture shows. */
    public enum Kind {
        AS_IT_WAS("As it was"),
        LINES("Draw the lines"),
        SLASHED("Cut"),
        MOVED("Move"),
        REJOINED("Rejoin"),
        TRUED("Draw anew"),
        COMPARED("Before and after");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** A heading for it. */
        public String words() {
            return words;
        }
    }

    /** "1:2". */
    public String scaleWords() {
        return "1:" + Math.round(1 / scale);
    }
}
