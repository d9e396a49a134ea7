package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Square and sloping shoulders: every law measured with JTS on random dresses, closed forms on straight paper. */
class ShoulderSlopeTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AlterationRequest request(double up, String by) {
        return new AlterationRequest(up > 0 ? "square shoulders" : "sloping shoulders", Map.of("by", by));
    }

    /** Source: a pattern-making text, "square or sloping: the whole armhole moves, its length stays; side seams change alike". */
    @Property(seed = "401", tries = 120)
    void theWholeArmholeMovesAndSideSeamsChangeAlike(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = -20, max = 20) double up) {
        if (Math.abs(up) < 2) {
            return;
        }
        Draft before = TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40");
        Draft after = Catalogue.alter(before, request(up, Math.abs(up) + " mm")).draft();
        for (String name : List.of("front", "back")) {
            Piece old = before.piece(name);
            Piece piece = after.piece(name);
            Vector rise = old.grain().down().times(-up);
            assertEquals(
                    0,
                    piece.from("shoulder", "armhole")
                            .start()
                            .distanceTo(old.from("shoulder", "armhole").start().plus(rise)),
                    1e-9);
            assertEquals(Measured.sewn(old, "armhole"), Measured.sewn(piece, "armhole"), 0.3);
            assertTrue(Measured.apart(
                            old.edge("armhole").path().moved(Motion.shift(rise)),
                            piece.edge("armhole").path())
                    < 1);
            assertEquals(Measured.sewn(old, "neckline"), Measured.sewn(piece, "neckline"), 0.3);
            assertTrue(Measured.apart(
                            old.edge("neckline").path(), piece.edge("neckline").path())
                    < 0.5);
            for (String level : List.of("bust", "waist", "hip")) {
                assertEquals(old.width(level), piece.width(level), 0.1);
            }
            assertEquals(up, Measured.sewn(piece, "side seam") - Measured.sewn(old, "side seam"), 0.1 * Math.abs(up));
            for (String neighbour : List.of("neckline", "armhole")) {
                assertEquals(corner(old, neighbour), corner(piece, neighbour), 1e-6);
            }
            assertEquals(old.edge("hem"), piece.edge("hem"));
        }
        assertEquals(sideDifference(before), sideDifference(after), 0.1);
        assertEquals(before.piece("sleeve"), after.piece("sleeve"));
    }

    private static double sideDifference(Draft draft) {
        return Measured.sewn(draft.piece("front"), "side seam") - Measured.sewn(draft.piece("back"), "side seam");
    }

    /** In radians, between the shoulder and what it meets. */
    private static double corner(Piece piece, String neighbour) {
        return Math.abs(piece.from("shoulder", neighbour)
                .startTangent()
                .angleTo(piece.from(neighbour, "shoulder").startTangent()));
    }

    /** Shoulders of different slopes change by different amounts; they still differ by what they did. */
    @Test
    void shouldersOfDifferentSlopesStillMatch() {
        Shape shape = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);
        Draft drawn = TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40");
        Draft draft = Catalogue.alter(drawn, new AlterationRequest("forward shoulders", Map.of("by", "12 mm")))
                .draft();
        for (double up : new double[] {10, -10}) {
            Draft after = Catalogue.alter(draft, request(up, "10 mm")).draft();
            assertEquals(shoulders(draft), shoulders(after), 0.1);
        }
    }

    private static double shoulders(Draft draft) {
        return Measured.sewn(draft.piece("front"), "shoulder") - Measured.sewn(draft.piece("back"), "shoulder");
    }

    /** Derived: a level shoulder of 90 mm whose tip goes up by 12 mm; an upright side seam grows by as much. */
    @Test
    void onStraightPaperTheShoulderIsTheHypotenuse() {
        Piece back = TestPatterns.straightBack(225, 1000, 400);
        Altered altered = Catalogue.alter(TestPatterns.of(back).in("40"), request(1, "12 mm"));
        Piece after = altered.draft().piece("back");
        assertEquals(Math.sqrt(90 * 90 + 12 * 12), after.sewnLength("shoulder"), 1e-9);
        assertEquals(back.sewnLength("side seam") + 12, after.sewnLength("side seam"), 1e-9);
        assertTrue(altered.notes().get(0).contains("longer"), altered.notes().toString());
    }

    @Test
    void aDartInTheShoulderKeepsItsIntakeAndEqualLegs() {
        Piece plain = TestPatterns.straightBack(225, 1000, 400);
        Piece back =
                plain.withMark(EdgeDart.of("shoulder dart", new Point(110, 0), new Point(116, 70), new Point(122, 0)));
        Piece after = Catalogue.alter(TestPatterns.of(back).in("40"), request(1, "12 mm"))
                .draft()
                .piece("back");
        EdgeDart dart = after.find(EdgeDart.class, "shoulder dart").orElseThrow();
        assertEquals(dart.first().length(), dart.second().length(), 0.01);
        assertEquals(12, dart.intake(), 1e-9);
    }

    @Test
    void theEaseOfTheCapIsTold() {
        Shape shape = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);
        Draft draft = TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40");
        String notes =
                String.join("\n", Catalogue.alter(draft, request(1, "10 mm")).notes());
        assertTrue(notes.contains("goes into the armhole with 20") || notes.contains("with 19.9"), notes);
        assertTrue(notes.contains("cotton or crepe takes 10 to 20 mm"), notes);
    }

    @Test
    void whatCannotBeIsRefusedWithTheLargestThatWorks() {
        Shape shape = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);
        Draft draft = TestPatterns.dress(shape).in("40");
        Refusal refusal = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(-1, "80 mm")));
        double largest = refusal.reason().limit().orElseThrow();
        Catalogue.alter(draft, request(-1, largest + " mm"));
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(-1, (largest + 0.2) + " mm")));
        Refusal other = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(1, "-10 mm")));
        assertTrue(other.getMessage().contains("sloping shoulders"), other.getMessage());
        Draft sleeve = TestPatterns.of(TestPatterns.withSleeve(TestPatterns.dress(shape))
                        .in("40")
                        .piece("sleeve"))
                .in("40");
        assertThrows(Refusal.class, () -> Catalogue.alter(sleeve, request(1, "10 mm")));
    }
}
