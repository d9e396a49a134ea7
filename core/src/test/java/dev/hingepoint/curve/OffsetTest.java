package dev.hingepoint.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

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

    /** A joint that bends by rounding only does not fold the parallel. */
    @Test
    void aBendOfRoundingIsNone() {
        Path path = Path.through(new Point(0, 0), new Point(100, 0), new Point(200, -1e-5));
        List<Point> parallel = Offset.polyline(path, 10, 0.01);
        assertEquals(3, parallel.size());
        assertEquals(100, parallel.get(1).x(), 1e-4);
    }
}
