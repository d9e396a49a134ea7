package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Notch;
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

/** Forward shoulders: every law measured with JTS on random dresses. Common practice, no source. */
class ForwardShoulderTest {
    private static final Shape SHAPE = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);

    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AlterationRequest request(String by) {
        return new AlterationRequest("forward shoulders", Map.of("by", by));
    }

    @Property(seed = "421", tries = 120)
    void theBackGainsWhatTheFrontLoses(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 3, max = 20) double by) {
        Draft before = TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40");
        Draft after = Catalogue.alter(before, request(by + " mm")).draft();
        Piece front = after.piece("front");
        Piece back = after.piece("back");
        assertEquals(Measured.sewn(before.piece("front"), "armhole") - by, Measured.sewn(front, "armhole"), 0.1);
        assertEquals(Measured.sewn(before.piece("back"), "armhole") + by, Measured.sewn(back, "armhole"), 0.3);
        double gap = before.piece("front").area() - front.area();
        assertEquals(gap, back.area() - before.piece("back").area(), 0.02 * gap + 1);
        assertEquals(shoulders(before), shoulders(after), 0.1);
        for (String name : List.of("front", "back")) {
            for (String edge : List.of("neckline", "side seam", "hem", "centre " + name)) {
                assertEquals(before.piece(name).edge(edge), after.piece(name).edge(edge));
            }
            assertEquals(
                    0,
                    after.piece(name)
                            .edge("armhole")
                            .path()
                            .corners(Tolerance.CORNER)
                            .size());
        }
        // laid together, the neck runs on as it did, and the armhole is cut from one line
        assertEquals(
                corner(before.piece("front"), "neckline") + corner(before.piece("back"), "neckline"),
                corner(front, "neckline") + corner(back, "neckline"),
                1e-6);
        assertEquals(Math.PI, corner(front, "armhole") + corner(back, "armhole"), 1e-6);
        assertEquals(before.piece("sleeve").edges(), after.piece("sleeve").edges());
    }

    private static double shoulders(Draft draft) {
        return Measured.sewn(draft.piece("front"), "shoulder") - Measured.sewn(draft.piece("back"), "shoulder");
    }

    /** In radians, between the shoulder and what it meets. */
    private static double corner(Piece piece, String neighbour) {
        return Math.abs(piece.from("shoulder", neighbour)
                .startTangent()
                .angleTo(piece.from(neighbour, "shoulder").startTangent()));
    }

    /** The top notch goes to the front; the notches that are sewn to the armholes stay. */
    @Test
    void theNotchAtTheTopOfTheCapGoesAlong() {
        Draft plain = TestPatterns.withSleeve(TestPatterns.dress(SHAPE)).in("40");
        Piece sleeve = plain.piece("sleeve");
        Path cap = sleeve.from("cap", "front underarm seam");
        Path armhole = plain.piece("front").from("armhole", "side seam");
        Draft draft = plain.with(
                sleeve.withMark(notch("shoulder", cap, cap.length() / 2)).withMark(notch("front", cap, 60)),
                plain.piece("front").withMark(notch("front", armhole, 60)));
        Altered altered = Catalogue.alter(draft, request("10 mm"));
        Piece moved = altered.draft().piece("sleeve");
        Path drawn = moved.from("cap", "front underarm seam");
        assertEquals(
                cap.length() / 2 - 10,
                drawn.distanceAlong(drawn.nearest(
                        moved.find(Notch.class, "shoulder").orElseThrow().at())),
                1e-6);
        assertEquals(sleeve.marks().size() + 2, moved.marks().size());
        assertEquals(draft.piece("sleeve").find(Notch.class, "front"), moved.find(Notch.class, "front"));
        Notch stayed = altered.draft().piece("front").find(Notch.class, "front").orElseThrow();
        assertEquals(0, stayed.at().distanceTo(armhole.at(60)), 1e-6);
        assertTrue(
                altered.notes().toString().contains("moves 10 mm to the front"),
                altered.notes().toString());
    }

    private static Notch notch(String name, Path path, double along) {
        Point at = path.at(along);
        return new Notch(name, 1, new Line(at, at.plus(new Vector(0, 5))));
    }

    @Test
    void aSleeveWithoutATopNotchIsToldOf() {
        Draft draft = TestPatterns.withSleeve(TestPatterns.dress(SHAPE)).in("40");
        String notes = Catalogue.alter(draft, request("10 mm")).notes().toString();
        assertTrue(notes.contains("10 mm farther to the front"), notes);
    }

    @Test
    void whatCannotBeIsRefusedWithTheLargestThatWorks() {
        Draft draft = TestPatterns.withSleeve(TestPatterns.dress(SHAPE)).in("40");
        Refusal refusal = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request("300 mm")));
        double largest = refusal.reason().limit().orElseThrow();
        Catalogue.alter(draft, request(largest + " mm"));
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request((largest + 1) + " mm")));
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request("-10 mm")));
        Draft unsewn = TestPatterns.dress(SHAPE).in("40");
        Refusal none = assertThrows(Refusal.class, () -> Catalogue.alter(unsewn, request("10 mm")));
        assertTrue(none.getMessage().contains("shoulder seam"), none.getMessage());
    }
}
