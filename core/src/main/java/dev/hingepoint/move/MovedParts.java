package dev.hingepoint.move;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.JtsBridge;
import java.util.List;
import java.util.function.BinaryOperator;
import org.locationtech.jts.algorithm.RayCrossingCounter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Location;

/**
 * The parts of a cut, each with its motion, the one on top first. A point on a slash belongs to the part on top; where parts overlap
 * after they moved, the part on top is kept and the one below it is trimmed.
 */
final class MovedParts implements PaperMap {
    /** A part and how it moves. */
    record MovedPart(Parts.Face face, Motion motion, boolean isFolded, CoordinateSequence ring) {
        static MovedPart of(Parts.Face face, Motion motion, boolean isFolded) {
            CoordinateSequence ring = JtsBridge.polygon(face.boundary().flatten(Tolerance.FLATTENING))
                    .getExteriorRing()
                    .getCoordinateSequence();
            return new MovedPart(face, motion, isFolded, ring);
        }

        private double distanceTo(Point point) {
            int location = RayCrossingCounter.locatePointInRing(new Coordinate(point.x(), point.y()), ring);
            return location == Location.EXTERIOR ? face.boundary().distanceTo(point) : 0;
        }
    }

    private final List<Path> slashes;
    private final List<MovedPart> topFirst;

    MovedParts(List<Path> slashes, List<MovedPart> topFirst) {
        this.slashes = slashes;
        this.topFirst = topFirst;
    }

    List<MovedPart> topFirst() {
        return topFirst;
    }

    /** The part a point lies on: on a slash, the one on top; off the paper, the nearest. */
    MovedPart at(Point point) {
        MovedPart nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (MovedPart part : topFirst) {
            double distance = part.distanceTo(point);
            if (distance <= Tolerance.COINCIDENT) {
                return part;
            }
            if (distance < least) {
                nearest = part;
                least = distance;
            }
        }
        return nearest;
    }

    MovedPart of(Parts.Face face) {
        return topFirst.stream().filter(part -> part.face() == face).findFirst().orElseThrow();
    }

    @Override
    public Point of(Point point) {
        return at(point).motion().of(point);
    }

    /**
     * Two runs that met at {@code cutPoint}, rejoined after their parts moved: a gap is bridged by {@code fill}; where they
     * overlap, the one below is trimmed at the edge of the one on top.
     */
    Path rejoin(
            Path one, MovedPart onePart, Path other, MovedPart otherPart, Point cutPoint, BinaryOperator<Path> fill) {
        Vector gap = other.start().minus(one.end());
        if (gap.length() <= Tolerance.COINCIDENT) {
            return one.then(other);
        }
        if (gap.dot(one.endTangent()) + gap.dot(other.startTangent()) >= 0) {
            return fill.apply(one, other);
        }
        Vector slash = slashAt(cutPoint);
        if (topFirst.indexOf(onePart) < topFirst.indexOf(otherPart)) {
            Path trimmed = trimmedBack(
                            other.reversed(), one.end(), onePart.motion().of(slash))
                    .reversed();
            return one.then(trimmed);
        }
        return trimmedBack(one, other.start(), otherPart.motion().of(slash)).then(other);
    }

    /** The path up to where it last passes under the edge of the paper on top. */
    private static Path trimmedBack(Path path, Point edgePoint, Vector edge) {
        var crossings = path.crossings(edgePoint, edge);
        return crossings.stream()
                .filter(position -> path.distanceAlong(position) > Tolerance.COINCIDENT)
                .reduce((first, second) -> second)
                .map(position -> path.part(path.startPosition(), position))
                .orElse(path);
    }

    private Vector slashAt(Point point) {
        Path nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (Path slash : slashes) {
            double distance = slash.distanceTo(point);
            if (distance < least) {
                nearest = slash;
                least = distance;
            }
        }
        return nearest.tangent(nearest.nearest(point));
    }

    List<Path> slashes() {
        return slashes;
    }
}
