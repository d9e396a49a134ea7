package dev.hingepoint.pattern;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import java.util.Comparator;
import java.util.List;

/**
 * An edge as it is sewn: the same path with the mouths of its darts left out. Distances are mm of sewn length from the edge's start
 * as drawn.
 */
public final class SewnEdge {
    private final Path path;
    private final List<Mouth> mouths;

    /**
     * A dart's mouth on the edge, in mm along the drawn path.
     *
     * @param closing the turn about the dart's tip that brings all beyond the mouth to where it is sewn
     */
    private record Mouth(double from, double to, Motion closing) {
        double width() {
            return to - from;
        }
    }

    private SewnEdge(Path path, List<Mouth> mouths) {
        this.path = path;
        this.mouths = mouths;
    }

    static SewnEdge of(Piece piece, Edge edge) {
        Path path = edge.path();
        return new SewnEdge(
                path,
                piece.marks(EdgeDart.class)
                        .filter(dart -> isOn(path, dart))
                        .map(dart -> {
                            double one = path.distanceAlong(path.nearest(dart.mouthStart()));
                            double other = path.distanceAlong(path.nearest(dart.mouthEnd()));
                            Point near = one < other ? dart.mouthStart() : dart.mouthEnd();
                            Point far = one < other ? dart.mouthEnd() : dart.mouthStart();
                            Motion closing = Motion.turn(dart.tip(), far.minus(dart.tip()), near.minus(dart.tip()));
                            return new Mouth(Math.min(one, other), Math.max(one, other), closing);
                        })
                        .sorted(Comparator.comparingDouble(Mouth::from))
                        .toList());
    }

    /** Whether the dart opens on the path. */
    public static boolean isOn(Path path, EdgeDart dart) {
        return path.hull().distanceTo(dart.mouthStart()) <= Tolerance.JOINING
                && path.distanceTo(dart.mouthStart()) <= Tolerance.JOINING
                && path.distanceTo(dart.mouthEnd()) <= Tolerance.JOINING;
    }

    public double length() {
        return path.length() - mouths.stream().mapToDouble(Mouth::width).sum();
    }

    /** The edge's line with its darts closed, all beyond each turned about the dart's tip. */
    public Path closed() {
        Path closed = null;
        Motion beyond = Motion.STAY;
        double from = 0;
        for (Mouth mouth : mouths) {
            closed = joined(closed, from, mouth.from, beyond);
            beyond = mouth.closing.then(beyond);
            from = mouth.to;
        }
        return joined(closed, from, path.length(), beyond);
    }

    private Path joined(Path closed, double from, double to, Motion place) {
        if (to - from <= Tolerance.COINCIDENT) {
            return closed;
        }
        Path part = path.part(from, to).moved(place);
        return closed == null ? part : closed.then(part.withStart(closed.end()));
    }

    /** The sewn distance of a place; within a mouth, that of the mouth. */
    public double distanceAlong(Position position) {
        double drawn = path.distanceAlong(position);
        double sewn = drawn;
        for (Mouth mouth : mouths) {
            sewn -= Math.max(0, Math.min(drawn, mouth.to) - mouth.from);
        }
        return sewn;
    }

    /** The place at a sewn distance; at a dart, its first leg end. */
    public Position positionAt(double sewnDistance) {
        double drawn = sewnDistance;
        for (Mouth mouth : mouths) {
            if (drawn > mouth.from) {
                drawn += mouth.width();
            }
        }
        return path.positionAt(Math.min(drawn, path.length()));
    }
}
