package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.check.Measurements;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
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

/** Length and cuff of the sleeve, measured with JTS on random sleeves. Common practice, no source. */
class SleeveShapeTest {
    private static final Shape SHAPE = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);

    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AlterationRequest request(Map<String, Object> options) {
        return new AlterationRequest("sleeve", options);
    }

    @Property(seed = "451", tries = 100)
    void lengthAndCuffChangeAndTheUnderarmSeamsAlike(
            @ForAll("shapes") Shape shape,
            @ForAll @DoubleRange(min = -150, max = 200) double longer,
            @ForAll @DoubleRange(min = 200, max = 320) double cuff) {
        Draft before = TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40");
        String text = (longer < 0 ? "" : "+") + longer + " mm";
        Draft after = Catalogue.alter(before, request(Map.of("length", text, "cuff", cuff + " mm")))
                .draft();
        Piece old = before.piece("sleeve");
        Piece sleeve = after.piece("sleeve");
        assertEquals(old.edge("cap"), sleeve.edge("cap"));
        assertEquals(cuff, Measured.sewn(sleeve, "hem"), 0.1);
        assertEquals(
                Measurements.of(before).get("sleeve length") + longer,
                Measurements.of(after).get("sleeve length"),
                1);
        assertEquals(underarms(old), underarms(sleeve), 0.1);
        for (String seam : List.of("front underarm seam", "back underarm seam")) {
            assertEquals(angle(old, seam), angle(sleeve, seam), 1e-6);
        }
        assertEquals(before.piece("front"), after.piece("front"));
    }

    private static double underarms(Piece sleeve) {
        return Measured.sewn(sleeve, "front underarm seam") - Measured.sewn(sleeve, "back underarm seam");
    }

    private static double angle(Piece sleeve, String seam) {
        return sleeve.from("hem", seam)
                .startTangent()
                .angleTo(sleeve.from(seam, "hem").startTangent());
    }

    /** Derived: a sleeve whose seams lean by 30 mm in 420; with the hem as wide, 60 mm longer is one hypotenuse for another, but for a
     * hair that the hem's ends lose where they turn with the seams. */
    @Test
    void aStraightSeamIsTheHypotenuse() {
        Draft draft = TestPatterns.withSleeve(TestPatterns.dress(SHAPE)).in("40");
        Piece sleeve = Catalogue.alter(draft, request(Map.of("length", "+60 mm")))
                .draft()
                .piece("sleeve");
        assertEquals(Math.hypot(30, 480), sleeve.sewnLength("front underarm seam"), 1e-3);
        assertEquals(Math.hypot(30, 480), sleeve.sewnLength("back underarm seam"), 1e-3);
    }

    @Test
    void aLengthWithoutASignIsTheFinishedLength() {
        Draft draft = TestPatterns.withSleeve(TestPatterns.dress(SHAPE)).in("40");
        Draft after =
                Catalogue.alter(draft, request(Map.of("length", "600 mm"))).draft();
        assertEquals(600, Measurements.of(after).get("sleeve length"), 1);
        Refusal refusal = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(Map.of("length", "30 mm"))));
        assertTrue(refusal.getMessage().contains("+30 mm"), refusal.getMessage());
    }

    @Test
    void whatCannotBeIsRefused() {
        Draft draft = TestPatterns.withSleeve(TestPatterns.dress(SHAPE)).in("40");
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(Map.of())));
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(Map.of("cuff", "0 mm"))));
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(Map.of("length", "-500 mm"))));
        Draft sleeveless = TestPatterns.dress(SHAPE).in("40");
        assertThrows(Refusal.class, () -> Catalogue.alter(sleeveless, request(Map.of("cuff", "240 mm"))));
        String notes = Catalogue.alter(draft, request(Map.of("cuff", "180 mm")))
                .notes()
                .toString();
        assertTrue(notes.contains("opening"), notes);
    }
}
