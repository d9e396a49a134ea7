package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Divide;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** What a hem promises, measured on random dresses; closed forms on straight paper. */
class HemTest {
    private static final List<String> SEAMS = List.of("side seam", "centre front", "centre back");

    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AlterationRequest request(Object... options) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < options.length; i += 2) {
            map.put((String) options[i], options[i + 1]);
        }
        return new AlterationRequest("hem", map);
    }

    @Property(seed = "411", tries = 150)
    void everySeamChangesByTheAmountAndTheHemIsLevel(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = -300, max = 200) double by) {
        Draft before = TestPatterns.dress(shape).in("40");
        Draft after = Catalogue.alter(before, request("by", by + " mm")).draft();
        for (Piece old : before.pieces()) {
            Piece now = after.piece(old.name());
            for (Edge edge : old.edges()) {
                if (SEAMS.contains(edge.name())) {
                    assertEquals(Measured.sewn(old, edge.name()) + by, Measured.sewn(now, edge.name()), 0.01);
                    assertEquals(angle(old, edge.name()), angle(now, edge.name()), 1e-6);
                } else if (!edge.name().equals("hem")) {
                    assertEquals(edge.path(), now.edge(edge.name()).path());
                }
            }
            assertEquals(old.isClockwise(), now.isClockwise());
            levelAllRound(old, now, by);
            for (Level level : now.marks(Level.class).toList()) {
                assertEquals(level, old.find(Level.class, level.name()).orElseThrow());
            }
        }
        assertEquals(
                Measured.sewn(before.piece("front"), "side seam") - Measured.sewn(before.piece("back"), "side seam"),
                Measured.sewn(after.piece("front"), "side seam") - Measured.sewn(after.piece("back"), "side seam"),
                0.01);
    }

    private static double angle(Piece piece, String seam) {
        return Math.abs(piece.from("hem", seam)
                .startTangent()
                .angleTo(piece.from(seam, "hem").startTangent()));
    }

    /**
     * Down from each point of the old hem to the new one it is the amount at the centre, what the side seam's lean leaves of it at the side, and between them between: but
     * for what the hem rises by over the amount by which it is scaled across, at most amount times the square of the lean's tangent. Derived.
     */
    private static void levelAllRound(Piece old, Piece now, double by) {
        Vector down = old.grain().down();
        Path hem = now.edge("hem").path();
        Point corner = old.from("side seam", "hem").start();
        double atSide = now.from("side seam", "hem").start().minus(corner).dot(down);
        double lean = Stream.of(old, now)
                .mapToDouble(piece -> Math.abs(
                        piece.from("side seam", "hem").startTangent().negated().angleTo(down)))
                .max()
                .orElseThrow();
        double slack = Math.abs(by) * Math.pow(Math.tan(lean), 2) + 0.1;
        for (Point point : old.edge("hem").path().flatten(0.1)) {
            hem.crossings(point, down).stream().map(hem::at).forEach(on -> {
                double lower = on.minus(point).dot(down);
                assertTrue(lower >= Math.min(by, atSide) - slack && lower <= Math.max(by, atSide) + slack, "" + lower);
            });
        }
    }

    @Property(seed = "412", tries = 60)
    void cutOffAgainByAsMuchItIsAsItWas(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 1, max = 200) double by) {
        Draft before = TestPatterns.dress(shape).in("40");
        Draft longer = Catalogue.alter(before, request("by", by + " mm")).draft();
        Draft again = Catalogue.alter(longer, request("by", -by + " mm")).draft();
        for (Piece piece : before.pieces()) {
            assertEquals(
                    0, Measured.apart(piece.outline(), again.piece(piece.name()).outline()), 1e-3);
            assertEquals(piece.marks().size(), again.piece(piece.name()).marks().size());
        }
    }

    @Test
    void lengthIsMeasuredDownTheCentreBack() {
        Draft draft = TestPatterns.of(TestPatterns.straightBack(225, 1000, 400)).in("40");
        for (double length : new double[] {850, 1000, 1120}) {
            Piece back = Catalogue.alter(draft, request("length", length + " mm"))
                    .draft()
                    .piece("back");
            assertEquals(length, Measured.sewn(back, "centre back"), 1e-6);
            assertEquals(
                    225.0 * (length - 1000), back.area() - draft.piece("back").area(), 1e-6);
        }
    }

    /** A back that is divided under the armhole is as long as both its parts. */
    @Test
    void lengthIsMeasuredOverASeam() {
        Piece back = TestPatterns.straightBack(225, 1000, 400);
        var parts = new Divide(
                        "divide",
                        Path.through(new Point(0, 250), new Point(225, 250)),
                        Place.corner("neckline", "shoulder"),
                        "top",
                        "skirt",
                        "seam")
                .on(back);
        Draft draft = TestPatterns.of(parts.first(), parts.second()).in("40");
        Piece skirt =
                Catalogue.alter(draft, request("length", "950 mm")).draft().piece("skirt");
        assertEquals(950 - 250, Measured.sewn(skirt, "centre back"), 1e-6);
        Draft alone = TestPatterns.of(parts.second()).in("40");
        refused(alone, "no piece has a neckline there", request("length", "950 mm"));
    }

    @Test
    void toTheKneeByTheBodyElseByTheChart() {
        Draft draft = TestPatterns.of(TestPatterns.straightBack(225, 1000, 400)).in("40");
        Map<String, Length> body = Map.of("waist to knee", Length.ofMillimetres(580));
        Piece knee = Catalogue.alter(draft, request("to", "knee"), body).draft().piece("back");
        assertEquals(980, Measured.sewn(knee, "centre back"), 1e-6);
        Piece below = Catalogue.alter(draft, request("to", "knee", "below", "50 mm"), body)
                .draft()
                .piece("back");
        assertEquals(1030, Measured.sewn(below, "centre back"), 1e-6);
        Piece above = Catalogue.alter(draft, request("to", "knee", "above", "2 in"), body)
                .draft()
                .piece("back");
        assertEquals(980 - 50.8, Measured.sewn(above, "centre back"), 1e-6);
        refused(draft, "'waist to knee' is not known", request("to", "knee"));
        refused(draft, "'waist to ankle' is not known", request("to", "ankle"));
    }

    @Test
    void whatLiesBelowFallsOff() {
        Draft draft = TestPatterns.of(TestPatterns.straightBack(225, 1000, 400)).in("40");
        Altered altered = Catalogue.alter(draft, request("by", "-450 mm"));
        assertEquals(
                List.of("the hip falls off with what is cut off, and no width is told there any more"),
                altered.notes());
        Piece short550 = altered.draft().piece("back");
        assertTrue(short550.hasLevel("waist"));
        assertFalse(short550.hasLevel("hip"));
        assertEquals(1, short550.marks(Notch.class).count());
        Piece short450 =
                Catalogue.alter(draft, request("by", "-550 mm")).draft().piece("back");
        assertEquals(0, short450.marks(Notch.class).count());
    }

    /** 450 mm of sweep 600 mm below the waist, where mid-calf is 790: 1050 x 600/790 = 797 are needed, and 450 are enough 339 mm below the waist. Derived. */
    @Test
    void aSweepThatIsTooNarrowIsOfferedASlit() {
        Draft draft = TestPatterns.of(TestPatterns.straightBack(225, 990, 400)).in("40");
        Altered altered = Catalogue.alter(draft, request("by", "10 mm"));
        assertEquals(1, altered.notes().size());
        assertTrue(
                altered.notes().get(0).contains("450 mm round, and a stride asks for 797 mm"),
                altered.notes().get(0));
        assertTrue(
                altered.notes().get(0).contains("slit: 270 mm"), altered.notes().get(0));
        Altered wide = Catalogue.alter(draft, request("by", "10 mm", "stride", "440 mm"));
        assertEquals(List.of(), wide.notes());
        Altered slit = Catalogue.alter(draft, request("by", "10 mm", "slit", "270 mm"));
        assertEquals(1, slit.notes().size());
        assertTrue(
                slit.notes().get(0).contains("stays open 270 mm"), slit.notes().get(0));
        Altered tooShort = Catalogue.alter(draft, request("by", "10 mm", "slit", "100 mm"));
        assertEquals(2, tooShort.notes().size());
    }

    @Test
    void aSlitHasItsNotchItsOpeningAndItsAllowance() {
        Draft draft = TestPatterns.of(TestPatterns.straightBack(225, 1000, 400)).in("40");
        Draft slit = Catalogue.alter(draft, request("slit", "200 mm")).draft();
        Piece back = slit.piece("back");
        Notch notch = back.find(Notch.class, "slit").orElseThrow();
        assertEquals(new Point(0, 800), notch.at());
        assertTrue(notch.line().end().x() > 0, "it points into the piece");
        EdgeRef centreBack = new EdgeRef("back", "centre back");
        assertEquals(List.of(new Opening(centreBack, "hem", Length.ofMillimetres(200))), slit.openings());
        assertEquals(30, slit.allowances().of(back, back.edge("centre back")).mm());
        assertEquals(draft.piece("back").edges(), back.edges());
        // the notch stays in its place when the hem moves again
        Draft longer = Catalogue.alter(slit, request("by", "50 mm")).draft();
        assertEquals(250, longer.openings().get(0).length().mm(), 1e-9);
        assertEquals(
                new Point(0, 800),
                longer.piece("back").find(Notch.class, "slit").orElseThrow().at());
    }

    @Property(seed = "413", tries = 40)
    void aSlitInTheSideSeamsHasMatchingNotches(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 50, max = 300) double slit) {
        Draft draft = TestPatterns.dress(shape).in("40");
        Draft after = Catalogue.alter(draft, request("slit", slit + " mm", "slit in", "side seam"))
                .draft();
        for (Piece piece : after.pieces()) {
            Path up = piece.from("side seam", "hem");
            Notch notch = piece.find(Notch.class, "slit").orElseThrow();
            assertEquals(slit, up.distanceAlong(up.nearest(notch.at())), 1e-6);
            assertTrue(dev.hingepoint.pattern.JtsBridge.polygon(piece)
                    .contains(new org.locationtech.jts.geom.GeometryFactory()
                            .createPoint(new org.locationtech.jts.geom.Coordinate(
                                    notch.line().end().x(), notch.line().end().y()))));
        }
    }

    @Test
    void whatCannotBeIsRefused() {
        Draft draft = TestPatterns.of(TestPatterns.straightBack(225, 1000, 400)).in("40");
        refused(draft, "write one of", request());
        refused(draft, "write one of", request("by", "5 mm", "to", "knee"));
        refused(draft, "the largest that would work is 840 mm", request("by", "-845 mm"));
        refused(draft, "not possible in this seam", request("slit", "960 mm"));
        refused(draft, "is none that runs to the hem", request("slit", "200 mm", "slit in", "centre front"));
        Opening zip = new Opening(new EdgeRef("back", "centre back"), "neckline", Length.ofMillimetres(550));
        Draft zipped = draft.with(draft.construction().withOpenings(List.of(zip)));
        refused(zipped, "the largest that would work is 440 mm", request("by", "-445 mm"));
        refused(zipped, "the largest that would work is 400 mm", request("slit", "401 mm"));
        Catalogue.alter(zipped, request("by", "-440 mm"));
    }

    private static void refused(Draft draft, String why, AlterationRequest request) {
        Refusal refusal = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request));
        assertTrue(refusal.getMessage().contains(why), refusal.getMessage());
    }
}
