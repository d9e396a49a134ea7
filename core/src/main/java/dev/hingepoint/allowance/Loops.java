package dev.hingepoint.allowance;

import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.JtsBridge;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Takes the loops out of a ring of parallels: where a curve is too tight for the allowance, its parallel runs back on itself. */
final class Loops {
    private Loops() {}

    /** The outer boundary of what the ring runs round in its own direction. */
    static List<Point> removed(List<Point> ring, boolean isClockwise) {
        GeometryFactory factory = new GeometryFactory();
        LineString line = factory.createLineString(
                ring.stream().map(point -> new Coordinate(point.x(), point.y())).toArray(Coordinate[]::new));
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(line.union());
        List<Geometry> inside = new ArrayList<>();
        for (Object face : (Collection<?>) polygonizer.getPolygons()) {
            Coordinate within = ((Polygon) face).getInteriorPoint().getCoordinate();
            if (turns(ring, within) * (isClockwise ? 1 : -1) > 0) {
                inside.add((Polygon) face);
            }
        }
        Geometry union = UnaryUnionOp.union(inside);
        if (!(union instanceof Polygon whole)) {
            return ring;
        }
        List<Point> outer = JtsBridge.points(whole.getExteriorRing());
        boolean turned = turns(outer, whole.getInteriorPoint().getCoordinate()) > 0 != isClockwise;
        if (turned) {
            Collections.reverse(outer);
        }
        return begunNear(ring.get(0), outer);
    }

    /** JTS may begin a ring anywhere: the same ring begins where it is nearest to where it began before. */
    private static List<Point> begunNear(Point first, List<Point> ring) {
        List<Point> open = ring.subList(0, ring.size() - 1);
        int nearest = 0;
        for (int i = 1; i < open.size(); i++) {
            if (open.get(i).distanceTo(first) < open.get(nearest).distanceTo(first)) {
                nearest = i;
            }
        }
        List<Point> begun = new ArrayList<>(open.subList(nearest, open.size()));
        begun.addAll(open.subList(0, nearest + 1));
        return begun;
    }

    /** How often the ring runs clockwise, as one looks at the paper, round a point. */
    private static int turns(List<Point> ring, Coordinate point) {
        int turns = 0;
        for (int i = 1; i < ring.size(); i++) {
            Point a = ring.get(i - 1);
            Point b = ring.get(i);
            double side = (b.x() - a.x()) * (point.y - a.y()) - (b.y() - a.y()) * (point.x - a.x());
            if (a.y() <= point.y && b.y() > point.y && side > 0) {
                turns++;
            } else if (a.y() > point.y && b.y() <= point.y && side < 0) {
                turns--;
            }
        }
        return turns;
    }
}
