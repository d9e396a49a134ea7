package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Piece;

/** Pieces as they hang on the body, however they lie on the drawing: down is down the page. */
public final class Upright {
    private static final Vector DOWN = new Vector(0, 1);

    private Upright() {}

    /** What lays a piece, and all that was made of it, upright. */
    public static Motion of(Piece piece) {
        Vector down = piece.grain().down();
        return down.equals(DOWN)
                ? Motion.STAY
                : Motion.turn(piece.outline().bounds().centre(), down, DOWN);
    }
}
