package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Text;
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
public final class FreeSpace {
    private static final Point ORIGIN = new Point(0, 0);
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final PreparedGeometry inside;
    private final double clear;
    private final Quadtree taken;
    private final List<Envelope> kept;

    private FreeSpace(PreparedGeometry inside, double clear, Quadtree taken, List<Envelope> kept) {
        this.inside = inside;
        this.clear = clear;
        this.taken = taken;
        this.kept = List.copyOf(kept);
    }

    /** @param clear how far in mm words keep from lines and from one another */
    static FreeSpace within(List<Point> outline, double clear) {
        return withinRings(List.of(outline), clear);
    }

    /**
     * @param outline closed lines; one within another is a hole
     * @param clear how far in mm words keep from lines and from one another
     */
    static FreeSpace withinRings(List<List<Point>> outline, double clear) {
        return new FreeSpace(prepared(outline), clear, new Quadtree(), List.of());
    }

    /** The room in a box. */
    public static FreeSpace within(Box box, double clear) {
        return within(box.corners(), clear);
    }

    private static PreparedGeometry prepared(List<List<Point>> outline) {
        return PreparedGeometryFactory.prepare(Ground.within(outline));
    }

    /** The same drawing within another outline: what is taken in the one is taken in the other. */
    FreeSpace alsoWithin(List<List<Point>> outline) {
        return new FreeSpace(prepared(outline), clear, taken, kept);
    }

    /** The same space and what is taken in it, with another distance to keep, in mm. */
    FreeSpace keepingOff(double otherClear) {
        return new FreeSpace(inside, otherClear, taken, kept);
    }

    /** The same space less some boxes. */
    FreeSpace without(List<Box> boxes) {
        return new FreeSpace(
                inside,
                clear,
                taken,
                boxes.stream()
                        .map(box -> new Envelope(box.left(), box.right(), box.top(), box.bottom()))
                        .toList());
    }

    public void take(Stroke stroke) {
        for (int i = 1; i < stroke.points().size(); i++) {
            Geometry part = FACTORY.createLineString(new Coordinate[] {
                coordinate(stroke.points().get(i - 1)),
                coordinate(stroke.points().get(i))
            });
            taken.insert(part.getEnvelopeInternal(), part);
        }
    }

    public void take(Text text) {
        Polygon room = room(text);
        taken.insert(room.getEnvelopeInternal(), room);
    }

    /** The first of the candidates that has room; it then takes the room. */
    public Optional<Text> place(Stream<Text> candidates) {
        Optional<Text> found = candidates.filter(text -> isFree(room(text))).findFirst();
        found.ifPresent(this::take);
        return found;
    }

    /**
     * Texts that are set together, at the first place where all of them have room; they then take the room.
     *
     * @param texts as they are set round (0, 0)
     */
    Optional<List<Text>> place(List<Text> texts, Stream<Point> places) {
        List<Polygon> rooms = texts.stream().map(FreeSpace::room).toList();
        Envelope all = new Envelope();
        rooms.forEach(room -> all.expandToInclude(room.getEnvelopeInternal()));
        Optional<List<Text>> found = places.filter(at ->
                        isKeptOff(moved(all, at)) && rooms.stream().allMatch(room -> isFree(moved(room, at))))
                .findFirst()
                .map(at -> texts.stream()
                        .map(text -> text.moved(Motion.shift(at.minus(ORIGIN))))
                        .toList());
        found.ifPresent(set -> set.forEach(this::take));
        return found;
    }

    /** A place that is surely inside, whatever is drawn there. */
    Point interior() {
        Coordinate interior = inside.getGeometry().getInteriorPoint().getCoordinate();
        return new Point(interior.x, interior.y);
    }

    /** Whether a place is inside, whatever is drawn there. */
    boolean holds(Point point) {
        return inside.contains(FACTORY.createPoint(coordinate(point)));
    }

    /** The smallest upright box that holds the space. */
    Box bounds() {
        Envelope all = inside.getGeometry().getEnvelopeInternal();
        return new Box(all.getMinX(), all.getMinY(), all.getMaxX(), all.getMaxY());
    }

    private boolean isKeptOff(Envelope room) {
        return kept.stream().noneMatch(room::intersects);
    }

    private boolean isFree(Polygon room) {
        Envelope near = new Envelope(room.getEnvelopeInternal());
        if (!isKeptOff(near) || !inside.contains(room)) {
            return false;
        }
        near.expandBy(clear);
        for (Object other : taken.query(near)) {
            if (room.isWithinDistance((Geometry) other, clear)) {
                return false;
            }
        }
        return true;
    }

    private static Envelope moved(Envelope box, Point by) {
        return new Envelope(
                box.getMinX() + by.x(), box.getMaxX() + by.x(), box.getMinY() + by.y(), box.getMaxY() + by.y());
    }

    private static Polygon moved(Polygon room, Point by) {
        Coordinate[] ring = room.getCoordinates();
        for (int i = 0; i < ring.length; i++) {
            ring[i] = new Coordinate(ring[i].x + by.x(), ring[i].y + by.y());
        }
        return FACTORY.createPolygon(ring);
    }

    private static Polygon room(Text text) {
        return JtsBridge.polygon(text.corners());
    }

    private static Coordinate coordinate(Point point) {
        return new Coordinate(point.x(), point.y());
    }
}
