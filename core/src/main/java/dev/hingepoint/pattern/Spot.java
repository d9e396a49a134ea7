package dev.hingepoint.pattern;

import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;

/**
 * A place on the stitching line of one piece.
 *
 * @param position on the edge's path as drawn
 */
public record Spot(String edge, Position position, Point point) implements Comparable<Spot> {
    /** Of two spots on one edge, the one that comes first as it is drawn. */
    public static Spot first(Spot one, Spot other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    public static Spot last(Spot one, Spot other) {
        return one.compareTo(other) <= 0 ? other : one;
    }

    /** Along the edge as drawn. */
    @Override
    public int compareTo(Spot other) {
        return position.compareTo(other.position);
    }
}
