package dev.hingepoint.move;

import dev.hingepoint.pattern.Piece;

/** One thing done to one piece of paper: a value, which changes nothing until it is laid on a piece. */
public sealed interface Move permits Cut, Redraw, Trim {
    /**
     * Does it.
     *
     * @throws dev.hingepoint.Refusal where the result would be no sound piece
     */
    Moved on(Piece piece);

    /** What came of a move. */
    record Moved(Piece piece, PaperMap map, Step step) {}
}
