package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Lays;
import dev.hingepoint.svg.lay.Shape;
import dev.hingepoint.svg.page.Drawn;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

/** The ground that a drawing takes on a sheet: what its closed lines hold, its other lines, and the rooms of its words. */
final class Ground {
    private Ground() {}

    /** What closed lines hold; one within another is a hole. */
    static Geometry within(List<List<Point>> rings) {
        return rings.stream()
                .map(ring -> (Geometry) JtsBridge.polygon(ring))
                .reduce(Geometry::symDifference)
                .orElseThrow();
    }

    /**
     * What is to be laid so that nothing lies on the drawing, nor the drawing on anything.
     *
     * @param rings the closed lines that all within belongs to the drawing
     */
    static Shape of(Drawn drawn, List<List<Point>> rings, Lays.Way way) {
        List<List<Point>> grounds = new ArrayList<>(rings);
        drawn.strokes().forEach(stroke -> grounds.add(thereAndBack(stroke.points())));
        drawn.texts().forEach(text -> grounds.add(text.corners()));
        return new Shape(grounds, way);
    }

    /**
     * Whether another drawing of the same takes no ground but the first one's.
     *
     * @param rings the closed lines that all within belongs to both
     * @param slack how far in mm it may reach beyond that
     */
    static boolean holds(Drawn first, List<List<Point>> rings, Drawn other, double slack) {
        List<PreparedGeometry> within = rings.stream()
                .map(ring -> PreparedGeometryFactory.prepare(JtsBridge.polygon(ring)))
                .toList();
        List<Geometry> beside = beside(other, within);
        if (beside.isEmpty()) {
            return true;
        }
        Geometry room = CascadedPolygonUnion.union(
                beside(first, within).stream().map(part -> part.buffer(slack)).toList());
        return room != null && beside.stream().allMatch(room::covers);
    }

    /** The lines and the rooms of words that do not lie within closed lines. */
    private static List<Geometry> beside(Drawn drawn, List<PreparedGeometry> within) {
        Stream<Geometry> lines =
                drawn.strokes().stream().map(stroke -> JtsBridge.lineString(Path.through(stroke.points())));
        Stream<Geometry> words = drawn.texts().stream().map(text -> JtsBridge.polygon(text.corners()));
        return Stream.concat(lines, words)
                .filter(part -> within.stream().noneMatch(ground -> ground.covers(part)))
                .toList();
    }

    private static List<Point> thereAndBack(List<Point> line) {
        List<Point> ring = new ArrayList<>(line);
        for (int i = line.size() - 2; i > 0; i--) {
            ring.add(line.get(i));
        }
        return ring;
    }
}
