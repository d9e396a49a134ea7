package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.check.Walked;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.DoublePointedDart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Full and flat seat and large abdomen, every "afterwards" measured with JTS or by hand on random dresses; closed forms on straight paper. */
class CentreFullnessTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    @Provide
    Arbitrary<String> names() {
        return Arbitraries.of("full seat", "flat seat", "large abdomen");
    }

    private static AlterationRequest request(String name, Object... options) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < options.length; i += 2) {
            map.put((String) options[i], options[i + 1]);
        }
        return new AlterationRequest(name, map);
    }

    private static String centre(String name) {
        return name.equals("large abdomen") ? "centre front" : "centre back";
    }

    private static String piece(String name) {
        return name.equals("large abdomen") ? "front" : "back";
    }

    @Property(seed = "401", tries = 200)
    void centreAndHipChangeByWhatWasAskedAndNothingElse(
            @ForAll("shapes") Shape shape,
            @ForAll("names") String name,
            @ForAll @DoubleRange(min = 6, max = 25) double wedge,
            @ForAll @DoubleRange(min = 0, max = 15) double width) {
        Draft before = TestPatterns.dress(shape).in("40");
        Draft after = Catalogue.alter(before, request(name, "wedge", wedge + " mm", "width", width + " mm"))
                .draft();
        Piece old = before.piece(piece(name));
        Piece now = after.piece(piece(name));
        double sign = name.equals("flat seat") ? -1 : 1;
        assertEquals(
                Measured.sewn(old, centre(name)) + sign * wedge, Measured.sewn(now, centre(name)), 0.3, "centre line");
        assertEquals(Measured.sewn(old, "side seam"), Measured.sewn(now, "side seam"), 0.3);
        for (String edge : List.of("neckline", "shoulder", "armhole")) {
            assertEquals(old.edge(edge), now.edge(edge));
        }
        assertEquals(old.width("bust"), now.width("bust"), 1e-6);
        assertEquals(old.width("waist"), now.width("waist"), 1e-6);
        assertEquals(straightAcross(old, "hip") + sign * width, straightAcross(now, "hip"), 0.5);
        for (Piece other : before.pieces()) {
            assertTrue(other.isSamePieceAs(old) || other.equals(after.piece(other.name())));
        }
        assertEquals(old.isClockwise(), now.isClockwise());
    }

    /** No dart reaches the hip of these dresses, and the level is one straight line: its width is the distance of its ends. */
    private static double straightAcross(Piece piece, String level) {
        Path path = piece.find(Level.class, level).orElseThrow().path();
        return path.start().distanceTo(path.end());
    }

    @Property(seed = "402", tries = 100)
    void theSideSeamStillWalksNotchByNotch(
            @ForAll("shapes") Shape shape,
            @ForAll("names") String name,
            @ForAll @DoubleRange(min = 6, max = 25) double wedge,
            @ForAll @DoubleRange(min = 0, max = 15) double width) {
        Draft before = TestPatterns.dress(shape).in("40");
        Draft after = Catalogue.alter(before, request(name, "wedge", wedge + " mm", "width", width + " mm"))
                .draft();
        Walked was = SeamWalk.all(before).get(0);
        Walked is = SeamWalk.all(after).get(0);
        assertEquals(was.difference(), is.difference(), 0.3);
        assertEquals(2, is.notches().size());
        for (int i = 0; i < 2; i++) {
            assertEquals(was.notches().get(i).difference(), is.notches().get(i).difference(), 0.3);
        }
        Path side = after.piece(piece(name)).edge("side seam").path();
        Path old = before.piece(piece(name)).edge("side seam").path();
        assertEquals(
                old.corners(Tolerance.CORNER).size(),
                side.corners(Tolerance.CORNER).size());
    }

    @Property(seed = "403", tries = 100)
    void aFoldStaysOneStraightLineAndMeetsTheHemSquare(
            @ForAll("shapes") Shape shape,
            @ForAll("names") String name,
            @ForAll @DoubleRange(min = 6, max = 25) double wedge,
            @ForAll @DoubleRange(min = 0, max = 15) double width) {
        Draft before = TestPatterns.dress(shape).in("40");
        Piece old = before.piece(piece(name));
        Assume.that(old.edge(centre(name)).kind() == Edge.Kind.FOLD);
        Piece now = Catalogue.alter(before, request(name, "wedge", wedge + " mm", "width", width + " mm"))
                .draft()
                .piece(piece(name));
        Path fold = now.downwards(centre(name));
        assertEquals(fold.start().distanceTo(fold.end()), fold.length(), 1e-6);
        Path oldFold = old.downwards(centre(name));
        double lower = fold.end().minus(oldFold.end()).dot(old.grain().down());
        assertEquals(name.equals("flat seat") ? -wedge : wedge, lower, 1e-6);
        assertEquals(0, now.grain().down().angleTo(fold.startTangent()), 1e-9);
        Path hem = now.from("hem", centre(name));
        double quarter = Math.abs(fold.endTangent().angleTo(hem.startTangent()));
        assertEquals(StrictMath.PI / 2, quarter, StrictMath.toRadians(0.5));
    }

    @Property(seed = "404", tries = 60)
    void byDefaultTheHipChangesByAsMuchRoundTheBodyAsTheCentreDownIt(
            @ForAll("shapes") Shape shape,
            @ForAll("names") String name,
            @ForAll @DoubleRange(min = 6, max = 25) double wedge) {
        Draft before = TestPatterns.dress(shape).in("40");
        Draft after =
                Catalogue.alter(before, request(name, "wedge", wedge + " mm")).draft();
        double grown = 2
                * (straightAcross(after.piece(piece(name)), "hip") - straightAcross(before.piece(piece(name)), "hip"));
        assertEquals(name.equals("flat seat") ? -wedge : wedge, grown, 1);
    }

    @Property(seed = "405", tries = 100)
    void aWaistDartAcrossTheWedgeGoesWithThePaperAndKeepsEqualLegs(
            @ForAll("shapes") Shape shape,
            @ForAll("names") String name,
            @ForAll @DoubleRange(min = 6, max = 20) double wedge,
            @ForAll @DoubleRange(min = 100, max = 190) double above) {
        Assume.that(shape.waistDart());
        Draft before = TestPatterns.dress(shape).in("40");
        Piece old = before.piece(piece(name));
        Piece now = Catalogue.alter(before, request(name, "wedge", wedge + " mm", "width", 0, "above", above + " mm"))
                .draft()
                .piece(piece(name));
        DoublePointedDart dart = now.find(DoublePointedDart.class, "waist dart").orElseThrow();
        DoublePointedDart was = old.find(DoublePointedDart.class, "waist dart").orElseThrow();
        assertEquals(
                was.first().length() - was.second().length(),
                dart.first().length() - dart.second().length(),
                1e-6);
        assertEquals(old.levelFrame("waist").intake(), now.levelFrame("waist").intake(), 0.05);
        assertEquals(
                0,
                Math.min(
                        was.firstTip().distanceTo(dart.firstTip()),
                        was.firstTip().distanceTo(dart.secondTip())),
                1e-9);
        boolean crosses = above > 95;
        assertTrue(!crosses || !dart.equals(was));
    }

    /** Derived: the part below turns by 2 asin(w / 2r), and the filled gap is an isosceles triangle of legs r and base w. */
    @Test
    void onStraightPaperTheGapIsAnIsoscelesTriangle() {
        Piece back = TestPatterns.straightBack(225, 1000, 400);
        Step opened = Catalogue.alter(
                        TestPatterns.of(back).in("40"), request("full seat", "wedge", "20 mm", "width", 0))
                .steps()
                .get(0);
        double angle = opened.parts().get(0).motion().angle();
        assertEquals(2 * StrictMath.asin(20 / 450.0), Math.abs(angle), 1e-12);
        double gained = JtsBridge.polygon(opened.after()).getArea()
                - JtsBridge.polygon(back).getArea();
        assertEquals(20 * Math.sqrt(225 * 225 - 100) / 2, gained, 1e-6);
        assertEquals(225, opened.after().width("hip"), 1e-9);
    }

    /** Derived: on a fold the part below is as deep as before divided by the cosine, sin = w / r, and its levels keep their length. */
    @Test
    void onStraightPaperAFoldIsShearedBeforeItTurns() {
        Piece back = onFold(TestPatterns.straightBack(225, 1000, 400));
        Step opened = Catalogue.alter(
                        TestPatterns.of(back).in("40"), request("full seat", "wedge", "20 mm", "width", 0))
                .steps()
                .get(0);
        double cosine = Math.sqrt(1 - 20 * 20 / (225.0 * 225));
        Path fold = opened.after().downwards("centre back");
        assertEquals(600 + 20 + 400 / cosine, fold.length(), 1e-9);
        assertEquals(fold.length(), fold.start().distanceTo(fold.end()), 1e-9);
        Point side = opened.after().levelFrame("hip").outerEnd();
        assertEquals(225, opened.after().levelFrame("hip").origin().distanceTo(side), 1e-9);
        assertEquals(225 * cosine, side.x(), 1e-9);
    }

    private static Piece onFold(Piece back) {
        List<Edge> edges = back.edges().stream()
                .map(edge ->
                        edge.name().equals("centre back") ? new Edge(edge.name(), Edge.Kind.FOLD, edge.path()) : edge)
                .toList();
        return back.with(edges, back.marks());
    }

    /** Opened and folded out again by as much, a seamed back is what it was, but for what fairing leaves. */
    @Property(seed = "406", tries = 60)
    void fullAndThenFlatIsAlmostWhatItWas(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 6, max = 20) double wedge) {
        Draft before = TestPatterns.dress(shape).in("40");
        Draft full = Catalogue.alter(before, request("full seat", "wedge", wedge + " mm", "width", "5 mm"))
                .draft();
        Draft back = Catalogue.alter(full, request("flat seat", "wedge", wedge + " mm", "width", "5 mm"))
                .draft();
        for (String level : List.of("bust", "waist", "hip")) {
            assertEquals(before.piece("back").width(level), back.piece("back").width(level), 0.6);
        }
        assertEquals(
                Measured.sewn(before.piece("back"), "centre back"),
                Measured.sewn(back.piece("back"), "centre back"),
                0.4);
    }

    @Test
    void whatCannotBeIsRefusedWithTheLargestThatWouldWork() {
        Shape shape = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);
        Draft draft = TestPatterns.dress(shape).in("40");
        for (String name : List.of("full seat", "flat seat", "large abdomen")) {
            Refusal wide = assertThrows(
                    Refusal.class, () -> Catalogue.alter(draft, request(name, "wedge", "500 mm", "width", 0)), name);
            double limit = wide.reason().limit().orElseThrow();
            Catalogue.alter(draft, request(name, "wedge", Reason.millimetres(limit), "width", 0));
            // told to a tenth of a mm
            assertThrows(
                    Refusal.class,
                    () -> Catalogue.alter(draft, request(name, "wedge", limit + 0.11 + " mm", "width", 0)));
        }
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request("full seat")));
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request("full seat", "wedge", "-5 mm")));
        assertThrows(
                Refusal.class, () -> Catalogue.alter(draft, request("full seat", "wedge", "15 mm", "width", "-5 mm")));
        assertThrows(
                Refusal.class, () -> Catalogue.alter(draft, request("full seat", "wedge", "15 mm", "at", "waist")));
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request("full seat", "wedge", "15 mm", "at", "knee")));
        Draft without =
                TestPatterns.of(TestPatterns.straightBack(225, 1000, 400)).in("40");
        assertThrows(Refusal.class, () -> Catalogue.alter(without, request("large abdomen", "wedge", "15 mm")));
    }
}
