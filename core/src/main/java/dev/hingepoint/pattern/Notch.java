package dev.hingepoint.pattern;

import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Vector;

/**
 * A notch: a place on an edge that is sewn to the notch of the same name on the joined edge.
 *
 * @param count how many strokes it is drawn with: one for the front, two for the back (common practice)
 * @param line begins on the edge
 */
public record Notch(String name, int count, Line line) implements Mark {
    /** How deep in mm a notch is drawn. */
    public static final double DEPTH = 6;

    public Notch {
        if (count < 1) {
            throw new IllegalArgumentException("a notch has at least one stroke, not " + count);
        }
    }

    /** A notch at a place of an edge's drawn path, {@link #DEPTH} mm into the paper. */
    public static Notch on(Piece piece, String edge, Position at, String name, int count) {
        Path path = piece.edge(edge).path();
        Point point = path.at(at);
        Vector inwards = piece.inwards(path.tangent(at));
        return new Notch(name, count, new Line(point, point.plus(inwards.times(DEPTH))));
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
