package dev.hingepoint.make;

import static dev.hingepoint.make.Dresses.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class SleevelessTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static Draft make(Draft draft, Map<String, Object> options) {
        return Choices.make(draft, new AlterationRequest("sleeveless", options)).draft();
    }

    /** Raised 12 mm along the side seam, and in 6 mm square to it; common practice, no source. */
    @Property(seed = "721", tries = 60)
    void theUnderarmIsRaisedAndTakenIn(@ForAll("shapes") Shape shape) {
        Draft before = Dresses.sleeved(shape);
        Draft after = make(before, Map.of("depth", "30 mm"));
        for (String name : List.of("front", "back")) {
            Piece old = before.piece(name);
            Piece now = after.piece(name);
            Point was = old.from("side seam", "armhole").start();
            Vector down = old.from("side seam", "armhole").startTangent();
            Vector moved = now.from("side seam", "armhole").start().minus(was);
            assertEquals(-12, moved.dot(down), 1e-6);
            assertEquals(6, Math.abs(moved.cross(down)), 1e-6);
            Vector armhole = old.from("armhole", "side seam").startTangent();
            assertTrue(moved.minus(down.times(-12)).dot(armhole) > 0, "inwards");
            assertEquals(old.edge("shoulder"), now.edge("shoulder"));
            assertEquals(old.edge("neckline"), now.edge("neckline"));
            assertEquals(old.edge("hem"), now.edge("hem"));
        }
        double wasOff = length(before, "front", "side seam") - length(before, "back", "side seam");
        double nowOff = length(after, "front", "side seam") - length(after, "back", "side seam");
        assertEquals(wasOff, nowOff, 0.5);
    }

    @Property(seed = "722", tries = 40)
    void theArmholeKeepsItsAnglesAndTheSeamRunsFair(@ForAll("shapes") Shape shape) {
        Draft before = Dresses.sleeved(shape);
        Draft after = make(before, Map.of("finish", "none"));
        for (String name : List.of("front", "back")) {
            Piece old = before.piece(name);
            Piece now = after.piece(name);
            for (String end : List.of("side seam", "shoulder")) {
                assertEquals(angle(old, end), angle(now, end), 0.1, name + " at the " + end);
            }
            assertTrue(now.edge("armhole").path().corners(0.002).isEmpty());
            int corners = old.edge("side seam").path().corners(0.02).size();
            assertEquals(corners, now.edge("side seam").path().corners(0.02).size());
        }
    }

    private static double angle(Piece piece, String end) {
        return StrictMath.toDegrees(Math.abs(piece.from("armhole", end)
                .startTangent()
                .angleTo(piece.from(end, "armhole").startTangent())));
    }

    @Test
    void theSleeveAndItsSeamsGoAndTheArmholeIsFaced() {
        Draft before = Dresses.sleeved(Dresses.SHAPE);
        Draft after = make(before, Map.of("depth", "30 mm"));
        assertFalse(after.find("sleeve").isPresent());
        assertTrue(after.seams().stream().noneMatch(seam -> seam.joins(new EdgeRef("sleeve", "cap"))));
        assertTrue(after.find("front armhole facing").isPresent());
        assertTrue(SeamWalk.all(after).stream().allMatch(seam -> seam.lengthMatches()));
        assertTrue(after.pattern().in("42").find("sleeve").isPresent(), "the other sizes keep theirs");
        Refusal none = assertThrows(Refusal.class, () -> make(after, Map.of()));
        assertTrue(none.getMessage().contains("no sleeve"), none.getMessage());
        assertTrue(make(before, Map.of("finish", "binding"))
                .find("armhole binding")
                .isPresent());
    }

    @Test
    void tooMuchIsRefusedWithTheLargestThatWorks() {
        Draft draft = Dresses.sleeved(Dresses.SHAPE);
        Refusal refusal = assertThrows(Refusal.class, () -> make(draft, Map.of("raise", "220 mm", "finish", "none")));
        double most = refusal.reason().limit().orElseThrow();
        assertTrue(most > 30 && most < 220, refusal.getMessage());
        make(draft, Map.of("raise", most - 0.1 + " mm", "finish", "none"));
        assertThrows(Refusal.class, () -> make(draft, Map.of("raise", most + 0.1 + " mm", "finish", "none")));
    }

    @Test
    void aYokeComesAfterwards() {
        AlterationRequest yoke =
                new AlterationRequest("yoke", Map.of("piece", "front", "from", "armhole 50 mm", "to", "centre 60 mm"));
        Draft yoked = Choices.make(Dresses.sleeved(Dresses.SHAPE), yoke).draft();
        Refusal refusal = assertThrows(Refusal.class, () -> make(yoked, Map.of()));
        assertTrue(refusal.getMessage().contains("before the yoke"), refusal.getMessage());
    }

    @Test
    void aKnitIsRaisedAndTakenInTenAndBound() {
        Draft before = Dresses.knit(Dresses.SHAPE, 0.3, 900, 900);
        Draft after = make(before, Map.of());
        Point was = before.piece("back").from("side seam", "armhole").start();
        Point now = after.piece("back").from("side seam", "armhole").start();
        assertEquals(StrictMath.hypot(10, 10), was.distanceTo(now), 1e-6);
        assertTrue(after.find("armhole binding").isPresent());
    }
}
