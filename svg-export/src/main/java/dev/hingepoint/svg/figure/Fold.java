package dev.hingepoint.svg.figure;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * One wrinkle of cloth: an arc, deepest in its middle. In heads, as a figure is.
 *
 * @param bow how far its middle lies to the right of the straight way, as one goes along it: a fold that goes to the right and sags has more than 0
 */
record Fold(Point from, Point to, double bow) {
    /** Folds of a group are not all alike, or they look ruled: each is so much of the longest. */
    private static final double[] LENGTHS = {1, 0.7, 0.85, 0.55, 0.75};

    /** Half of how thick a fold is drawn: a part of its length, up to so much. */
    private static final double DEPTH = 0.024;

    private static final double DEEPEST = 0.01;

    static Fold of(double fromX, double fromY, double toX, double toY, double bow) {
        return new Fold(new Point(fromX, fromY), new Point(toX, toY), bow);
    }

    /** So many folds beside one another, each a step from the last; shorter by turns, about their middles. */
    static List<Fold> beside(int count, Fold first, Vector step) {
        List<Fold> folds = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            folds.add(first.moved(step.times(i)).shortened(LENGTHS[i % LENGTHS.length]));
        }
        return folds;
    }

    /**
     * Folds that fan out from a place to places in a row, shorter by turns at their far ends.
     *
     * @param clear how far from the place they begin
     * @param bow of the outermost, which bend away from the middle one
     */
    static List<Fold> from(Point place, double clear, Point first, Point last, int count, double bow) {
        List<Fold> folds = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Vector way = first.towards(last, (double) i / (count - 1)).minus(place);
            Point start = place.plus(way.unit().times(clear));
            Point end = place.plus(way.times(i % 2 == 0 ? 1 : 0.85));
            folds.add(new Fold(start, end, bow * (2.0 * i / (count - 1) - 1)));
        }
        return folds;
    }

    static List<Fold> onBothSides(List<Fold> folds) {
        return all(folds, folds.stream().map(Fold::mirrored).toList());
    }

    static List<Fold> all(List<Fold> some, List<Fold> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }

    private Fold moved(Vector step) {
        return new Fold(from.plus(step), to.plus(step), bow);
    }

    private Fold shortened(double part) {
        double off = (1 - part) / 2;
        return new Fold(from.towards(to, off), to.towards(from, off), bow * part);
    }

    private Fold mirrored() {
        return new Fold(new Point(-from.x(), from.y()), new Point(-to.x(), to.y()), -bow);
    }

    /** Its lines: their middles lie side by side, so that together they are thick in the middle and thin at the ends; a short fold is not as deep as a long one. */
    List<Path> paths() {
        Vector way = to.minus(from);
        Point middle = from.midpoint(to);
        Vector right = way.unit().right();
        double thick = Math.min(DEEPEST, way.length() * DEPTH);
        return DoubleStream.of(-thick, 0, thick)
                .mapToObj(off -> Smooth.through(from, middle.plus(right.times(bow + off)), to))
                .toList();
    }
}
