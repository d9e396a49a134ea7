package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Full and slim upper arms: every law measured with JTS on random sleeves, the closed form on a cap of straight sides. */
class UpperArmTest {
    private static final double INCH = 25.4;
    private static final Shape SHAPE = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);
    private static final EdgeRef CAP = new EdgeRef("sleeve", "cap");

    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AlterationRequest request(double wider, String keep) {
        Map<String, Object> options = new LinkedHashMap<>();
        options.put("by", Math.abs(wider) + " mm");
        options.put("keep", keep);
        return new AlterationRequest(wider > 0 ? "full upper arm" : "slim upper arm", options);
    }

    /** Derived: side 9 in, half biceps 6.5 in: cap height 6.2249; widened by 1 in in all 5.6569, by 2 in 4.9749. */
    @ParameterizedTest
    @CsvSource({"1, 5.6569", "2, 4.9749", "-1, 6.7082"})
    void aCapOfStraightSidesLosesHeightByTheClosedForm(double wider, double height) {
        Draft draft = TestPatterns.of(straightSleeve()).in("40");
        assertEquals(6.2249, Sleeves.capHeight(draft, CAP) / INCH, 5e-5);
        Draft after = Catalogue.alter(draft, request(wider * INCH, "length")).draft();
        Path cap = after.piece("sleeve").edge("cap").path();
        Point top = cap.segments().get(0).end();
        assertEquals(height, (cap.start().y() - top.y()) / INCH, 5e-5);
        assertEquals(9, cap.start().distanceTo(top) / INCH, 1e-6);
        assertEquals(9, cap.end().distanceTo(top) / INCH, 1e-6);
        assertEquals(13 + wider, cap.start().distanceTo(cap.end()) / INCH, 1e-9);
    }

    private static Piece straightSleeve() {
        double half = 6.5 * INCH;
        double height = Math.sqrt(81 - 6.5 * 6.5) * INCH;
        Point one = new Point(-half, 0);
        Point top = new Point(0, -height);
        Point other = new Point(half, 0);
        Point hem = new Point(half - 30, 400);
        Point otherHem = new Point(30 - half, 400);
        return Piece.of(
                "sleeve",
                "40",
                Optional.empty(),
                List.of(new Cutting(1, Cutting.How.PAIR, Optional.empty())),
                List.of(
                        new Edge("cap", Edge.Kind.SEAM, Path.through(one, top, other)),
                        new Edge("back underarm seam", Edge.Kind.SEAM, Path.through(other, hem)),
                        new Edge("hem", Edge.Kind.HEM, Path.through(hem, otherHem)),
                        new Edge("front underarm seam", Edge.Kind.SEAM, Path.through(otherHem, one))),
                List.of(new Grain(new Line(new Point(0, 40), new Point(0, 360)))));
    }

    @Property(seed = "441", tries = 100)
    void theCapKeepsItsLengthOrItsHeight(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = -40, max = 50) double wider) {
        if (Math.abs(wider) < 2) {
            return;
        }
        Draft before = TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40");
        Piece old = before.piece("sleeve");
        for (String keep : List.of("length", "height")) {
            Draft after = Catalogue.alter(before, request(wider, keep)).draft();
            Piece sleeve = after.piece("sleeve");
            assertEquals(across(old) + wider, across(sleeve), 0.1);
            if (keep.equals("length")) {
                assertEquals(Measured.sewn(old, "cap"), Measured.sewn(sleeve, "cap"), 0.1);
                assertTrue((height(sleeve) - height(old)) * wider < 0);
            } else {
                assertEquals(height(old), height(sleeve), 1);
                assertTrue((Measured.sewn(sleeve, "cap") - Measured.sewn(old, "cap")) * wider > 0);
            }
            assertEquals(
                    Measured.sewn(old, "front underarm seam") - Measured.sewn(old, "back underarm seam"),
                    Measured.sewn(sleeve, "front underarm seam") - Measured.sewn(sleeve, "back underarm seam"),
                    0.1);
            assertEquals(Measured.sewn(old, "hem"), Measured.sewn(sleeve, "hem"), 0.3);
            assertEquals(0, Sleeves.top(old, "cap").distanceTo(Sleeves.top(sleeve, "cap")), 1e-6);
            assertEquals(kinks(old), kinks(sleeve), 1e-6);
            assertEquals(before.piece("front"), after.piece("front"));
            assertEquals(before.piece("back"), after.piece("back"));
        }
    }

    private static double across(Piece sleeve) {
        Path cap = sleeve.edge("cap").path();
        return Math.abs(cap.end().minus(cap.start()).cross(sleeve.grain().down()));
    }

    private static double height(Piece sleeve) {
        Path cap = sleeve.edge("cap").path();
        return cap.start()
                .midpoint(cap.end())
                .minus(Sleeves.top(sleeve, "cap"))
                .dot(sleeve.grain().down());
    }

    private static int kinks(Piece sleeve) {
        return sleeve.edge("cap").path().corners(StrictMath.toRadians(0.1)).size();
    }

    /** What the armhole owes is offered as an order, and the order gives it. */
    @Test
    void theOfferedArmholeTakesTheLongerCap() {
        Draft draft = TestPatterns.withSleeve(TestPatterns.dress(SHAPE)).in("40");
        Altered altered = Catalogue.alter(draft, request(15, "height"));
        String notes = altered.notes().toString();
        assertTrue(notes.contains("the armhole owes that: armhole: {lower: "), notes);
        String lower = notes.replaceAll("(?s).*\\{lower: ([0-9.]+ mm)}.*", "$1");
        Draft lowered = Catalogue.alter(altered.draft(), new AlterationRequest("armhole", Map.of("lower", lower)))
                .draft();
        assertEquals(ease(draft), ease(lowered), 0.2);
        assertTrue(notes.contains("Threads, 2021"), notes);
    }

    private static double ease(Draft draft) {
        return Measured.sewn(draft.piece("sleeve"), "cap")
                - Measured.sewn(draft.piece("front"), "armhole")
                - Measured.sewn(draft.piece("back"), "armhole");
    }

    @Test
    void whatCannotBeIsRefusedWithTheLargestThatWorks() {
        Draft draft = TestPatterns.of(straightSleeve()).in("40");
        // at 5 in more the two sides of 9 in would lie flat
        Refusal refusal = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(200, "length")));
        double largest = refusal.reason().limit().orElseThrow();
        assertTrue(largest > 4 * INCH && largest < 5 * INCH, "largest " + largest);
        Catalogue.alter(draft, request(largest, "length"));
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(-400, "length")));
        Draft sleeveless = TestPatterns.dress(SHAPE).in("40");
        assertThrows(Refusal.class, () -> Catalogue.alter(sleeveless, request(10, "length")));
    }
}
