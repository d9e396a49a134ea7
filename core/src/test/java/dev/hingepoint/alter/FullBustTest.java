package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Cut;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.DoublePointedDart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.LevelFrame;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every "afterwards" of the full bust, measured with JTS on random dresses; the table of closed forms on straight paper. */
class FullBustTest {
    private static final double INCH = 25.4;

    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AlterationRequest request(Object... options) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < options.length; i += 2) {
            map.put((String) options[i], options[i + 1]);
        }
        return new AlterationRequest("full bust", map);
    }

    /** Derived: the table of the project's alteration notes, a = 3 in, b = 4 in, no dart drawn, side seam 4 1/2 in from the apex. */
    @ParameterizedTest
    @CsvSource({"0.50, 6.8699, 0.3301, 0.5392", "0.75, 10.1262, 0.4651, 0.7943", "1.00, 13.2917, 0.5826, 1.0416"})
    void onStraightPaperTheTableHolds(double spread, double degrees, double drop, double intake) {
        BustLines lines = new BustLines(TestPatterns.straightFront(3, 4, Optional.empty()));
        assertEquals(degrees, StrictMath.toDegrees(lines.turn(spread * INCH)), 5e-5);
        assertEquals(drop, lines.drop(spread * INCH) / INCH, 5e-5);
        double radius = 4.5 * INCH;
        double opened = 2 * radius * StrictMath.sin(lines.turn(spread * INCH) / 2);
        assertEquals(intake, opened / INCH, 5e-5);
    }

    /** Derived, the table's last line: closing by half an inch. */
    @Test
    void onStraightPaperTheSmallBustOfTheTableHolds() {
        BustLines lines = new BustLines(TestPatterns.straightFront(3, 4, Optional.of(40.0)));
        assertEquals(-7.5571, StrictMath.toDegrees(lines.turn(-0.5 * INCH)), 5e-5);
        assertEquals(-0.4293, lines.drop(-0.5 * INCH) / INCH, 5e-5);
        double closed = 2 * 4.5 * INCH * StrictMath.sin(-lines.turn(-0.5 * INCH) / 2);
        assertEquals(0.5931, closed / INCH, 5e-5);
    }

    @Property(seed = "111", tries = 150)
    void theFrontGrowsByTheSpreadAndKeepsTheRest(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 5, max = 30) double spread) {
        Draft before = TestPatterns.dress(shape).in("40");
        Altered altered = Catalogue.alter(before, request("spread", spread + " mm"));
        Piece old = before.piece("front");
        Piece front = altered.draft().piece("front");
        assertEquals(old.edge("neckline"), front.edge("neckline"));
        assertEquals(old.edge("shoulder"), front.edge("shoulder"));
        assertEquals(Measured.sewn(old, "armhole"), Measured.sewn(front, "armhole"), 0.3);
        double drop = new BustLines(old).drop(spread);
        assertEquals(Measured.sewn(old, "centre front") + drop, Measured.sewn(front, "centre front"), 0.05);
        // what is sewn at a level that ends in the mouth is said by the legs; the level may pass the tip on the other
        // side than before
        assertEquals(old.width("bust") + spread, front.width("bust"), 3);
        if (!new BustLines(old).endsInMouth("bust")) {
            assertEquals(paperAtBust(old) + spread, paperAtBust(front), 0.5);
        }
        assertEquals(old.width("waist") + spread, front.width("waist"), 0.1);
        assertEquals(old.width("hip") + spread, front.width("hip"), 0.1);
        assertEquals(Measured.sewn(old, "side seam"), Measured.sewn(front, "side seam"), 0.1);
        EdgeDart dart = front.find(EdgeDart.class, "side bust dart").orElseThrow();
        assertEquals(dart.first().length(), dart.second().length(), 0.01);
        for (Point legEnd : List.of(dart.mouthStart(), dart.mouthEnd())) {
            assertTrue(
                    front.marks(Notch.class).anyMatch(notch -> notch.at().isCloseTo(legEnd, 0.1)),
                    "a notch at each leg of the new dart");
        }
        assertEquals(before.piece("back"), altered.draft().piece("back"));
        assertTrue(SeamWalk.all(altered.draft()).get(0).lengthMatches());
    }

    /** The paper's width at the bust, which runs close by the dart's tip, less what the waist dart takes. */
    private static double paperAtBust(Piece piece) {
        return piece.levelFrame("bust").paperWidth();
    }

    @Property(seed = "112", tries = 60)
    void girthIsTwiceTheSpread(@ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 5, max = 30) double spread) {
        Draft before = TestPatterns.dress(shape).in("40");
        Draft bySpread =
                Catalogue.alter(before, request("spread", spread + " mm")).draft();
        Draft byGirth = Catalogue.alter(before, request("girth", "+" + 2 * spread + " mm"))
                .draft();
        assertEquals(
                0,
                Measured.apart(
                        bySpread.piece("front").outline(),
                        byGirth.piece("front").outline()),
                1e-6);
    }

    @Property(seed = "113", tries = 100)
    void aSmallBustClosesTheDartAtMostToNothing(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 2, max = 40) double closing) {
        Assume.that(shape.bustDart());
        Draft before = TestPatterns.dress(shape).in("40");
        Piece old = before.piece("front");
        try {
            Piece front = Catalogue.alter(before, request("spread", "-" + closing + " mm"))
                    .draft()
                    .piece("front");
            assertEquals(old.width("waist") - closing, front.width("waist"), 0.1);
            assertEquals(old.width("hip") - closing, front.width("hip"), 0.1);
            assertEquals(Measured.sewn(old, "side seam"), Measured.sewn(front, "side seam"), 0.1);
            double intake = front.find(EdgeDart.class, "side bust dart")
                    .map(EdgeDart::intake)
                    .orElse(0.0);
            assertTrue(intake < 30, "the dart takes less: " + intake);
        } catch (Refusal refusal) {
            double limit = -refusal.reason().limit().orElseThrow();
            assertTrue(closing > limit, closing + " is within " + limit);
            Catalogue.alter(before, request("spread", "-" + 0.95 * limit + " mm"));
        }
    }

    @Property(seed = "114", tries = 80)
    void keptGirthsDoNotGrow(@ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 8, max = 25) double spread) {
        Draft before = TestPatterns.dress(shape).in("40");
        for (String keep : List.of("waist", "hip", "both")) {
            Piece old = before.piece("front");
            Piece front = Catalogue.alter(before, request("spread", spread + " mm", "keep", keep))
                    .draft()
                    .piece("front");
            assertEquals(old.width("waist") + (keep.equals("hip") ? spread : 0), front.width("waist"), 0.1);
            assertEquals(old.width("hip") + (keep.equals("waist") ? spread : 0), front.width("hip"), 0.1);
            assertEquals(Measured.sewn(before.piece("back"), "side seam"), Measured.sewn(front, "side seam"), 0.5);
        }
    }

    @Test
    void asEaseTheFullnessStaysBetweenTwoNotchesAndTheSeamSaysSo() {
        Shape shape = new Shape(200, 250, 20, 95, 262, 5, false, false, false, false, 0);
        Draft before = TestPatterns.dress(shape).in("40");
        Altered altered = Catalogue.alter(before, request("spread", "6 mm", "dart", "ease"));
        double intake = new BustLines(before.piece("front")).intake(6);
        Piece front = altered.draft().piece("front");
        assertTrue(front.marks(EdgeDart.class).findAny().isEmpty());
        double grown = Measured.sewn(front, "side seam") - Measured.sewn(before.piece("front"), "side seam");
        assertEquals(intake, grown, Tolerance.SEAM_MATCH);
        var walked = SeamWalk.all(altered.draft()).get(0);
        assertTrue(walked.lengthMatches());
        assertEquals(grown, walked.seam().easeTo(), 0.01);
        assertEquals(0, sharpest(front), Tolerance.CORNER);
        Refusal tooMuch =
                assertThrows(Refusal.class, () -> Catalogue.alter(before, request("spread", "20 mm", "dart", "ease")));
        double fits = tooMuch.reason().limit().orElseThrow();
        Catalogue.alter(before, request("spread", fits - 0.01 + " mm", "dart", "ease"));
    }

    /** The largest bend in radians inside the side seam. */
    private static double sharpest(Piece piece) {
        Path side = piece.edge("side seam").path();
        return side.corners(Tolerance.CORNER).isEmpty() ? 0 : 1;
    }

    /**
     * Derived: at a bust level d above the apex, the paper opens about the hinge by a(1 - cos) + b sin of the same angle, a and b from where the level
     * crosses the slash to the armhole; from the apex down it opens by the whole spread.
     */
    @Property(seed = "116", tries = 120)
    void theBustLevelNeedNotPassThroughTheApex(
            @ForAll("shapes") Shape shape,
            @ForAll @DoubleRange(min = -15, max = 15) double below,
            @ForAll @DoubleRange(min = 5, max = 25) double spread) {
        Assume.that(!shape.bustDart());
        Draft drawn = TestPatterns.dress(shape).in("40");
        Piece old = drawn.piece("front");
        Point level = old.point("bust apex");
        MarkedPoint apex =
                new MarkedPoint("bust apex", level.plus(old.grain().down().times(below)), 3);
        Draft before = drawn.with(old.withMark(apex));
        Piece front = Catalogue.alter(before, request("spread", spread + " mm"))
                .draft()
                .piece("front");
        BustLines lines = new BustLines(before.piece("front"));
        double fraction = Math.max(0, below) / -lines.hinge().minus(apex.at()).dot(lines.down());
        Vector arm = lines.hinge().minus(apex.at().towards(lines.hinge(), fraction));
        double turn = lines.turn(spread);
        double opened =
                arm.dot(lines.outwards()) * (1 - StrictMath.cos(turn)) - arm.dot(lines.down()) * StrictMath.sin(turn);
        assertEquals(old.width("bust") + opened, front.width("bust"), 0.5);
        assertEquals(old.width("waist") + spread, front.width("waist"), 0.1);
    }

    /** A level that runs into a slanting dart by one leg and out by the other loses what is sewn away there, not the length between the legs. */
    @Property(seed = "117", tries = 60)
    void aSlantingDartTakesItsIntakeOnly(
            @ForAll("shapes") Shape shape,
            @ForAll @DoubleRange(min = -30, max = -12) double below,
            @ForAll @DoubleRange(min = 5, max = 25) double spread) {
        Assume.that(!shape.bustDart());
        Draft drawn = TestPatterns.dress(shape).in("40");
        Piece old = drawn.piece("front");
        Point level = old.point("bust apex");
        MarkedPoint apex =
                new MarkedPoint("bust apex", level.plus(old.grain().down().times(below)), 3);
        Draft before = drawn.with(old.withMark(apex));
        Altered altered = Catalogue.alter(before, request("spread", spread + " mm"));
        double grown = altered.draft().piece("front").width("bust") - old.width("bust");
        assertEquals(spread, grown, 3, "the girth that is reported");
    }

    /** The bust level that a first spread left has a step, and lies turned on the upper side part: a second one opens it all the same. */
    @Property(seed = "119", tries = 40)
    void inTwoGoes(@ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 5, max = 12) double spread) {
        Assume.that(!shape.bustDart());
        Draft before = TestPatterns.dress(shape).in("40");
        Draft once = Catalogue.alter(before, request("spread", spread + " mm")).draft();
        Draft twice = Catalogue.alter(once, request("spread", spread + " mm")).draft();
        assertEquals(paperAtBust(once.piece("front")) + spread, paperAtBust(twice.piece("front")), 0.5);
        assertEquals(
                before.piece("front").width("hip") + 2 * spread,
                twice.piece("front").width("hip"),
                0.2);
    }

    /** A waist dart drawn up to the apex, or past it, goes with the cut as any other. */
    @Property(seed = "118", tries = 60)
    void aWaistDartMayReachTheApex(
            @ForAll("shapes") Shape shape,
            @ForAll @DoubleRange(min = -10, max = 10) double aside,
            @ForAll @DoubleRange(min = -20, max = 12) double below,
            @ForAll @DoubleRange(min = 5, max = 25) double spread) {
        Draft drawn = TestPatterns.dress(shape).in("40");
        Piece old = drawn.piece("front");
        LevelFrame waist = old.levelFrame("waist");
        Vector out = waist.outwards();
        Vector down = old.grain().down();
        Point tip = old.point("bust apex").plus(out.times(aside)).plus(down.times(below));
        Point centre = tip.plus(down.times(waist.origin().minus(tip).dot(down)));
        Path legs = Path.through(
                tip, centre.plus(out.times(10)), centre.plus(down.times(110)), centre.minus(out.times(10)), tip);
        Draft before = drawn.with(old.withMark(DoublePointedDart.of("waist dart", legs)));
        Piece front = Catalogue.alter(before, request("spread", spread + " mm"))
                .draft()
                .piece("front");
        assertEquals(before.piece("front").width("waist") + spread, front.width("waist"), 0.1);
        DoublePointedDart dart =
                front.find(DoublePointedDart.class, "waist dart").orElseThrow();
        assertEquals(Measured.length(legs), Measured.length(dart.closed()), 1e-9);
    }

    /** Untrued, s and then -s along the same cuts gives the same outline. */
    @Property(seed = "115", tries = 60)
    void cutApartAndClosedAgainItIsTheSameOutline(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 5, max = 30) double spread) {
        Assume.that(!shape.bustDart());
        Piece old = TestPatterns.dress(shape).in("40").piece("front");
        BustLines lines = new BustLines(old);
        Cut there = lines.cut(spread);
        Piece opened = there.on(old).piece();
        Place lower = Place.corner("side seam", "hem");
        Place upper = Place.corner("armhole", "side seam");
        Place strip = Place.corner("hem", "centre front");
        // the same slashes as they lie now on the parts that moved
        var side = lines.lowerSide(spread);
        var down = dev.hingepoint.curve.Motion.shift(lines.down().times(lines.drop(spread)));
        List<Path> slashes = there.lines();
        Path a = slashes.get(0).moved(side);
        Path b = Path.through(a.start(), lines.hinge());
        Path c = slashes.get(2).moved(side);
        Path d = Path.through(
                slashes.get(3).moved(side).start(), down.of(slashes.get(3).end()));
        Cut back = Cut.along("back", a, b.withStart(a.start()), c.withEnd(a.start()), d)
                .moving(lower, side.inverse())
                .moving(upper, lines.upperSide(spread).inverse())
                .moving(strip, down.inverse());
        Piece closed = back.on(opened).piece();
        for (String edge : List.of("neckline", "shoulder", "armhole", "side seam", "hem", "centre front")) {
            assertEquals(
                    0, Measured.apart(old.edge(edge).path(), closed.edge(edge).path()), 1e-9, edge);
        }
    }
}
