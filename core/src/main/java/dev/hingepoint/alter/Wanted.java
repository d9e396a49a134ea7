package dev.hingepoint.alter;

import dev.hingepoint.Reason;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import java.util.Optional;

/**
 * The line that a blend wants at a level: a size's as it is drawn, or the piece's own moved by so many mm for each side-seam edge.
 *
 * @param left what part of the way to the size's line is left, from 0 to 1
 */
record Wanted(Optional<String> size, double by, double left) {
    static final Wanted AS_IT_IS = by(0);

    static Wanted by(double mm) {
        return new Wanted(Optional.empty(), mm, 0);
    }

    static Wanted size(String name, double left) {
        return new Wanted(Optional.of(name), 0, left);
    }

    /** How many mm farther out than the {@linkplain #line line} the seam is to lie. */
    double beyond(Draft draft, Piece piece, String level) {
        return by - left * (line(draft, piece).width(level) - piece.width(level));
    }

    /** The piece that draws the line. */
    Piece line(Draft draft, Piece piece) {
        return size.map(name -> draft.asDrawn(piece, name)).orElse(piece);
    }

    String told(String level) {
        return size.map(name -> "to size " + name)
                        .orElseGet(() -> (by > 0 ? "out" : "in") + " by " + Reason.millimetres(Math.abs(by)))
                + " at the " + level;
    }
}
