package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
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

/** Broad and narrow shoulders: every law measured with JTS on random dresses, closed forms on straight paper. */
class ShoulderWidthTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AlterationRequest request(double wider, String by) {
        return new AlterationRequest(wider > 0 ? "broad shoulders" : "narrow shoulders", Map.of("by", by));
    }

    /** Source: a pattern-making text, "broad or narrow: only the shoulder changes". */
    @Property(seed = "411", tries = 120)
    void onlyTheShoulderChangesInWidth(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = -18, max = 18) double wider) {
        if (Math.abs(wider) < 2) {
            return;
        }
        Draft before = TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40");
        Draft after =
                Catalogue.alter(before, request(wider, Math.abs(wider) + " mm")).draft();
        for (String name : List.of("front", "back")) {
            Piece old = before.piece(name);
            Piece piece = after.piece(name);
            assertEquals(Measured.sewn(old, "shoulder") + wider, Measured.sewn(piece, "shoulder"), 0.1);
            assertEquals(Measured.sewn(old, "armhole"), Measured.sewn(piece, "armhole"), 0.1);
            assertTrue(Measured.apart(
                            old.edge("neckline").path(), piece.edge("neckline").path())
                    < 0.5);
            for (String edge : List.of("side seam", "hem", "centre " + name)) {
                assertEquals(old.edge(edge), piece.edge(edge));
            }
            // to nothing at the underarm, and no farther than the tip anywhere
            Path was = old.from("armhole", "side seam");
            Path is = piece.from("armhole", "side seam");
            double tip = is.end().distanceTo(was.end());
            assertEquals(0, was.startTangent().angleTo(is.startTangent()), 1e-9);
            assertTrue(is.distanceTo(was.at(20)) < 0.1 * tip);
            assertTrue(Measured.apart(was, is) < tip + 0.5);
            assertEquals(
                    0, piece.edge("armhole").path().corners(Tolerance.CORNER).size());
            assertEquals(corner(old, "armhole"), corner(piece, "armhole"), 1e-6);
            assertEquals(corner(old, "neckline"), corner(piece, "neckline"), 1e-6);
        }
        assertEquals(before.piece("sleeve"), after.piece("sleeve"));
    }

    /** In radians, between the shoulder and what it meets. */
    private static double corner(Piece piece, String neighbour) {
        return Math.abs(piece.from("shoulder", neighbour)
                .startTangent()
                .angleTo(piece.from(neighbour, "shoulder").startTangent()));
    }

    @Test
    void aDartInTheShoulderStaysWhole() {
        Piece plain = TestPatterns.straightBack(225, 1000, 400);
        Piece back =
                plain.withMark(EdgeDart.of("shoulder dart", new Point(110, 0), new Point(116, 70), new Point(122, 0)));
        for (double wider : new double[] {10, -10}) {
            Piece after = Catalogue.alter(TestPatterns.of(back).in("40"), request(wider, "10 mm"))
                    .draft()
                    .piece("back");
            EdgeDart dart = after.find(EdgeDart.class, "shoulder dart").orElseThrow();
            assertEquals(dart.first().length(), dart.second().length(), 0.01);
            assertEquals(12, dart.intake(), 1e-9);
            assertEquals(78 + wider, after.sewnLength("shoulder"), 0.1);
        }
    }

    @Test
    void whatCannotBeIsRefusedWithTheLargestThatWorks() {
        Shape shape = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);
        Draft draft = TestPatterns.dress(shape).in("40");
        Refusal refusal = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(-1, "140 mm")));
        double largest = refusal.reason().limit().orElseThrow();
        Catalogue.alter(draft, request(-1, largest + " mm"));
        assertTrue(largest < 123 && largest > 10, "largest " + largest);
        Refusal other = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(1, "-10 mm")));
        assertTrue(other.getMessage().contains("narrow shoulders"), other.getMessage());
    }
}
