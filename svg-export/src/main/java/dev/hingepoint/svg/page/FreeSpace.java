package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.JtsBridge;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.quadtree.Quadtree;

/** The room inside a piece that nothing is drawn in yet: texts are set there, each keeping clear of every line and of each other. */
final class FreeSpace {
    private static final double CLEAR = 1;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final PreparedGeometry inside;
    private final Quadtree taken = new Quadtree();

    FreeSpace(List<Point> outline) {
        this.inside = PreparedGeometryFactory.prepare(JtsBridge.polygon(outline));
    }

    void take(Stroke stroke) {
        for (int i = 1; i < stroke.points().size(); i++) {
            Geometry part = FACTORY.createLineString(new Coordinate[] {
                coordinate(stroke.points().get(i - 1)),
                coordinate(stroke.points().get(i))
            });
            taken.insert(part.getEnvelopeInternal(), part);
        }
    }

    void take(Text text) {
        Polygon room = room(text);
        taken.insert(room.getEnvelopeInternal(), room);
    }

    /** The first of the candidates whose every text has room; it then takes the room. */
    Optional<List<Text>> place(Stream<List<Text>> candidates) {
        Optional<List<Text>> found = candidates.filter(this::isFree).findFirst();
        found.ifPresent(texts -> texts.forEach(this::take));
        return found;
    }

    private boolean isFree(List<Text> texts) {
        return texts.stream().allMatch(text -> {
            Polygon room = room(text);
            if (!inside.contains(room)) {
                return false;
            }
            Envelope near = new Envelope(room.getEnvelopeInternal());
            near.expandBy(CLEAR);
            for (Object other : taken.query(near)) {
                if (room.isWithinDistance((Geometry) other, CLEAR)) {
                    return false;
                }
            }
            return true;
        });
    }

    private static Polygon room(Text text) {
        List<Point> corners = text.corners();
        Coordinate[] ring = new Coordinate[5];
        for (int i = 0; i < 5; i++) {
            ring[i] = coordinate(corners.get(i % 4));
        }
        return FACTORY.createPolygon(ring);
    }

    private static Coordinate coordinate(Point point) {
        return new Coordinate(point.x(), point.y());
    }
}
