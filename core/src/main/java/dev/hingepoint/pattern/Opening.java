package dev.hingepoint.pattern;

/**
 * A stretch of an edge that stays open for a fastening.
 *
 * @param from the neighbour at whose end it begins
 */
public record Opening(EdgeRef edge, String from, Length length) {
    public Opening withLength(double mm) {
        return new Opening(edge, from, new Length(mm));
    }
}
