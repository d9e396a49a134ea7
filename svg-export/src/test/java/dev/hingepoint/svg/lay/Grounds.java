package dev.hingepoint.svg.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Lays;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;

/** Shapes to lay, and polygons to see by, in a way of their own, how they lie. */
final class Grounds {
    static final GeometryFactory FACTORY = new GeometryFactory();

    private Grounds() {}

    static List<Point> box(double left, double top, double width, double height) {
        return List.of(
                new Point(left, top),
                new Point(left + width, top),
                new Point(left + width, top + height),
                new Point(left, top + height));
    }

    static Shape shape(Lays.Way way, List<Point> ring) {
        return new Shape(List.of(ring), way);
    }

    /** Stars with arms of any length round a middle: never crossing themselves, hollow more often than not, with a room of words beside some of them. */
    static Arbitrary<Shape> shapes(double smallest, double largest) {
        Arbitrary<List<Double>> arms =
                Arbitraries.doubles().between(0.2, 1).list().ofMinSize(4).ofMaxSize(12);
        Arbitrary<Double> sizes = Arbitraries.doubles().between(smallest, largest);
        return Combinators.combine(arms, sizes, sizes, Arbitraries.of(Lays.Way.values()), Arbitraries.of(true, false))
                .as((lengths, width, height, way, isWithWords) -> {
                    List<Point> star = IntStream.range(0, lengths.size())
                            .mapToObj(i -> Vector.ofAngle(2 * Math.PI * i / lengths.size())
                                    .times(lengths.get(i) / 2))
                            .map(arm -> new Point(1000 + width * arm.x(), -500 + height * arm.y()))
                            .toList();
                    List<List<Point>> grounds = new ArrayList<>(List.of(star));
                    if (isWithWords) {
                        grounds.add(box(1000 + width / 2, -500, smallest / 2, smallest / 4));
                    }
                    return new Shape(grounds, way);
                });
    }

    /** What a shape takes where it lies. */
    static Geometry ground(Shape shape, Motion place) {
        return shape.grounds().stream()
                .map(ring -> (Geometry) FACTORY.createPolygon(ring(ring, place)))
                .reduce(Geometry::union)
                .orElseThrow();
    }

    static Geometry lines(Shape shape, Motion place) {
        return FACTORY.createGeometryCollection(
                shape.grounds().stream().map(ring -> ring(ring, place)).toArray(Geometry[]::new));
    }

    private static LinearRing ring(List<Point> ring, Motion place) {
        return FACTORY.createLinearRing(IntStream.rangeClosed(0, ring.size())
                .mapToObj(i -> place.of(ring.get(i % ring.size())))
                .map(point -> new Coordinate(point.x(), point.y()))
                .toArray(Coordinate[]::new));
    }

    static void assertApart(List<Shape> shapes, Laid laid, double apart) {
        for (int i = 0; i < shapes.size(); i++) {
            Geometry one = ground(shapes.get(i), laid.places().get(i));
            for (int k = 0; k < i; k++) {
                double distance =
                        one.distance(ground(shapes.get(k), laid.places().get(k)));
                assertTrue(distance >= apart - 1e-9, i + " lies " + distance + " mm from " + k);
            }
        }
    }

    static void assertTurnedOnlyAsAllowed(List<Shape> shapes, Laid laid) {
        assertEquals(shapes.size(), laid.places().size());
        for (int i = 0; i < shapes.size(); i++) {
            Motion place = laid.places().get(i);
            List<Double> turn = List.of(place.xx(), place.xy(), place.yx(), place.yy());
            List<List<Double>> allowed = switch (shapes.get(i).way()) {
                case ONE_WAY -> List.of(List.of(1.0, 0.0, 0.0, 1.0));
                case TWO_WAYS -> List.of(List.of(1.0, 0.0, 0.0, 1.0), List.of(-1.0, 0.0, 0.0, -1.0));
                case ANY_WAY ->
                    List.of(
                            List.of(1.0, 0.0, 0.0, 1.0),
                            List.of(-1.0, 0.0, 0.0, -1.0),
                            List.of(0.0, -1.0, 1.0, 0.0),
                            List.of(0.0, 1.0, -1.0, 0.0));
            };
            assertTrue(allowed.contains(turn), shapes.get(i).way() + " lies turned by " + turn);
        }
    }

    static Envelope bounds(Shape shape, Motion place) {
        return ground(shape, place).getEnvelopeInternal();
    }
}
