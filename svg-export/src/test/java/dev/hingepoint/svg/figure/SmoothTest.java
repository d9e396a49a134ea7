package dev.hingepoint.svg.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SmoothTest {
    /** Derived: a circle is known. Hobby's handle for an eighth of one is off by less than a thousandth of its radius. */
    @Test
    void pointsOfACircleGiveTheCircle() {
        List<Point> points = IntStream.rangeClosed(0, 8)
                .mapToObj(i -> new Point(0, 0)
                        .plus(Vector.ofAngle(i * StrictMath.PI / 4).times(100)))
                .toList();
        Path path = Smooth.through(new Vector(0, 1), points, new Vector(0, 1));
        for (Point point : path.flatten(Tolerance.FLATTENING)) {
            assertEquals(100, point.distanceTo(new Point(0, 0)), 0.1);
        }
    }

    @Test
    void itGoesThroughItsPointsWithoutCorners() {
        List<Point> points =
                List.of(new Point(0, 0), new Point(30, 5), new Point(35, 40), new Point(80, 20), new Point(90, 90));
        Path path = Smooth.through(points);
        for (Point point : points) {
            assertEquals(0, path.distanceTo(point), Tolerance.COINCIDENT);
        }
        assertEquals(List.of(), path.corners(Tolerance.CORNER));
    }

    @Test
    void itIsTheSameFromEitherEnd() {
        List<Point> points = List.of(new Point(0, 0), new Point(30, 5), new Point(35, 40), new Point(80, 20));
        List<Point> back = List.of(points.get(3), points.get(2), points.get(1), points.get(0));
        assertTrue(Smooth.through(points).isCloseTo(Smooth.through(back).reversed(), Tolerance.COINCIDENT));
    }

    @Test
    void pointsOnALineGiveTheLine() {
        Path path = Smooth.through(new Point(0, 0), new Point(10, 10), new Point(50, 50));
        assertEquals(path.start().distanceTo(path.end()), path.length(), Tolerance.COINCIDENT);
    }
}
