package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Piece;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** The lines of a piece before it was altered, where they are not the altered ones: what lies on these is not drawn twice. */
final class OriginalLines {
    /** A stretch shorter than this, in mm, would be a dot of the line that it is drawn with. */
    private static final double SHORTEST = 1.5;

    private OriginalLines() {}

    /** Stretches of the stitching line and of darts as drawn, farther than {@link Tolerance#JOINING} from the altered ones, the longest first. */
    static List<Path> of(Draft draft, Piece piece) {
        return draft.drawn().nest().stream()
                .filter(piece::isSamePieceAs)
                .filter(old -> !old.equals(piece))
                .flatMap(old -> Stream.concat(
                        elsewhere(edges(old), edges(piece)).stream(), elsewhere(darts(old), darts(piece)).stream()))
                .sorted(Comparator.comparingDouble(path -> -path.length()))
                .toList();
    }

    private static List<Path> edges(Piece piece) {
        return piece.edges().stream().map(Edge::path).toList();
    }

    private static List<Path> darts(Piece piece) {
        return piece.marks(Dart.class).flatMap(dart -> dart.legs().stream()).toList();
    }

    private static List<Path> elsewhere(List<Path> old, List<Path> now) {
        Geometry taken = lines(now).buffer(Tolerance.JOINING);
        LineMerger merger = new LineMerger();
        old.forEach(
                path -> merger.add(OverlayNGRobust.overlay(JtsBridge.lineString(path), taken, OverlayNG.DIFFERENCE)));
        return ((Collection<?>) merger.getMergedLineStrings())
                .stream()
                        .map(LineString.class::cast)
                        .filter(line -> line.getLength() >= SHORTEST)
                        .map(line -> Path.through(JtsBridge.points(line)))
                        .toList();
    }

    private static Geometry lines(List<Path> paths) {
        return new GeometryFactory()
                .createMultiLineString(paths.stream().map(JtsBridge::lineString).toArray(LineString[]::new));
    }
}
