package dev.hingepoint.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OffsetTest {
    @Provide
    Arbitrary<Cubic> smooth() {
        return Curves.smooth();
    }

    @Test
    void leftOfALineThatRunsRightIsUpOnThePaper() {
        List<Point> parallel = Offset.polyline(Path.through(new Point(0, 0), new Point(10, 0)), 3, 0.01);
        assertEquals(List.of(new Point(0, -3), new Point(10, -3)), parallel);
    }

    @Property(seed = "51")
    void theParallelIsThatFarFromTheCurve(
            @ForAll("smooth") Cubic cubic, @ForAll @DoubleRange(min = 5, max = 25) double distance) {
        Path path = Path.of(cubic);
        boolean isTight = false;
        for (int i = 0; i <= 100; i++) {
            isTight |= -cubic.curvature(i / 100.0) * distance > 0.8;
        }
        if (isTight) {
            return;
        }
        List<Point> parallel = Offset.polyline(path, distance, 0.01);
        for (int i = 1; i < parallel.size(); i++) {
            assertEquals(distance, path.distanceTo(parallel.get(i)), 1e-6);
            assertEquals(distance, path.distanceTo(parallel.get(i).midpoint(parallel.get(i - 1))), 0.011);
        }
        assertTrue(parallel.get(0)
                .isCloseTo(cubic.start().plus(cubic.tangent(0).left().times(distance)), 1e-9));
    }

    /** Derived: where a path bends by b away from the offset side, both parallels meet at distance / cos(b / 2) from the corner; past the limit they are cut off square there. */
    @Property(seed = "53")
    void aCornerThatOpensIsMitred(
            @ForAll @DoubleRange(min = 0.2, max = 3) double bend,
            @ForAll @DoubleRange(min = 5, max = 25) double distance) {
        Point corner = new Point(0, 0);
        Vector leaving = new Vector(1, 0).turned(bend);
        Path path = Path.through(new Point(-300, 0), corner, corner.plus(leaving.times(300)));
        List<Point> parallel = Offset.polyline(path, distance, 0.01);
        double meeting = distance / StrictMath.cos(bend / 2);
        double farthest = parallel.stream()
                .filter(point -> point.distanceTo(corner) < 250)
                .mapToDouble(point -> point.minus(corner)
                        .dot(new Vector(1, 0).turned(bend / 2).left()))
                .max()
                .orElseThrow();
        assertEquals(Math.min(meeting, Offset.MITRE_LIMIT * distance), farthest, 1e-9);
        for (int i = 1; i < parallel.size(); i++) {
            assertTrue(path.distanceTo(parallel.get(i).midpoint(parallel.get(i - 1))) >= distance - 1e-9);
        }
    }

    /** Quarter turns about a small radius with a straight run on either side, as at a tight neckline or a pocket's corner. */
    @Provide
    Arbitrary<Cubic> tight() {
        Arbitrary<Double> radius = Arbitraries.doubles().between(1, 8);
        Arbitrary<Double> run = Arbitraries.doubles().between(0, 80);
        return Combinators.combine(radius, run, run, Arbitraries.doubles().between(-3, 3))
                .as((r, before, after, angle) -> {
                    double handle = 0.5523 * r;
                    Cubic corner = new Cubic(
                            new Point(-r - before, 0),
                            new Point(-r + handle, 0),
                            new Point(0, r - handle),
                            new Point(0, r + after));
                    return corner.moved(Motion.turn(new Point(0, 0), angle));
                });
    }

    /** At every tolerance, along the whole parallel; the true one is sampled far more finely than the library steps. */
    @Property(seed = "52", tries = 100)
    void thePolylineKeepsItsTolerance(
            @ForAll("tight") Cubic cubic,
            @ForAll @DoubleRange(min = -40, max = 40) double distance,
            @ForAll @IntRange(min = 0, max = 4) int magnitude) {
        double tolerance = 0.1 * Math.pow(10, -magnitude / 2.0);
        Path polyline = Path.through(Offset.polyline(Path.of(cubic), distance, tolerance));
        for (int i = 0; i <= 3000; i++) {
            double t = i / 3000.0;
            Point beside = cubic.at(t).plus(cubic.tangent(t).left().times(distance));
            double off = polyline.distanceTo(beside);
            assertTrue(off <= tolerance + 1e-9, off + " at " + t);
        }
    }

    /** A circle's parallel is a circle: radius 3, offset 15, on either side. */
    @ParameterizedTest
    @ValueSource(doubles = {15, -15, 2.5})
    void theParallelOfACircleIsACircle(double distance) {
        double r = 3;
        double k = 4 / 3.0 * (StrictMath.sqrt(2) - 1) * r;
        Cubic quarter = new Cubic(new Point(r, 0), new Point(r, k), new Point(k, r), new Point(0, r));
        List<Point> parallel = Offset.polyline(Path.of(quarter), distance, 0.01);
        for (int i = 1; i < parallel.size(); i++) {
            Point middle = parallel.get(i).midpoint(parallel.get(i - 1));
            // four cubics leave their circle by 2.7e-4 of its radius (derived)
            assertEquals(Math.abs(r + distance), middle.distanceTo(new Point(0, 0)), 0.01 + 3e-4 * r);
        }
    }

    /** A joint that bends by rounding only does not fold the parallel. */
    @Test
    void aBendOfRoundingIsNone() {
        Path path = Path.through(new Point(0, 0), new Point(100, 0), new Point(200, -1e-5));
        List<Point> parallel = Offset.polyline(path, 10, 0.01);
        assertEquals(3, parallel.size());
        assertEquals(100, parallel.get(1).x(), 1e-4);
    }
}
