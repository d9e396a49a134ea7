package dev.hingepoint.pattern;

import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;

/**
 * A notch: a place on an edge that is sewn to the notch of the same name on the joined edge.
 *
 * @param count how many strokes it is drawn with: one for the front, two for the back (common practice)
 * @param line begins on the edge
 */
public record Notch(String name, int count, Line line) implements Mark {
    public Notch {
        if (count < 1) {
            throw new IllegalArgumentException("a notch has at least one stroke, not " + count);
        }
    }

    /** The place on the edge. */
    public Point at() {
        return line.start();
    }

    @Override
    public Notch moved(Motion motion) {
        return new Notch(name, count, line.moved(motion));
    }
}
