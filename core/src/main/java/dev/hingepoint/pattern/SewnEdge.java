package dev.hingepoint.pattern;

import dev.hingepoint.curve.Path;
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

    /** A dart's mouth on the edge, in mm along the drawn path. */
    private record Mouth(double from, double to) {
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
                            return new Mouth(Math.min(one, other), Math.max(one, other));
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
