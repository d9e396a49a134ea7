package dev.hingepoint.move;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Piece;
import java.util.List;

/**
 * One of a fitter's steps, with all that is needed to tell or to draw it.
 *
 * @param caption in a fitter's words, with this pattern's numbers
 * @param lines what was slashed, or the old course of what was redrawn, on the paper as it was
 * @param hinges the points that parts turned about
 * @param parts of what was cut, each with how it moved, those that stayed included; none where nothing was cut
 * @param fills on the paper as it is now: gaps that were filled, or the new course of what was redrawn
 */
public record Step(
        String caption,
        Piece before,
        Piece after,
        List<Path> lines,
        List<Point> hinges,
        List<Part> parts,
        List<Path> fills) {
    public Step {
        lines = List.copyOf(lines);
        hinges = List.copyOf(hinges);
        parts = List.copyOf(parts);
        fills = List.copyOf(fills);
    }

    /** Whether parts were cut and moved, and not only lines drawn anew. */
    public boolean isCut() {
        return !parts.isEmpty();
    }

    /** A step that draws nothing: what is cut, sewn or left out otherwise. */
    public static Step of(String caption, Piece before, Piece after) {
        return new Step(caption, before, after, List.of(), List.of(), List.of(), List.of());
    }

    /**
     * A part of the paper and how it moved.
     *
     * @param outline where it lay before
     * @param isFolded whether it was folded away
     */
    public record Part(Path outline, Motion motion, boolean isFolded) {
        public boolean isMoved() {
            return !motion.equals(Motion.STAY);
        }
    }
}
