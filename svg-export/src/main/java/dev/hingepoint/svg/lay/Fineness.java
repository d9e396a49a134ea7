package dev.hingepoint.svg.lay;

import java.util.stream.Stream;

/** How finely, how far and how long it is looked for places, on sheets and on strips alike. */
final class Fineness {
    /** What is looked at at most, in rows of squares, but for one way to lay the shapes: about a tenth of a second. */
    static final long EFFORT = 1_000_000;

    /** Size of a square in mm, at least: a shape keeps up to one more from the next than it must. */
    private static final double SQUARE = 4;

    /** For this many shapes; for more of them squares are larger, so that all of them take not much longer. */
    private static final double SHAPES = 50;

    /** How far up from the lowest shape room is looked for, in heights of the tallest. */
    private static final int WINDOW = 2;

    private Fineness() {}

    /** Size of a square in mm for so many shapes. */
    static double square(int shapes) {
        return SQUARE * Math.max(1, Math.sqrt(shapes / SHAPES));
    }

    /** How many rows up from the lowest shape room is looked for. */
    static int window(Stream<Mask> masks) {
        return WINDOW * masks.mapToInt(Mask::rows).max().orElse(0);
    }
}
