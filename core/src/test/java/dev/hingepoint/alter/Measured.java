package dev.hingepoint.alter;

import dev.hingepoint.curve.Path;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Piece;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** Measures by another way than the library: JTS on finely flattened lines. */
final class Measured {
    private Measured() {}

    /** The sewn length: the flattened edge less the straight mouths of its darts. */
    static double sewn(Piece piece, String edge) {
        LineString line = JtsBridge.lineString(piece.edge(edge).path());
        double length = line.getLength();
        for (EdgeDart dart : piece.marks(EdgeDart.class).toList()) {
            Geometry mouth = new GeometryFactory()
                    .createPoint(new Coordinate(
                            dart.mouthMiddle().x(), dart.mouthMiddle().y()));
            if (line.distance(mouth) < 0.1) {
                length -= dart.intake();
            }
        }
        return length;
    }

    static double length(Path path) {
        return JtsBridge.lineString(path).getLength();
    }

    /** How far two edges are apart at most: points of each, held against the other's true curve. */
    static double apart(Path one, Path other) {
        return Math.max(farthest(one, other), farthest(other, one));
    }

    private static double farthest(Path from, Path to) {
        return from.flatten(0.01).stream().mapToDouble(to::distanceTo).max().orElseThrow();
    }
}
