package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.DoublePointedDart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Every "afterwards" of the sway back, measured with JTS on random dresses; closed forms on straight paper. */
class SwayBackTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AlterationRequest request(Object... options) {
        Map<String, Object> map = new java.util.LinkedHashMap<>();
        for (int i = 0; i < options.length; i += 2) {
            map.put((String) options[i], options[i + 1]);
        }
        return new AlterationRequest("sway back", map);
    }

    private static boolean isFold(Shape shape) {
        return shape.foldedBack();
    }

    @Property(seed = "101", tries = 150)
    void aWedgeShortensCentreBackAndNothingElse(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 6, max = 25) double wedge) {
        Assume.that(!isFold(shape));
        Draft before = TestPatterns.dress(shape).in("40");
        Draft after = Catalogue.alter(before, request("wedge", wedge + " mm")).draft();
        Piece old = before.piece("back");
        Piece back = after.piece("back");
        assertEquals(Measured.sewn(old, "centre back") - wedge, Measured.sewn(back, "centre back"), 0.3);
        assertEquals(Measured.sewn(old, "side seam"), Measured.sewn(back, "side seam"), 0.3);
        for (String edge : List.of("neckline", "shoulder", "armhole")) {
            assertEquals(old.edge(edge), back.edge(edge));
        }
        for (Level level : old.marks(Level.class).toList()) {
            assertEquals(old.width(level.name()), back.width(level.name()), 0.5);
        }
        assertEquals(before.piece("front"), after.piece("front"));
        back.marks(DoublePointedDart.class)
                .forEach(dart ->
                        assertEquals(dart.first().length(), dart.second().length(), 1e-6));
        assertEquals(old.isClockwise(), back.isClockwise());
    }

    @Property(seed = "102", tries = 100)
    void atTheShoulderAFoldStaysStraight(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 6, max = 25) double wedge) {
        Assume.that(isFold(shape));
        Draft before = TestPatterns.dress(shape).in("40");
        Draft after = Catalogue.alter(before, request("wedge", wedge + " mm")).draft();
        Piece old = before.piece("back");
        Piece back = after.piece("back");
        assertEquals(Measured.sewn(old, "centre back") - wedge, Measured.sewn(back, "centre back"), 0.05);
        assertEquals(back.edge("centre back").path().length(), straight(back), 1e-9);
        assertEquals(Measured.sewn(old, "shoulder"), Measured.sewn(back, "shoulder"), 0.1);
        for (String edge : List.of("armhole", "side seam", "hem")) {
            assertEquals(old.edge(edge), back.edge(edge));
        }
        for (Level level : old.marks(Level.class).toList()) {
            assertEquals(old.width(level.name()), back.width(level.name()), 1e-6);
        }
        // square to the fold still, and the same angle to the shoulder
        assertEquals(corner(old, "centre back", "neckline"), corner(back, "centre back", "neckline"), 1e-9);
        assertEquals(corner(old, "neckline", "shoulder"), corner(back, "neckline", "shoulder"), 1e-9);
    }

    private static double straight(Piece back) {
        Edge fold = back.edge("centre back");
        return fold.path().start().distanceTo(fold.path().end());
    }

    private static double corner(Piece piece, String edge, String neighbour) {
        return Math.abs(piece.from(edge, neighbour)
                .startTangent()
                .angleTo(piece.from(neighbour, edge).startTangent()));
    }

    @Property(seed = "103", tries = 100)
    void aKeptFoldStaysOneStraightLine(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 6, max = 20) double wedge) {
        Assume.that(isFold(shape));
        Draft before = TestPatterns.dress(shape).in("40");
        Draft after = Catalogue.alter(before, request("wedge", wedge + " mm", "method", "wedge", "keep fold", true))
                .draft();
        Piece old = before.piece("back");
        Piece back = after.piece("back");
        assertEquals(back.edge("centre back").path().length(), straight(back), 1e-6);
        assertEquals(Measured.sewn(old, "centre back") - wedge, Measured.sewn(back, "centre back"), 0.1);
        assertEquals(Measured.sewn(old, "side seam"), Measured.sewn(back, "side seam"), 0.1);
        for (Level level : old.marks(Level.class).toList()) {
            assertEquals(old.width(level.name()), back.width(level.name()), 0.5);
        }
        // the hem leaves the fold square for 20 mm
        var hem = back.from("hem", "centre back");
        double quarter = Math.abs(back.from("centre back", "hem").startTangent().angleTo(hem.startTangent()));
        assertEquals(StrictMath.PI / 2, quarter, StrictMath.toRadians(0.5));
        assertEquals(0, hem.startTangent().angleTo(hem.tangent(hem.positionAt(20))), StrictMath.toRadians(0.5));
    }

    /** Derived: W = 9 in, d = 0.75 in, equal legs: the part below turns by 4.7719 degrees; the paper removed is 3.375 square inches. */
    @Test
    void onStraightPaperTheAngleIsTwiceTheArcTangent() {
        Piece back = TestPatterns.straightBack(9 * 25.4, 1000, 400);
        Altered altered = Catalogue.alter(TestPatterns.of(back).in("40"), request("wedge", "3/4 in"));
        Step cut = altered.steps().get(0);
        Step.Part below = cut.parts().stream()
                .filter(part -> !part.isFolded())
                .findFirst()
                .orElseThrow();
        assertEquals(4.7719, StrictMath.toDegrees(Math.abs(below.motion().angle())), 5e-5);
        Step.Part wedge =
                cut.parts().stream().filter(Step.Part::isFolded).findFirst().orElseThrow();
        double area = dev.hingepoint.pattern.JtsBridge.polygon(wedge.outline().flatten(0.01))
                .getArea();
        assertEquals(3.375, area / (25.4 * 25.4), 1e-9);
    }

    /** The level at the line becomes longer by w squared over 8r. */
    @Test
    void onStraightPaperTheWaistGrowsByAHair() {
        Piece back = TestPatterns.straightBack(225, 1000, 400);
        Altered altered = Catalogue.alter(TestPatterns.of(back).in("40"), request("wedge", "25 mm"));
        Piece cut = altered.steps().get(0).after();
        assertEquals(225 + 25 * 25 / (8 * 225.0), cut.width("waist"), 1e-3);
    }

    @Test
    void aNotchStaysAtItsPointOfTheCloth() {
        Piece back = TestPatterns.straightBack(225, 1000, 400);
        Piece after = Catalogue.alter(TestPatterns.of(back).in("40"), request("wedge", "12 mm"))
                .draft()
                .piece("back");
        var notch = after.marks(dev.hingepoint.pattern.Notch.class).findFirst().orElseThrow();
        var side = after.downwards("side seam");
        assertEquals(250 + 80, side.distanceAlong(side.nearest(notch.at())), 0.2);
        assertTrue(notch.at().x() < 224.5, "the part below has swung in: " + notch.at());
    }

    @Test
    void whatCannotBeIsRefusedWithTheLargestThatWouldWork() {
        Draft back = TestPatterns.of(TestPatterns.straightBack(225, 1000, 400)).in("40");
        Refusal wide = assertThrows(Refusal.class, () -> Catalogue.alter(back, request("wedge", "900 mm")));
        double limit = wide.reason().limit().orElseThrow();
        Catalogue.alter(back, request("wedge", limit + " mm"));
        assertThrows(Refusal.class, () -> Catalogue.alter(back, request("wedge", limit + 0.11 + " mm")));
        assertThrows(Refusal.class, () -> Catalogue.alter(back, request("wedge", "-5 mm")));
        assertThrows(Refusal.class, () -> Catalogue.alter(back, request("wedge", "12 mm", "at", "knee")));
        assertThrows(Refusal.class, () -> Catalogue.alter(back, request("wedge", "12 mm", "keep fold", true)));
        Refusal broken = assertThrows(Refusal.class, () -> Catalogue.alter(back, request("wedge", "120 mm")));
        assertTrue(broken.getMessage().contains("it would not hold that"), broken.getMessage());
    }

    /** Found by chance: the line a hair above the waist, so that the level's last part is shorter than what the fairing takes off. */
    @Test
    void aLevelThatEndsInASliverIsCutOffFartherIn() {
        Shape shape = new Shape(
                218.15491819513508,
                282.1959726263838,
                -8.395766086705924,
                101.87971217382496,
                244.56023815358265,
                6.252799287324714,
                true,
                true,
                true,
                false,
                2);
        for (String above : List.of("0.001 mm", "0.017051153555556198 mm", "0.05 mm", "0.2 mm")) {
            for (String wedge : List.of("20.999428560318652 mm", "12 mm", "7 mm")) {
                Draft draft = TestPatterns.dress(shape).in("40");
                Piece back = Catalogue.alter(
                                draft, request("wedge", wedge, "above", above, "method", "wedge", "keep fold", true))
                        .draft()
                        .piece("back");
                assertEquals(draft.piece("back").width("waist"), back.width("waist"), 0.5);
            }
        }
    }

    /** A line that lies wholly inside the folded wedge goes along; nothing is lost and nothing thrown. */
    @Test
    void aLineInsideTheWedgeIsCarriedAlong() {
        Shape shape = new Shape(200, 250, 20, 95, 262, 5, false, false, false, false, 0);
        Draft drawn = TestPatterns.dress(shape).in("40");
        Piece back = drawn.piece("back");
        Point waist = back.levelFrame("waist").origin();
        DrawnLine line = new DrawnLine("tuck", Path.through(new Point(4, waist.y() - 2), new Point(4, waist.y() + 2)));
        Draft draft = drawn.with(back.withMark(line));
        Piece altered =
                Catalogue.alter(draft, request("wedge", "12 mm")).draft().piece("back");
        assertEquals(
                4, altered.find(DrawnLine.class, "tuck").orElseThrow().path().length(), 1e-9);
    }

    /** A waist drawn a hair beside the side seam's corner is meant to meet it there: the same corner then stays, and no second one beside it. */
    @Test
    void aHairBesideACornerIsTheCorner() {
        Piece exact = altered(TestPatterns.corneredBack(400, Edge.Kind.SEAM), "wedge", "12 mm");
        assertEquals(1, exact.edge("side seam").path().corners(Tolerance.CORNER).size());
        for (double beside : new double[] {-0.08, -0.001, 1e-5, 0.02, 0.05}) {
            Piece back = altered(TestPatterns.corneredBack(400 + beside, Edge.Kind.SEAM), "wedge", "12 mm");
            Path side = back.edge("side seam").path();
            assertEquals(1, side.corners(Tolerance.CORNER).size(), "beside by " + beside);
            assertTrue(side.segments().stream().allMatch(part -> part.length() > 1), "a sliver at " + beside);
            assertTrue(side.isCloseTo(exact.edge("side seam").path(), 0.15));
        }
    }

    /** The sheared paper begins w squared over 2r inside the hinge; where a corner stays, that step is closed all the same. */
    @Property(seed = "104", tries = 40)
    void atACornerAKeptFoldLeavesNoStep(@ForAll @DoubleRange(min = 6, max = 25) double wedge) {
        Piece drawn = TestPatterns.corneredBack(400, Edge.Kind.FOLD);
        Piece back = altered(drawn, "wedge", wedge + " mm", "method", "wedge", "keep fold", true);
        Path side = back.edge("side seam").path();
        assertEquals(1, side.corners(Tolerance.CORNER).size(), side.toString());
        assertTrue(side.distanceTo(new Point(225, 400)) < 1e-6, "the corner stays in its place");
        assertTrue(side.segments().stream().allMatch(part -> part.length() > 20), side.toString());
        assertEquals(Measured.sewn(drawn, "side seam"), Measured.sewn(back, "side seam"), 0.1);
    }

    @Test
    void aCornerTooNearToFairIsTold() {
        Draft draft =
                TestPatterns.of(TestPatterns.corneredBack(402, Edge.Kind.SEAM)).in("40");
        Altered altered = Catalogue.alter(draft, request("wedge", "12 mm"));
        assertTrue(
                altered.notes().stream()
                        .anyMatch(note -> note.contains("a corner of the back lies 2 mm from the wedge")),
                altered.notes().toString());
    }

    /** Above the dart's widest place its legs are straight where they are cut; they are made equal all the same, and keep their intake. */
    @Property(seed = "105", tries = 60)
    void aDartAcrossTheWedgeKeepsEqualLegs(
            @ForAll @DoubleRange(min = 6, max = 25) double wedge,
            @ForAll @DoubleRange(min = 15, max = 60) double off,
            @ForAll @IntRange(min = -1, max = 1) int side,
            @ForAll @DoubleRange(min = -6, max = 6) double slope,
            @ForAll boolean isCurved) {
        Piece straight = TestPatterns.straightBack(225, 1000, 400);
        List<Mark> marks = new ArrayList<>(straight.marks());
        marks.removeIf(mark -> mark.name().equals("waist"));
        marks.add(new Level("waist", Path.through(new Point(0, 400 + slope), new Point(225, 400 - slope))));
        marks.add(dart("inner dart", 70, 280, 400 + slope * (1 - 140 / 225.0), 520, 12, isCurved));
        marks.add(dart("outer dart", 140, 300, 400 + slope * (1 - 280 / 225.0), 500, 8, isCurved));
        Piece drawn = straight.withMarks(marks);
        Piece back = altered(drawn, "wedge", wedge + " mm", "above", side * off + " mm");
        for (DoublePointedDart dart : back.marks(DoublePointedDart.class).toList()) {
            assertEquals(Measured.length(dart.first()), Measured.length(dart.second()), 0.01, dart.name());
            // the whole intake where the legs turn
            Point one = turn(dart.first(), side >= 0);
            Point other = turn(dart.second().reversed(), side >= 0);
            assertEquals(dart.name().startsWith("inner") ? 24 : 16, one.distanceTo(other), 0.3, dart.name());
        }
    }

    /** The lowest or the highest joint of a leg, downwards. */
    private static Point turn(Path leg, boolean isLowest) {
        return isLowest
                ? leg.segments().get(leg.segments().size() - 1).start()
                : leg.segments().get(0).end();
    }

    private static DoublePointedDart dart(
            String name, double x, double top, double widest, double bottom, double half, boolean isCurved) {
        Point[] at = {new Point(x, top), new Point(x - half, widest), new Point(x, bottom), new Point(x + half, widest)
        };
        List<Segment> sides = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Line side = new Line(at[i], at[(i + 1) % 4]);
            Vector bulge = side.step().left().times(0.01);
            sides.add(
                    isCurved
                            ? new Cubic(
                                    side.start(),
                                    side.at(1 / 3.0).plus(bulge),
                                    side.at(2 / 3.0).plus(bulge),
                                    side.end())
                            : side);
        }
        return DoublePointedDart.of(name, Path.of(sides));
    }

    /** A notch in the paper that is folded away stays whole, on the line where the wedge is closed. */
    @Test
    void aNotchInTheWedgeStaysOnTheSeam() {
        Notch drawn = new Notch("tape", 1, new Line(new Point(0, 403), new Point(6, 403)));
        Piece straight = TestPatterns.straightBack(225, 1000, 400).withMark(drawn);
        Piece back = altered(straight, "wedge", "12 mm");
        Notch notch = back.marks(Notch.class)
                .filter(mark -> mark.name().equals("tape"))
                .findFirst()
                .orElseThrow();
        assertEquals(6, notch.line().length(), 1e-9);
        assertEquals(0, back.edge("centre back").path().distanceTo(notch.at()), 0.1);
        // the wedge's upper edge, at 394 on centre back, is where it closes
        assertEquals(394, notch.at().y(), 1.5);
    }

    private static Piece altered(Piece back, Object... options) {
        return Catalogue.alter(TestPatterns.of(back).in("40"), request(options))
                .draft()
                .piece("back");
    }
}
