package dev.hingepoint.make;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;

class CentreBackTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static Draft make(Draft draft, String as) {
        return Choices.make(draft, new AlterationRequest("centre back", Map.of("as", as)))
                .draft();
    }

    @Property(seed = "741", tries = 40)
    void toAFoldAndBackIsWhatItWas(@ForAll("shapes") Shape shape) {
        Assume.that(!shape.foldedBack());
        Draft before = Dresses.sleeved(shape);
        Draft folded = make(before, "fold");
        Piece back = folded.piece("back");
        assertEquals(Edge.Kind.FOLD, back.edge("centre back").kind());
        assertEquals(Cutting.How.ON_FOLD, back.cuttings().get(0).how());
        assertEquals(before.girth("hip"), folded.girth("hip"), 1e-9);
        Piece again = make(folded, "seam").piece("back");
        assertEquals(before.piece("back").edges(), again.edges());
        assertEquals(before.piece("back").cuttings(), again.cuttings());
    }

    /** A wedge bends it; how far it then is from straight is measured with JTS. */
    @Property(seed = "742", tries = 30)
    void aBentSeamIsRefusedWithHowFarItIsFromStraight(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 6, max = 20) double wedge) {
        Assume.that(!shape.foldedBack());
        Draft bent = Catalogue.alter(
                        Dresses.sleeved(shape), new AlterationRequest("sway back", Map.of("wedge", wedge + " mm")))
                .draft();
        Refusal refusal = assertThrows(Refusal.class, () -> make(bent, "fold"));
        Coordinate[] points = JtsBridge.lineString(
                        bent.piece("back").edge("centre back").path())
                .getCoordinates();
        double off = 0;
        for (Coordinate point : points) {
            off = Math.max(off, Distance.pointToLinePerpendicular(point, points[0], points[points.length - 1]));
        }
        assertEquals(off, refusal.reason().amount().orElseThrow(), 0.1);
    }

    @Test
    void anOpeningThatOneNeedsStays() {
        Draft drawn = Dresses.sleeved(Dresses.SEAMED);
        Draft zipped = drawn.with(drawn.construction()
                .withOpenings(List.of(new Opening(new EdgeRef("back", "centre back"), "neckline", new Length(500)))));
        Refusal refusal = assertThrows(Refusal.class, () -> make(zipped, "fold"));
        assertTrue(refusal.getMessage().contains("no longer get in"), refusal.getMessage());
        assertTrue(refusal.getMessage().matches(".*opens to [0-9.]+ mm.*must pass.*"), refusal.getMessage());
        assertThrows(Refusal.class, () -> make(drawn, "seam"));
        assertThrows(Refusal.class, () -> make(drawn, "zip"));
    }
}
