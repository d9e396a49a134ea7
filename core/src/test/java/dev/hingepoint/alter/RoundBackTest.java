package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Notch;
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

/**
 * Round back: every law measured with JTS on random dresses, the closed form on straight paper. Source: Woman's Institute (1920s), centre back
 * grows, the armhole does not.
 */
class RoundBackTest {
    private static final Shape FOLDED = new Shape(200, 250, 20, 95, 262, 5, false, true, true, true, 0);

    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AlterationRequest request(Map<String, Object> options) {
        return new AlterationRequest("round back", options);
    }

    @Property(seed = "461", tries = 120)
    void centreBackGrowsAndTheArmholeDoesNot(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 4, max = 20) double by) {
        Draft before = TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40");
        Draft after = Catalogue.alter(before, request(Map.of("by", by + " mm"))).draft();
        Piece old = before.piece("back");
        Piece back = after.piece("back");
        assertEquals(Measured.sewn(old, "centre back") + by, Measured.sewn(back, "centre back"), 0.3);
        assertEquals(Measured.sewn(old, "armhole"), Measured.sewn(back, "armhole"), 0.3);
        assertEquals(Measured.sewn(old, "shoulder"), Measured.sewn(back, "shoulder"), 0.1);
        assertEquals(Measured.sewn(old, "neckline"), Measured.sewn(back, "neckline"), 0.1);
        for (String edge : List.of("side seam", "hem")) {
            assertEquals(old.edge(edge), back.edge(edge));
        }
        for (Level level : old.marks(Level.class).toList()) {
            assertEquals(old.width(level.name()), back.width(level.name()), 0.01);
        }
        for (String edge : List.of("armhole", "centre back")) {
            assertEquals(0, back.edge(edge).path().corners(Tolerance.CORNER).size(), edge);
        }
        assertEquals(before.piece("front"), after.piece("front"));
        assertEquals(before.piece("sleeve"), after.piece("sleeve"));
    }

    @Property(seed = "462", tries = 80)
    void aFoldStaysStraightAndADartTakesTheNeckline(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 4, max = 20) double by) {
        Assume.that(shape.foldedBack());
        Draft before = TestPatterns.dress(shape).in("40");
        Piece old = before.piece("back");
        Piece back = Catalogue.alter(before, request(Map.of("by", by + " mm")))
                .draft()
                .piece("back");
        Path fold = back.edge("centre back").path();
        assertEquals(fold.length(), fold.start().distanceTo(fold.end()), 1e-6);
        Path was = old.from("centre back", "hem");
        assertEquals(0, was.endTangent().angleTo(back.from("centre back", "hem").endTangent()), 1e-9);
        EdgeDart dart = back.find(EdgeDart.class, "neck dart").orElseThrow();
        assertEquals(dart.first().length(), dart.second().length(), 1e-6);
        assertEquals(
                2,
                back.marks(Notch.class)
                        .filter(notch -> notch.name().startsWith("neck dart"))
                        .count());
        double square = Math.abs(back.from("neckline", "centre back")
                .startTangent()
                .angleTo(back.from("centre back", "neckline").startTangent()));
        assertEquals(Math.PI / 2, square, StrictMath.toRadians(0.5));
    }

    /** Derived: the wedge opens by 2 atan(w / 2r) about the armhole, and lets in w r / 2 of paper before it is faired. */
    @Test
    void onStraightPaperTheWedgeIsATriangle() {
        Piece back = TestPatterns.straightBack(225, 1000, 400);
        Altered altered = Catalogue.alter(TestPatterns.of(back).in("40"), request(Map.of("by", "12 mm")));
        // half way in depth between the nape at 0 and the underarm at 150; the armhole runs straight from 160 to 225
        double r = 192.5;
        Step cut = altered.steps().get(0);
        double angle = 2 * StrictMath.atan(12 / (2 * r));
        assertEquals(angle, Math.abs(cut.parts().get(0).motion().angle()), 1e-9);
        assertEquals(r * r * StrictMath.sin(angle) / 2, cut.after().area() - back.area(), 1e-6);
    }

    @Test
    void theNecklineOfAFoldMayBeEasedInUpToALimit() {
        Draft draft = TestPatterns.dress(FOLDED).in("40");
        Altered eased = Catalogue.alter(draft, request(Map.of("by", "8 mm", "neck", "ease")));
        Piece back = eased.draft().piece("back");
        assertTrue(back.find(EdgeDart.class, "neck dart").isEmpty());
        double gained = back.sewnLength("neckline") - draft.piece("back").sewnLength("neckline");
        assertTrue(gained > 1 && gained <= 6, "gained " + gained);
        assertTrue(
                eased.notes().toString().contains("to ease in"), eased.notes().toString());
        Refusal refusal = assertThrows(
                Refusal.class, () -> Catalogue.alter(draft, request(Map.of("by", "25 mm", "neck", "ease"))));
        assertTrue(refusal.getMessage().contains("neck: dart"), refusal.getMessage());
        double largest = refusal.reason().limit().orElseThrow();
        Catalogue.alter(draft, request(Map.of("by", largest + " mm", "neck", "ease")));
    }

    @Test
    void theNeckDartCanBeMovedIntoTheShoulder() {
        Draft draft = TestPatterns.dress(FOLDED).in("40");
        Altered opened = Catalogue.alter(draft, request(Map.of("by", "12 mm")));
        assertTrue(opened.notes().toString().contains("move dart: {dart: neck dart, to: shoulder}"));
        Piece back = Catalogue.alter(
                        opened.draft(),
                        new AlterationRequest("move dart", Map.of("dart", "neck dart", "to", "shoulder")))
                .draft()
                .piece("back");
        assertTrue(back.find(EdgeDart.class, "neck dart").isEmpty());
        for (String edge : List.of("neckline", "shoulder", "armhole")) {
            assertEquals(draft.piece("back").sewnLength(edge), Measured.sewn(back, edge), 0.3, edge);
        }
    }

    @Test
    void theSlashGoesAlongALevelThatIsDrawn() {
        Piece plain = TestPatterns.straightBack(225, 1000, 400);
        Piece back = plain.withMark(new Level("across back", Path.through(new Point(0, 100), new Point(203, 100))));
        Altered altered =
                Catalogue.alter(TestPatterns.of(back).in("40"), request(Map.of("by", "12 mm", "at", "across back")));
        double r = 160 + 65 * 100 / 150.0;
        assertEquals(
                2 * StrictMath.atan(12 / (2 * r)),
                altered.steps().get(0).parts().stream()
                        .mapToDouble(part -> Math.abs(part.motion().angle()))
                        .max()
                        .orElseThrow(),
                1e-6);
        Draft without = TestPatterns.of(plain).in("40");
        assertThrows(
                Refusal.class, () -> Catalogue.alter(without, request(Map.of("by", "12 mm", "at", "across back"))));
    }

    @Test
    void whatCannotBeIsRefused() {
        Draft seamed =
                TestPatterns.of(TestPatterns.straightBack(225, 1000, 400)).in("40");
        assertThrows(Refusal.class, () -> Catalogue.alter(seamed, request(Map.of("by", "12 mm", "neck", "dart"))));
        Refusal other = assertThrows(Refusal.class, () -> Catalogue.alter(seamed, request(Map.of("by", "-12 mm"))));
        assertTrue(other.getMessage().contains("sway back"), other.getMessage());
        Refusal large = assertThrows(Refusal.class, () -> Catalogue.alter(seamed, request(Map.of("by", "400 mm"))));
        double largest = large.reason().limit().orElseThrow();
        Catalogue.alter(seamed, request(Map.of("by", largest + " mm")));
    }
}
