package dev.hingepoint.fit;

/**
 * How far a cloth stretches, as fractions of its length at rest: (stretched - rest) / rest.
 *
 * @param across round the body
 * @param down along it
 */
public record Cloth(double across, double down) {
    public Cloth {
        if (!(across >= 0 && across <= 10 && down >= 0 && down <= 10)) {
            throw new IllegalArgumentException("cloth stretches from 0 to 1000 %, not " + across + " and " + down);
        }
    }

    /** The least girth in mm, at rest, that can be drawn over {@code body} mm: body / (1 + stretch). Derived. */
    public double leastGirth(double body) {
        return body / (1 + across);
    }
}
