package dev.hingepoint.pattern;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What is sewn to what.
 *
 * @param join the edges of the first side, in a run
 * @param to the edges of the other side, in a run
 * @param easeFrom how much longer in mm the first side may be, at least
 * @param easeTo how much longer in mm the first side may be, at most
 * @param reversed where neighbours and notches do not decide which ends meet: the one's start at the other's end, as drawn
 */
public record Seam(List<EdgeRef> join, List<EdgeRef> to, double easeFrom, double easeTo, boolean reversed) {
    public Seam {
        join = List.copyOf(join);
        to = List.copyOf(to);
        if (join.isEmpty() || to.isEmpty() || !(easeFrom <= easeTo)) {
            throw new IllegalArgumentException("a seam joins edges to edges, with an ease from less to more");
        }
    }

    public static Seam of(EdgeRef join, EdgeRef to) {
        return new Seam(List.of(join), List.of(to), 0, 0, false);
    }

    public boolean joins(EdgeRef edge) {
        return join.contains(edge) || to.contains(edge);
    }

    public Seam withEase(double from, double upTo) {
        return new Seam(join, to, from, upTo, reversed);
    }

    /** "front/armhole + back/armhole". */
    public static String nameOf(List<EdgeRef> side) {
        return side.stream().map(EdgeRef::toString).collect(Collectors.joining(" + "));
    }

    @Override
    public String toString() {
        return nameOf(join) + " to " + nameOf(to);
    }
}
