package dev.hingepoint.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Held against closed forms: derived. */
class ParallelTest {
    /** A quarter of a circle of radius 100, anticlockwise from the right: within 0.03 mm, as four-arc circles are. */
    private static Path quarter(double radius) {
        double handle = radius * 4 / 3 * StrictMath.tan(Math.PI / 8);
        return Path.of(new Cubic(
                new Point(radius, 0), new Point(radius, -handle), new Point(handle, -radius), new Point(0, -radius)));
    }

    @Test
    void ofAnArcIsAnArcOfTheOtherRadius() {
        for (double tolerance : new double[] {1, 0.1, 0.01, 0.001}) {
            Path outside = Parallel.of(quarter(100), -40, tolerance);
            Path inside = Parallel.of(quarter(100), 40, tolerance);
            assertEquals(Math.PI / 2 * 140, outside.length(), 0.05 + 2 * tolerance);
            assertEquals(Math.PI / 2 * 60, inside.length(), 0.05 + 2 * tolerance);
            for (Point point : outside.flatten(0.01)) {
                assertEquals(140, point.distanceTo(new Point(0, 0)), 0.03 + tolerance);
            }
        }
    }

    @Test
    void sidesRunOnToAnOuterCornerAndAreCutOffAtAnInnerOne() {
        Path corner = Path.through(new Point(0, 0), new Point(100, 0), new Point(100, 100));
        assertEquals(
                List.of(new Point(0, -10), new Point(110, -10), new Point(110, 100)),
                Path.through(Parallel.of(corner, 10, 0.01).flatten(0.01))
                        .controlPoints()
                        .filter(point -> !point.isCloseTo(new Point(100, -10), 1e-9)
                                && !point.isCloseTo(new Point(110, 0), 1e-9))
                        .toList());
        assertEquals(
                List.of(new Point(0, 10), new Point(90, 10), new Point(90, 100)),
                Parallel.of(corner, -10, 0.01).controlPoints().toList());
    }

    @Test
    void insideATightBendThereIsNone() {
        assertThrows(IllegalArgumentException.class, () -> Parallel.of(quarter(30), 40, 0.01));
    }
}
