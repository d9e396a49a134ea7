package dev.hingepoint.alter;

import dev.hingepoint.Reason;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import java.util.Optional;

/** The line that a blend wants at a level: a size's as it is drawn, or the piece's own moved by so many mm for each side-seam edge. */
record Wanted(Optional<String> size, double by) {
    static final Wanted AS_IT_IS = new Wanted(Optional.empty(), 0);

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
