package dev.hingepoint.svg.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import java.util.List;
import org.junit.jupiter.api.Test;

class HiddenTest {
    private static final Hidden SQUARE = new Hidden(
            Path.through(new Point(10, 0), new Point(20, 0), new Point(20, 10), new Point(10, 10), new Point(10, 0)));

    /** Lines are cut within this many mm of the ring. */
    private static final double CLOSE = 0.1 + Tolerance.COINCIDENT;

    @Test
    void aLineThatRunsBehindIsCutInTwo() {
        List<List<Point>> shown = SQUARE.outside(List.of(Path.through(new Point(0, 5), new Point(30, 5))));
        assertEquals(2, shown.size());
        assertEquals(10, shown.get(0).get(shown.get(0).size() - 1).x(), CLOSE);
        assertEquals(20, shown.get(1).get(0).x(), CLOSE);
    }

    @Test
    void ofTheSameLineTheMiddleIsWithin() {
        List<List<Point>> shown = SQUARE.within(List.of(Path.through(new Point(0, 5), new Point(30, 5))));
        assertEquals(1, shown.size());
        assertEquals(10, shown.get(0).get(0).x(), CLOSE);
        assertEquals(20, shown.get(0).get(shown.get(0).size() - 1).x(), CLOSE);
    }

    @Test
    void aLineBesideItStaysWholeAndOneBehindItGoes() {
        Path beside = Path.through(new Point(0, 20), new Point(30, 20));
        Path behind = Path.through(new Point(12, 5), new Point(18, 5));
        assertEquals(List.of(List.of(beside.start(), beside.end())), SQUARE.outside(List.of(beside, behind)));
    }
}
