package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.check.Walked;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Moved darts on random dresses, angles taken from coordinates and lengths with JTS; closed forms on straight paper. */
class MoveDartTest {
    private static final String SIDE_DART = "side bust dart";

    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes().filter(Shape::bustDart);
    }

    @Provide
    Arbitrary<String> edges() {
        return Arbitraries.of("shoulder", "armhole", "neckline", "hem");
    }

    private static AlterationRequest request(Object... options) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < options.length; i += 2) {
            map.put((String) options[i], options[i + 1]);
        }
        return new AlterationRequest("move dart", map);
    }

    /** The angle in degrees at the bust apex between the leg ends, from the law of cosines. */
    private static double angle(Piece piece, EdgeDart dart, Point about) {
        double a = about.distanceTo(dart.mouthStart());
        double b = about.distanceTo(dart.mouthEnd());
        double c = dart.mouthStart().distanceTo(dart.mouthEnd());
        return StrictMath.toDegrees(StrictMath.acos((a * a + b * b - c * c) / (2 * a * b)));
    }

    /** Where the perpendicular bisector of the mouth passes the apex. */
    private static Point pivot(Piece piece) {
        EdgeDart dart = piece.find(EdgeDart.class, SIDE_DART).orElseThrow();
        Point apex = piece.point("bust apex");
        Vector across = dart.mouthEnd().minus(dart.mouthStart()).unit();
        return apex.minus(across.times(apex.minus(dart.mouthMiddle()).dot(across)));
    }

    private static EdgeDart dart(Piece piece, String name) {
        return piece.find(EdgeDart.class, name).orElseThrow();
    }

    @Property(seed = "411", tries = 150)
    void theAngleGoesToTheOtherEdgeAndNoSeamChanges(
            @ForAll("shapes") Shape shape,
            @ForAll("edges") String edge,
            @ForAll @DoubleRange(min = 0.1, max = 1) double share) {
        Draft before = TestPatterns.dress(shape).in("40");
        Piece old = before.piece("front");
        Draft after = Catalogue.alter(
                        before, request("dart", SIDE_DART, "to", edge, "share", Math.round(100 * share) + " %"))
                .draft();
        Piece now = after.piece("front");
        double part = Math.round(100 * share) / 100.0;
        Point about = pivot(old);
        double whole = angle(old, dart(old, SIDE_DART), about);
        EdgeDart moved = dart(now, edge + " dart");
        assertEquals(part * whole, angle(now, moved, about), 0.01);
        assertEquals(part == 1, now.find(EdgeDart.class, SIDE_DART).isEmpty());
        if (part < 1) {
            EdgeDart left = dart(now, SIDE_DART);
            assertEquals((1 - part) * whole, angle(now, left, about), 0.01);
            assertEquals(left.first().length(), left.second().length(), 0.01);
        }
        assertEquals(moved.first().length(), moved.second().length(), 0.01);
        for (Edge drawn : old.edges()) {
            assertEquals(Measured.sewn(old, drawn.name()), Measured.sewn(now, drawn.name()), 0.1, drawn.name());
        }
        assertEquals(before.piece("back"), after.piece("back"));
        assertEquals(old.edge("centre front").path(), now.edge("centre front").path());
        assertEquals(old.isClockwise(), now.isClockwise());
        assertEquals(
                SeamWalk.all(before).get(0).complaints(),
                SeamWalk.all(after).get(0).complaints());
    }

    /** A tip stops short of the apex as a full bust's does: 25 mm, 40 mm, or 50 mm by its depth. */
    @Property(seed = "412", tries = 80)
    void theTipStopsShortOfTheApex(@ForAll("shapes") Shape shape, @ForAll("edges") String edge) {
        Draft before = TestPatterns.dress(shape).in("40");
        Piece now = Catalogue.alter(before, request("to", edge)).draft().piece("front");
        EdgeDart moved = dart(now, edge + " dart");
        double intake = moved.mouthStart().distanceTo(moved.mouthEnd());
        double stops = intake <= 25 ? 25 : intake <= 45 ? 40 : 50;
        assertEquals(stops, moved.tip().distanceTo(now.point("bust apex")), 1e-6);
        Piece wanted = Catalogue.alter(before, request("to", edge, "tip", "30 mm"))
                .draft()
                .piece("front");
        assertEquals(30, dart(wanted, edge + " dart").tip().distanceTo(wanted.point("bust apex")), 1e-6);
    }

    /** There and back about the same point the leg ends lie where they lay, and with them the outline, but for the fairing. */
    @Property(seed = "413", tries = 60)
    void halfAndThenTheOtherHalfIsTheWhole(@ForAll("shapes") Shape shape, @ForAll("edges") String edge) {
        Draft before = TestPatterns.dress(shape).in("40");
        Piece old = before.piece("front");
        Draft half = Catalogue.alter(before, request("dart", SIDE_DART, "to", edge, "share", "50 %"))
                .draft();
        Draft both = Catalogue.alter(half, request("dart", SIDE_DART, "to", edge + " dart"))
                .draft();
        Draft whole =
                Catalogue.alter(before, request("dart", SIDE_DART, "to", edge)).draft();
        Point about = pivot(old);
        double one = angle(old, dart(whole.piece("front"), edge + " dart"), about);
        double two = angle(old, dart(both.piece("front"), edge + " dart"), about);
        // the remainder points at the apex from where it then lies: the second turn is about a point up to a hair
        // beside the first
        assertEquals(one, two, 0.5);
        for (Edge drawn : old.edges()) {
            assertEquals(
                    Measured.sewn(old, drawn.name()),
                    Measured.sewn(both.piece("front"), drawn.name()),
                    0.2,
                    drawn.name());
        }
    }

    @Property(seed = "414", tries = 80)
    void gathersStayInTheSeamAndTheSeamSaysSo(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 0.2, max = 1) double share) {
        long percent = Math.round(100 * share);
        Draft before = TestPatterns.dress(shape).in("40");
        Piece old = before.piece("front");
        Altered altered = Catalogue.alter(before, request("to", "gathers", "share", percent + " %"));
        Piece now = altered.draft().piece("front");
        double grown = Measured.sewn(now, "side seam") - Measured.sewn(old, "side seam");
        assertEquals(percent / 100.0 * dart(old, SIDE_DART).intake(), grown, Tolerance.SEAM_MATCH);
        assertEquals(percent == 100, now.find(EdgeDart.class, SIDE_DART).isEmpty());
        Walked walked = SeamWalk.all(altered.draft()).get(0);
        assertTrue(walked.lengthMatches());
        assertEquals(grown, walked.seam().easeTo(), 0.01);
        for (String notch : List.of("gathers begin", "gathers end")) {
            assertTrue(now.marks(Notch.class).anyMatch(mark -> mark.name().equals(notch)));
            assertTrue(altered.draft()
                    .piece("back")
                    .marks(Notch.class)
                    .anyMatch(mark -> mark.name().equals(notch)));
        }
        for (Edge drawn : old.edges()) {
            assertTrue(drawn.name().equals("side seam") || drawn.equals(now.edge(drawn.name())), drawn.name());
        }
    }

    @Property(seed = "415", tries = 60)
    void atAHemItMayBeLeftAsFlare(@ForAll("shapes") Shape shape) {
        Draft before = TestPatterns.dress(shape).in("40");
        Piece old = before.piece("front");
        Piece now = Catalogue.alter(before, request("to", "hem", "as", "flare"))
                .draft()
                .piece("front");
        assertTrue(now.marks(EdgeDart.class).findAny().isEmpty());
        assertEquals(Measured.sewn(old, "side seam"), Measured.sewn(now, "side seam"), 0.1);
        assertTrue(Measured.sewn(now, "hem") > Measured.sewn(old, "hem") + 40);
        assertTrue(now.edge("hem").path().corners(Tolerance.CORNER).isEmpty());
        assertThrows(Refusal.class, () -> Catalogue.alter(before, request("to", "shoulder", "as", "flare")));
    }

    /** Straight paper, the dart level with the apex: a dart of intake i at the distance r opens i R / r at the distance R. Derived. */
    @Test
    void onStraightPaperMouthsAreAsTheirDistancesFromTheApex() {
        Piece front = TestPatterns.straightFront(3, 4, Optional.of(40.0));
        Draft draft = TestPatterns.of(front).in("40");
        Piece now = Catalogue.alter(draft, request("to", "armhole", "at", "1/2 in", "from", "shoulder"))
                .draft()
                .piece("front");
        Point apex = front.point("bust apex");
        EdgeDart moved = dart(now, "armhole dart");
        double r = StrictMath.hypot(4.5 * 25.4, 20);
        double distance = apex.distanceTo(moved.mouthStart());
        assertEquals(distance, apex.distanceTo(moved.mouthEnd()), 1e-9);
        assertEquals(40 * distance / r, moved.intake(), 1e-9);
        Point shoulder = front.from("armhole", "shoulder").start();
        double near = Math.min(shoulder.distanceTo(moved.mouthStart()), shoulder.distanceTo(moved.mouthEnd()));
        assertEquals(12.7, near, 1e-6);
    }

    /** Found in pairs of alterations: a place on the dart's own edge keeps clear of where the dart is. */
    @Test
    void alongItsOwnEdgeItPassesItsOldPlaceBy() {
        Shape shape = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);
        Draft draft = Catalogue.alter(TestPatterns.dress(shape).in("40"), request("to", "shoulder"))
                .draft();
        Piece old = draft.piece("front");
        for (String share : List.of("50 %", "100 %")) {
            Piece now = Catalogue.alter(draft, request("to", "shoulder", "share", share))
                    .draft()
                    .piece("front");
            assertEquals(Measured.sewn(old, "shoulder"), Measured.sewn(now, "shoulder"), 0.1);
        }
        refused(draft, "where the shoulder dart is", "to", "shoulder", "at", "50 %");
    }

    /** Fullness belongs to the altered size: the seams of other sizes stay, also where an alteration before gave this size its own. */
    @Test
    void onlyTheAlteredSizesSeamTakesTheFullness() {
        Shape shape = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);
        Draft before = TestPatterns.dress(shape).in("40");
        Draft own = before.with(before.construction().withSeams(before.seams()));
        for (Draft draft : List.of(before, own)) {
            Draft after = Catalogue.alter(draft, request("to", "gathers")).draft();
            assertTrue(SeamWalk.all(after).get(0).lengthMatches());
            Draft other = after.pattern().in("38");
            assertEquals(0, SeamWalk.all(other).get(0).seam().easeTo(), 1e-9);
        }
    }

    /** A dart that has nothing to do with the bust turns about its own tip, which stays. */
    @Test
    void aShoulderDartOfABackTurnsAboutItsTip() {
        Piece back = TestPatterns.straightBack(225, 1000, 400)
                .withMark(EdgeDart.of("shoulder dart", new Point(105, 0), new Point(111, 80), new Point(117, 0)));
        for (String to : List.of("neckline", "armhole")) {
            Piece now = Catalogue.alter(TestPatterns.of(back).in("40"), request("to", to, "share", "50 %"))
                    .draft()
                    .piece("back");
            Point tip = new Point(111, 80);
            double whole = angle(back, dart(back, "shoulder dart"), tip);
            for (String name : List.of("shoulder dart", to + " dart")) {
                EdgeDart half = dart(now, name);
                assertEquals(0, tip.distanceTo(half.tip()), 1e-9);
                assertEquals(whole / 2, angle(now, half, tip), 1e-6);
                assertEquals(half.first().length(), half.second().length(), 1e-6);
            }
        }
    }

    @Test
    void itGoesIntoADartThatIsThere() {
        Piece front = TestPatterns.straightFront(3, 4, Optional.of(40.0));
        Piece both =
                front.withMark(EdgeDart.of("hem dart", new Point(85, 900), new Point(100, 325), new Point(115, 900)));
        Draft draft = TestPatterns.of(both).in("40");
        Piece now = Catalogue.alter(draft, request("dart", SIDE_DART, "to", "hem dart"))
                .draft()
                .piece("front");
        assertEquals(List.of("hem dart"), now.marks(Dart.class).map(Dart::name).toList());
        Point apex = front.point("bust apex");
        double was = angle(both, dart(both, SIDE_DART), apex) + angle(both, dart(both, "hem dart"), apex);
        assertEquals(was, angle(now, dart(now, "hem dart"), apex), 0.01);
    }

    @Provide
    Arbitrary<Shape> allShapes() {
        return TestPatterns.shapes();
    }

    /** A full bust with its dart elsewhere: the drawn side dart stays as deep as it was, what the spread added is the new dart's. */
    @Property(seed = "416", tries = 100)
    void aFullBustOpensItsDartElsewhere(
            @ForAll("allShapes") Shape shape,
            @ForAll @DoubleRange(min = 5, max = 22) double spread,
            @ForAll boolean atHem) {
        String edge = atHem ? "hem" : "armhole";
        Draft before = TestPatterns.dress(shape).in("40");
        Piece old = before.piece("front");
        Map<String, Object> amount = Map.of("spread", spread + " mm");
        Piece side = Catalogue.alter(before, new AlterationRequest("full bust", amount))
                .draft()
                .piece("front");
        Map<String, Object> elsewhere = Map.of("spread", spread + " mm", "dart", edge);
        Draft after = Catalogue.alter(before, new AlterationRequest("full bust", elsewhere))
                .draft();
        Piece now = after.piece("front");
        double whole = angle(side, dart(side, SIDE_DART), pivot(side));
        double drawn = shape.bustDart() ? angle(old, dart(old, SIDE_DART), pivot(old)) : 0;
        assertEquals(whole - drawn, angle(now, dart(now, edge + " dart"), pivot(side)), 0.01);
        assertEquals(shape.bustDart(), now.find(EdgeDart.class, SIDE_DART).isPresent());
        for (Dart dart : now.marks(EdgeDart.class).toList()) {
            assertEquals(dart.legs().get(0).length(), dart.legs().get(1).length(), 0.01);
        }
        for (String kept : List.of("side seam", "armhole")) {
            assertEquals(Measured.sewn(old, kept), Measured.sewn(now, kept), 0.4, kept);
        }
        assertEquals(Measured.sewn(side, "hem"), Measured.sewn(now, "hem"), 0.1);
        assertEquals(old.edge("neckline"), now.edge("neckline"));
        assertEquals(old.edge("shoulder"), now.edge("shoulder"));
        assertEquals(side.edge("centre front"), now.edge("centre front"));
        assertEquals(before.piece("back"), after.piece("back"));
    }

    @Test
    void aFullBustElsewhereIsRefusedInPlainWords() {
        Shape shape = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);
        Draft draft = TestPatterns.dress(shape).in("40");
        for (Map<String, Object> wrong : List.<Map<String, Object>>of(
                Map.of("spread", "15 mm", "dart", "waist"),
                Map.of("spread", "-10 mm", "dart", "hem"),
                Map.of("spread", "15 mm", "at", "40 mm"))) {
            assertThrows(Refusal.class, () -> Catalogue.alter(draft, new AlterationRequest("full bust", wrong)));
        }
    }

    @Test
    void whatCannotBeIsRefusedWithWhatWouldWork() {
        Shape shape = new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0);
        Draft draft = TestPatterns.dress(shape).in("40");
        refused(draft, "bend it", "to", "centre front");
        refused(draft, "shoulder", "to", "collar");
        refused(draft, "front/side bust dart", "dart", "waist dart", "to", "shoulder");
        refused(draft, "through the waist dart", "to", "hem", "at", "95 mm");
        refused(draft, "5 mm of the edge", "to", "shoulder", "at", "2 mm");
        refused(draft, "share", "to", "shoulder", "share", "150 %");
        refused(draft, "as cannot be", "to", "shoulder", "as", "pleats");
        refused(draft, "it needs to:", "dart", SIDE_DART);
        Refusal ease = refused(draft, "12 mm of ease", "to", "ease");
        assertEquals(12, ease.reason().limit().orElseThrow(), 1e-9);
        Catalogue.alter(draft, request("to", "ease", "share", "39 %"));
    }

    private static Refusal refused(Draft draft, String says, Object... options) {
        Refusal refusal = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(options)));
        assertTrue(refusal.reason().sentence().contains(says), refusal.reason().sentence());
        return refusal;
    }
}
