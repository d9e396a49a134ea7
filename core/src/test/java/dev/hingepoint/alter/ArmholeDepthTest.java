package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.check.Walked;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The armhole raised or lowered: every law measured with JTS on random dresses. Common practice, no source. */
class ArmholeDepthTest {
    private static final Shape SHAPE = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);

    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AlterationRequest request(double lower, String sleeve) {
        Map<String, Object> options = new LinkedHashMap<>();
        options.put(lower > 0 ? "lower" : "raise", Math.abs(lower) + " mm");
        options.put("sleeve", sleeve);
        return new AlterationRequest("armhole", options);
    }

    /** A notch on each armhole and its partner on the cap, 60 mm from the underarm. */
    private static Draft notched(Draft draft) {
        Draft notched = draft;
        for (String name : List.of("front", "back")) {
            notched = notched.with(
                    withNotch(notched.piece(name), name, "armhole", "side seam"),
                    withNotch(notched.piece("sleeve"), name, "cap", name + " underarm seam"));
        }
        return notched;
    }

    private static Piece withNotch(Piece piece, String name, String edge, String from) {
        Point at = piece.from(edge, from).at(60);
        return piece.withMark(new Notch(name, 1, new Line(at, at.plus(new Vector(1, 5)))));
    }

    @Property(seed = "431", tries = 100)
    void theUnderarmMovesDownTheSideSeamAndTheSleeveFollows(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = -15, max = 20) double lower) {
        Draft before =
                notched(TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40"));
        double room = before.pieces().stream()
                .filter(piece -> piece.hasEdge("side seam"))
                .mapToDouble(piece -> Math.min(
                        Bodice.toFirstDart(piece).orElse(99),
                        Bodice.toFirstLevel(piece).orElse(99)))
                .min()
                .orElseThrow();
        if (Math.abs(lower) < 2 || lower >= room) {
            return;
        }
        Draft after = Catalogue.alter(before, request(lower, "follows")).draft();
        for (String name : List.of("front", "back")) {
            Piece old = before.piece(name);
            Piece piece = after.piece(name);
            assertEquals(Measured.sewn(old, "side seam") - lower, Measured.sewn(piece, "side seam"), 0.1);
            for (String edge : List.of("neckline", "shoulder", "hem", "centre " + name)) {
                assertEquals(old.edge(edge), piece.edge(edge));
            }
            for (String level : List.of("bust", "waist", "hip")) {
                assertEquals(old.width(level), piece.width(level), 0.01);
            }
            assertEquals(
                    0, piece.edge("armhole").path().corners(Tolerance.CORNER).size());
            assertTrue((Measured.sewn(piece, "armhole") - Measured.sewn(old, "armhole")) * lower > 0);
            assertEquals(angle(old, "armhole", "side seam"), angle(piece, "armhole", "side seam"), 1e-6);
        }
        assertEquals(capEase(before), capEase(after), 0.1);
        Piece sleeve = after.piece("sleeve");
        Piece was = before.piece("sleeve");
        assertEquals(across(was), across(sleeve), 1e-6);
        assertEquals(underarms(was), underarms(sleeve), 0.1);
        assertEquals(Measured.sewn(was, "hem"), Measured.sewn(sleeve, "hem"), 0.3);
        assertEquals(below(before), below(after), 0.01);
    }

    private static double angle(Piece piece, String edge, String neighbour) {
        return Math.abs(piece.from(edge, neighbour)
                .startTangent()
                .angleTo(piece.from(neighbour, edge).startTangent()));
    }

    private static double across(Piece sleeve) {
        Path cap = sleeve.edge("cap").path();
        return Math.abs(cap.end().minus(cap.start()).cross(sleeve.grain().down()));
    }

    private static double underarms(Piece sleeve) {
        return Measured.sewn(sleeve, "front underarm seam") - Measured.sewn(sleeve, "back underarm seam");
    }

    private static double capEase(Draft draft) {
        return Measured.sewn(draft.piece("sleeve"), "cap")
                - Measured.sewn(draft.piece("front"), "armhole")
                - Measured.sewn(draft.piece("back"), "armhole");
    }

    /** How much longer the cap is than the armhole below the front's notch. */
    private static double below(Draft draft) {
        Path cap = draft.piece("sleeve").from("cap", "front underarm seam");
        Path armhole = draft.piece("front").from("armhole", "side seam");
        return along(cap, draft.piece("sleeve")) - along(armhole, draft.piece("front"));
    }

    private static double along(Path path, Piece piece) {
        Point at = piece.find(Notch.class, "front").orElseThrow().at();
        return path.distanceAlong(path.nearest(at));
    }

    @Test
    void whatTheCapOwesIsToldAndItsCorrectionOffered() {
        Draft draft = notched(TestPatterns.withSleeve(TestPatterns.dress(SHAPE)).in("40"));
        Altered altered = Catalogue.alter(draft, request(15, "stays"));
        assertEquals(draft.piece("sleeve"), altered.draft().piece("sleeve"));
        String notes = altered.notes().toString();
        assertTrue(notes.contains("too short") && notes.contains("order sleeve: follows"), notes);
        Altered followed = Catalogue.alter(draft, request(15, "follows"));
        Seam seam = followed.draft().pattern().card().seams().stream()
                .filter(other -> other.to().size() == 2)
                .findFirst()
                .orElseThrow();
        Walked walked = SeamWalk.of(followed.draft(), seam);
        assertTrue(walked.complaints().isEmpty(), walked.complaints().toString());
    }

    /** Raised too far the armhole would dip before it comes up to the underarm. */
    @Test
    void anArmholeIsNotRaisedIntoADip() {
        Draft draft = TestPatterns.withSleeve(TestPatterns.dress(SHAPE)).in("40");
        Refusal refusal = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(-90, "stays")));
        double largest = refusal.reason().limit().orElseThrow();
        assertTrue(largest > 15 && largest < 60, "largest " + largest);
        Draft raised = Catalogue.alter(draft, request(-largest, "stays")).draft();
        double more = Math.max(
                turnedBack(raised.piece("front")) - turnedBack(draft.piece("front")),
                turnedBack(raised.piece("back")) - turnedBack(draft.piece("back")));
        assertTrue(more > StrictMath.toRadians(4) && more < StrictMath.toRadians(6), "turns back by " + more);
    }

    /** Measured on the flattened line: half of what it turns in all, less what it turns on the whole. */
    private static double turnedBack(Piece piece) {
        Path armhole = piece.from("armhole", "side seam");
        List<Point> points = armhole.flatten(0.001);
        double all = 0;
        for (int i = 2; i < points.size(); i++) {
            Vector one = points.get(i - 1).minus(points.get(i - 2));
            all += Math.abs(one.angleTo(points.get(i).minus(points.get(i - 1))));
        }
        return (all - Math.abs(armhole.startTangent().angleTo(armhole.endTangent()))) / 2;
    }

    @Test
    void whatCannotBeIsRefusedWithTheLargestThatWorks() {
        Draft draft = TestPatterns.withSleeve(TestPatterns.dress(SHAPE)).in("40");
        Refusal refusal = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(200, "stays")));
        double largest = refusal.reason().limit().orElseThrow();
        assertEquals(largest, Bodice.toFirstLevel(draft.piece("front")).orElseThrow(), 1);
        Catalogue.alter(draft, request(largest, "stays"));
        assertThrows(
                Refusal.class,
                () -> Catalogue.alter(
                        draft, new AlterationRequest("armhole", Map.of("raise", "5 mm", "lower", "5 mm"))));
        Draft sleeveless = TestPatterns.dress(SHAPE).in("40");
        Refusal none = assertThrows(Refusal.class, () -> Catalogue.alter(sleeveless, request(5, "follows")));
        assertTrue(none.getMessage().contains("no sleeve"), none.getMessage());
        assertEquals(
                1,
                Catalogue.alter(sleeveless, request(5, "stays")).draft().pieces().stream()
                        .filter(piece -> piece.name().equals("front"))
                        .count());
    }
}
