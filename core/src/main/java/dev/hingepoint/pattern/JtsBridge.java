package dev.hingepoint.pattern;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * The one door between pieces and JTS. Curves are flattened within {@link Tolerance#FLATTENING}; coordinates are copied both ways and
 * never shared, since JTS's can be changed.
 */
public final class JtsBridge {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private JtsBridge() {}

    /** The paper within the stitching line, darts open. */
    public static Polygon polygon(Piece piece) {
        return polygon(piece.outline().flatten(Tolerance.FLATTENING));
    }

    /** The polygon of a closed run of points; repeated points are dropped. */
    public static Polygon polygon(List<Point> ring) {
        return FACTORY.createPolygon(coordinates(ring));
    }

    static boolean holds(Piece piece, Point point) {
        return polygon(piece).contains(FACTORY.createPoint(new Coordinate(point.x(), point.y())));
    }

    /** An edge, in the direction in which it was drawn. */
    public static LineString lineString(Edge edge) {
        return lineString(edge.path());
    }

    public static LineString lineString(Path path) {
        return FACTORY.createLineString(coordinates(path.flatten(Tolerance.FLATTENING)));
    }

    private static Coordinate[] coordinates(List<Point> points) {
        List<Coordinate> coordinates = new ArrayList<>(points.size());
        Point last = null;
        for (Point point : points) {
            if (!point.equals(last)) {
                coordinates.add(new Coordinate(point.x(), point.y()));
            }
            last = point;
        }
        return coordinates.toArray(Coordinate[]::new);
    }

    /**
     * A piece of straight edges from a polygon's shell: {@code corners} gives, for each edge, the index of the shell's coordinate at
     * which it begins, in the order of the shell. Holes are not paper's, and are ignored.
     *
     * @throws dev.hingepoint.Refusal where the polygon makes no sound piece
     */
    public static Piece piece(
            String name, String size, List<Cutting> cuttings, Polygon polygon, LinkedHashMap<String, Integer> corners) {
        List<Point> shell = points(polygon.getExteriorRing());
        shell.remove(shell.size() - 1);
        List<Map.Entry<String, Integer>> starts = List.copyOf(corners.entrySet());
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            int from = starts.get(i).getValue();
            int to = starts.get((i + 1) % starts.size()).getValue();
            int steps = Math.floorMod(to - from, shell.size());
            List<Point> along = new ArrayList<>();
            for (int k = 0; k <= steps; k++) {
                along.add(shell.get((from + k) % shell.size()));
            }
            edges.add(new Edge(starts.get(i).getKey(), Edge.Kind.SEAM, Path.through(along)));
        }
        return Piece.of(name, size, Optional.empty(), cuttings, edges, List.of());
    }

    /** The points of a line string, in order. */
    public static List<Point> points(LineString line) {
        List<Point> points = new ArrayList<>();
        for (Coordinate coordinate : line.getCoordinates()) {
            points.add(new Point(coordinate.x, coordinate.y));
        }
        return points;
    }
}
