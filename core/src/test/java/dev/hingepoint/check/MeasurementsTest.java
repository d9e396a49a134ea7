package dev.hingepoint.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Finished measurements against sums by hand. */
class MeasurementsTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    /** A front of straight lines, cut on the fold: every length can be worked out with Pythagoras. */
    @Test
    void straightPaperMeasuresAsItsCornersSay() {
        double inch = 25.4;
        double side = 100 + 4.5 * inch;
        double underarm = 260;
        double top = underarm + 3 * (300 - 4 * inch - underarm);
        double topAcross = side + 3 * (100 + 3 * inch - side);
        Piece front = TestPatterns.straightFront(3, 4, Optional.of(20.0));
        Map<String, Double> finished = Measurements.of(TestPatterns.of(front).in("40"));
        assertEquals(2 * side, finished.get("waist girth"), 1e-9);
        assertEquals(2 * side, finished.get("hem sweep"), 1e-9);
        assertEquals(2 * StrictMath.hypot(60, 40), finished.get("neckline girth"), 1e-9);
        assertEquals(900 - top + 60, finished.get("centre front length"), 1e-9);
        assertEquals(900 - underarm - 20, finished.get("side length"), 1e-9, "the dart is closed");
        assertEquals(StrictMath.hypot(topAcross - 60, 100), finished.get("shoulder length"), 1e-9);
        assertFalse(finished.containsKey("sleeve length"));
    }

    /** Front on the fold and back as a pair count twice each; a waist dart of 20 mm is closed. */
    @Property(seed = "311", tries = 60)
    void girthsCountEveryCutWithDartsClosed(@ForAll("shapes") Shape shape) {
        Draft draft = TestPatterns.dress(shape).in("40");
        Map<String, Double> finished = Measurements.of(draft);
        double darts = shape.waistDart() ? 2 * 2 * 20 : 0;
        assertEquals(4 * shape.waist() - darts, finished.get("waist girth"), 1e-6);
        assertEquals(4 * shape.hip(), finished.get("hip girth"), 1e-6);
    }

    @Property(seed = "312", tries = 20)
    void aSleeveIsMeasuredAlongAndAcrossItsGrain(@ForAll("shapes") Shape shape) {
        Pattern dress = TestPatterns.withSleeve(TestPatterns.dress(shape));
        Draft draft = dress.in("40");
        double armholes =
                draft.sewnLength(new EdgeRef("front", "armhole")) + draft.sewnLength(new EdgeRef("back", "armhole"));
        assertEquals(2 * 0.36 * armholes, Measurements.of(draft).get("upper arm girth"), 1e-6);
    }
}
