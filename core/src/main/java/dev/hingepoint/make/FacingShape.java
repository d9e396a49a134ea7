package dev.hingepoint.make;

import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Fairing;
import dev.hingepoint.curve.Parallel;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.make.JoinedEdge.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The shape of a facing, traced from an edge whose pieces are laid together: beside the edge, parallel to it, its outer edge drawn fair where the pieces meet. Drawn by
 * hand the same way: with the shoulder seams together, so that the outer edge has no corner at the shoulder.
 */
final class FacingShape {
    /** The outer edge is drawn fair over so many mm on either side of a seam where the edge bends. */
    private static final double FAIR_OVER = 20;

    /** How far in mm the lines may leave the true parallel: a fifth of a pencil line. */
    private static final double TOLERANCE = 0.02;

    private final JoinedEdge edge;
    private final double depth;
    private final Path outer;

    /** @throws IllegalArgumentException where the edge bends too tightly for the depth */
    FacingShape(JoinedEdge edge, double depth) {
        this.edge = edge;
        this.depth = depth;
        this.outer = outer();
    }

    private Path outer() {
        Path fair = null;
        for (Part part : edge.parts()) {
            Path next = Parallel.of(part.path(), edge.paperSide() * depth, TOLERANCE);
            fair = fair == null ? next : fairly(fair, next);
        }
        Point start = fair.start().minus(fair.startTangent().times(3 * depth));
        Point end = fair.end().plus(fair.endTangent().times(3 * depth));
        return Path.through(start, fair.start()).then(fair).then(Path.through(fair.end(), end));
    }

    private static Path fairly(Path one, Path other) {
        if (Math.abs(Fairing.halfBend(one, other)) < Tolerance.CORNER / 2
                && one.end().isCloseTo(other.start(), Tolerance.JOINING)) {
            return one.then(other.withStart(one.end()));
        }
        Path before = one.part(0, one.length() - Math.min(FAIR_OVER, one.length() / 2));
        Path after = other.part(Math.min(FAIR_OVER, other.length() / 2), other.length());
        double third = before.end().distanceTo(after.start()) / 3;
        Cubic fair = new Cubic(
                before.end(),
                before.end().plus(before.endTangent().times(third)),
                after.start().minus(after.startTangent().times(third)),
                after.start());
        return before.then(Path.of(fair)).then(after);
    }

    /** The outer edge between two places on it. */
    Path outer(Position from, Position to) {
        return outer.part(from, to);
    }

    Point at(Position onOuter) {
        return outer.at(onOuter);
    }

    /** Where the outer edge is first met from a point along a direction. */
    Position met(Point from, Vector direction) {
        List<Position> crossings = outer.crossings(from, direction);
        return crossings.stream()
                .filter(position -> outer.at(position).minus(from).dot(direction) > 0)
                .min(Comparator.comparingDouble(
                        position -> outer.at(position).minus(from).dot(direction)))
                .orElseThrow(() -> new IllegalArgumentException("it runs out of the piece at " + depth + " mm"));
    }

    /**
     * How far in mm a stretch of outer edge is from lying {@code depth} beside the edge, at worst: beyond the edge's ends, and where it is drawn fair past a
     * seam at which the edge bends, there is nothing to be parallel to.
     */
    double offParallel(Path drawn) {
        Path joined = edge.path();
        List<Double> bends = bends();
        return drawn.flatten(Tolerance.FLATTENING).stream()
                .filter(point -> isBeside(joined.distanceAlong(joined.nearest(point)), joined.length(), bends))
                .mapToDouble(point -> Math.abs(joined.distanceTo(point) - depth))
                .max()
                .orElse(0);
    }

    /** Where in mm along the run the edge bends at a seam. */
    private List<Double> bends() {
        List<Double> bends = new ArrayList<>();
        double along = 0;
        for (int i = 1; i < edge.parts().size(); i++) {
            Path before = edge.parts().get(i - 1).path();
            along += before.length();
            if (Math.abs(Fairing.halfBend(before, edge.parts().get(i).path())) >= Tolerance.CORNER / 2) {
                bends.add(along);
            }
        }
        return bends;
    }

    private static boolean isBeside(double along, double length, List<Double> bends) {
        return along > Tolerance.JOINING
                && along < length - Tolerance.JOINING
                && bends.stream().allMatch(bend -> Math.abs(along - bend) > FAIR_OVER);
    }
}
