package dev.hingepoint.curve;

/** A place on a path: the number of a segment and the parameter on it, 0 to 1. Ordered along the path. */
public record Position(int segment, double t) implements Comparable<Position> {
    public Position {
        if (segment < 0 || !(t >= 0 && t <= 1)) {
            throw new IllegalArgumentException("no such place on a path: segment " + segment + ", parameter " + t);
        }
    }

    @Override
    public int compareTo(Position other) {
        int bySegment = Integer.compare(segment, other.segment);
        return bySegment != 0 ? bySegment : Double.compare(t, other.t);
    }
}
