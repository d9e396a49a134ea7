package dev.hingepoint.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class PieceTest {
    private static final List<Cutting> PAIR = List.of(new Cutting(1, Cutting.How.PAIR, Optional.empty()));

    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static Edge edge(String name, double... c) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < c.length; i += 2) {
            points.add(new Point(c[i], c[i + 1]));
        }
        return new Edge(name, Edge.Kind.SEAM, Path.through(points));
    }

    private static Piece square(Mark... marks) {
        return piece(
                List.of(
                        edge("top", 0, 0, 100, 0),
                        edge("right", 100, 0, 100, 100),
                        edge("bottom", 100, 100, 0, 100),
                        edge("centre back", 0, 100, 0, 0)),
                marks);
    }

    private static Piece piece(List<Edge> edges, Mark... marks) {
        return Piece.of("square", "40", Optional.empty(), PAIR, edges, List.of(marks));
    }

    private static void refused(String says, org.junit.jupiter.api.function.Executable building) {
        Refusal refusal = assertThrows(Refusal.class, building);
        assertTrue(refusal.reason() instanceof Reason.Unsound, refusal.getMessage());
        assertTrue(refusal.getMessage().contains(says), refusal.getMessage());
    }

    @Test
    void smallGapsAreClosedAndLargerOnesRefused() {
        Piece closed = piece(
                List.of(edge("top", 0, 0, 100, 0), edge("right", 100, 0.09, 100, 100), edge("left", 100, 100, 0, 0)));
        assertEquals(new Point(100, 0), closed.edge("right").path().start());
        refused(
                "apart",
                () -> piece(List.of(
                        edge("top", 0, 0, 100, 0), edge("right", 100, 0.2, 100, 100), edge("left", 100, 100, 0, 0))));
    }

    /** A gap as wide as is allowed is closed wherever it lies, whatever rounding makes of it, and though a part of the edge is no longer than it. */
    @Test
    void aGapOfATenthOfAMillimetreIsClosed() {
        for (double at : new double[] {1, 100, 300, 777, 4000}) {
            Piece closed = piece(List.of(
                    edge("top", 0, 0, at, 0),
                    edge("right", at, 0.1, at, 0, at, 100),
                    edge("bottom", at + 0.1, 100, 0, 100),
                    edge("left", 0, 100, 0, 0)));
            assertEquals(
                    Path.through(new Point(at, 0), new Point(at, 100)),
                    closed.edge("right").path());
            assertEquals(new Point(at, 100), closed.edge("bottom").path().start());
        }
        refused(
                "vanishes",
                () -> piece(List.of(
                        edge("a", 0, 0, 100, 0),
                        edge("b", 100, 0.1, 100, 0),
                        edge("c", 100, 0, 0, 100),
                        edge("d", 0, 100, 0, 0))));
    }

    /** Only what a drawing's rounding may part is closed; paper that a move has parted is an error of the move. */
    @Test
    void aGapThatAChangeOpensIsRefused() {
        Piece square = square();
        List<Edge> parted = new ArrayList<>(square.edges());
        parted.set(1, edge("right", 100, 0.05, 100, 100));
        refused("apart", () -> square.with(parted, List.of()));
        parted.set(1, edge("right", 100, 5e-7, 100, 100));
        assertEquals(
                new Point(100, 0),
                square.with(parted, List.of()).edge("right").path().start());
    }

    @Test
    void anOutlineThatCrossesItselfOrEnclosesNothingIsRefused() {
        refused(
                "crosses",
                () -> piece(List.of(
                        edge("a", 0, 0, 100, 100),
                        edge("b", 100, 100, 100, 0),
                        edge("c", 100, 0, 0, 100),
                        edge("d", 0, 100, 0, 0))));
        assertThrows(Refusal.class, () -> piece(List.of(edge("a", 0, 0, 100, 0), edge("b", 100, 0, 0, 0))));
    }

    @Test
    void marksMustBeWhereTheyBelong() {
        refused("edge", () -> square(new Notch("n", 1, new Line(new Point(50, 50), new Point(50, 55)))));
        refused("edge", () -> square(EdgeDart.of("d", new Point(90, 40), new Point(50, 50), new Point(100, 60))));
        refused("one edge", () -> square(EdgeDart.of("d", new Point(100, 40), new Point(50, 50), new Point(50, 100))));
        refused("outside", () -> square(EdgeDart.of("d", new Point(100, 40), new Point(150, 50), new Point(100, 60))));
        refused("outline", () -> square(new Level("waist", Path.through(new Point(0, 50), new Point(90, 50)))));
        refused(
                "name",
                () -> square(
                        new Level("waist", Path.through(new Point(0, 50), new Point(100, 50))),
                        new Level("waist", Path.through(new Point(0, 60), new Point(100, 60)))));
    }

    @Test
    void aLevelsEndsAreBroughtToTheOutline() {
        Piece piece = square(new Level("waist", Path.through(new Point(3, 50), new Point(104, 50))));
        assertEquals(100, piece.width("waist"), 1e-9);
    }

    /** Hand sums: the parts across the grain count, the step along it does not, and the dart's intake is left out. */
    @Test
    void aWidthCountsWhatRunsAcrossTheGrain() {
        Level stepped = new Level(
                "waist",
                Path.through(
                        new Point(0, 50), new Point(40, 50), new Point(60, 50), new Point(60, 58), new Point(100, 58)));
        DoublePointedDart dart = DoublePointedDart.of(
                "dart",
                Path.through(
                        new Point(20, 30), new Point(25, 50), new Point(20, 70), new Point(15, 50), new Point(20, 30)));
        Piece piece = square(stepped, dart, new Grain(new Line(new Point(50, 10), new Point(50, 90))));
        assertEquals(100, piece.levelFrame("waist").paperWidth(), 1e-9);
        assertEquals(10, piece.levelFrame("waist").intakeOf(dart), 1e-9);
        assertEquals(90, piece.width("waist"), 1e-9);
        assertEquals(new Point(0, 50), piece.levelFrame("waist").origin());
    }

    @Test
    void sewnLengthsLeaveDartsOut() {
        Piece piece = square(EdgeDart.of("d", new Point(100, 40), new Point(50, 50), new Point(100, 60)));
        assertEquals(80, piece.sewnLength("right"), 1e-9);
        SewnEdge sewn = piece.sewn("right");
        Path path = piece.edge("right").path();
        assertEquals(40, sewn.distanceAlong(path.nearest(new Point(100, 50))), 1e-9);
        assertEquals(50, sewn.distanceAlong(path.nearest(new Point(100, 70))), 1e-9);
        assertEquals(0, path.at(sewn.positionAt(50)).distanceTo(new Point(100, 70)), 1e-9);
    }

    @Test
    void placesNeedNoRingDirection() {
        Piece one = square();
        List<Edge> reversed = new ArrayList<>();
        for (int i = 3; i >= 0; i--) {
            reversed.add(one.edges().get(i).reversed());
        }
        Piece other = piece(reversed);
        for (Piece piece : List.of(one, other)) {
            assertEquals(
                    new Point(100, 0), Place.corner("right", "top").on(piece).point());
            assertEquals(0, Place.along("right", "top", 30).on(piece).point().distanceTo(new Point(100, 30)), 1e-9);
            assertEquals(
                    0, Place.fraction("right", "bottom", 0.25).on(piece).point().distanceTo(new Point(100, 75)), 1e-9);
        }
        assertThrows(Refusal.class, () -> Place.along("right", "top", 101).on(one));
        assertThrows(Refusal.class, () -> Place.corner("right", "centre back").on(one));
        assertNotEquals(one.isClockwise(), other.isClockwise());
    }

    /** However a piece lies on the drawing, and whichever way its grain was drawn, it has its own way down, and its measures stay. */
    @Property(seed = "513", tries = 60)
    void thePieceTellsWhichWayIsDown(
            @ForAll("shapes") Shape shape,
            @ForAll @DoubleRange(min = -3.2, max = 3.2) double angle,
            @ForAll boolean drawnUpwards) {
        for (Piece piece :
                TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40").pieces()) {
            Motion turn = Motion.turn(new Point(300, 500), angle);
            Piece turned = piece.moved(turn);
            Grain grain = turned.marks(Grain.class).findFirst().orElseThrow();
            turned = turned.withMark(drawnUpwards ? new Grain(grain.line().reversed()) : grain);
            Vector down = turn.of(piece.grain().down());
            assertEquals(0, turned.grain().down().minus(down).length(), 1e-9);
            if (Math.abs(down.y()) > 0.5) {
                Piece bare = turned.withMarks(turned.marks().stream()
                        .filter(mark -> !(mark instanceof Grain))
                        .toList());
                assertTrue(bare.grain().down().dot(down) > 0.5);
            }
            if (piece.hasLevel("waist")) {
                assertEquals(piece.width("waist"), turned.width("waist"), 1e-9);
                assertEquals(
                        0,
                        turned.levelFrame("waist")
                                .downwards()
                                .minus(turn.of(piece.levelFrame("waist").downwards()))
                                .length(),
                        1e-9);
            }
        }
    }

    /** Nothing tells the top of a plain strip: it lies as it is drawn, and the grain runs down, or to the right. */
    @Test
    void aPieceThatDoesNotTellLiesAsItIsDrawn() {
        for (double[] ends : new double[][] {{50, 90, 50, 10}, {50, 10, 50, 90}}) {
            Grain drawn = new Grain(new Line(new Point(ends[0], ends[1]), new Point(ends[2], ends[3])));
            assertTrue(square(drawn).grain().down().y() == 1);
        }
        Grain level = new Grain(new Line(new Point(90, 50), new Point(10, 50)));
        assertTrue(square(level).grain().down().x() == 1);
    }

    /** The exact area against JTS's of the outline flattened within 0.01 mm. */
    @Property(seed = "512", tries = 60)
    void theAreaIsThatOfTheFlattenedOutline(@ForAll("shapes") Shape shape) {
        for (Piece piece : TestPatterns.dress(shape).in("40").pieces()) {
            assertEquals(
                    JtsBridge.polygon(piece).getArea(),
                    piece.area(),
                    0.01 * piece.outline().length());
        }
    }

    /** Two of each width on the fold, two of a pair: hand sums. */
    @Property(seed = "511", tries = 40)
    void girthsCountEveryCut(@ForAll("shapes") Shape shape) {
        Draft draft = TestPatterns.dress(shape).in("40");
        for (String level : List.of("bust", "waist", "hip")) {
            double hand = 2 * draft.piece("front").width(level)
                    + 2 * draft.piece("back").width(level);
            assertEquals(hand, draft.girth(level), 1e-9);
        }
    }

    @Test
    void theMostParticularAllowanceHolds() {
        Piece piece = square();
        Allowances card = new Allowances(Map.of(
                "default",
                new Length(10),
                "right",
                new Length(12),
                "square/right",
                new Length(20),
                "hem",
                new Length(30)));
        assertEquals(20, card.of(piece, piece.edge("right")).mm());
        assertEquals(10, card.of(piece, piece.edge("top")).mm());
        Edge hem = new Edge("bottom", Edge.Kind.HEM, piece.edge("bottom").path());
        assertEquals(30, card.of(piece, hem).mm());
        assertEquals(
                0, card.of(piece, new Edge("top", Edge.Kind.FOLD, hem.path())).mm());
    }

    @Test
    void throughJtsAndBackItIsTheSamePieceAndNothingIsShared() {
        Piece piece = square();
        Polygon polygon = JtsBridge.polygon(piece);
        LinkedHashMap<String, Integer> corners = new LinkedHashMap<>();
        corners.put("top", 0);
        corners.put("right", 1);
        corners.put("bottom", 2);
        corners.put("centre back", 3);
        Piece back = JtsBridge.piece("square", "40", PAIR, polygon, corners);
        assertEquals(piece.edges(), back.edges());
        polygon.getCoordinates()[0].x = 77;
        polygon.geometryChanged();
        assertEquals(new Point(0, 0), back.edge("top").path().start());
    }

    /** Found by chance: each of two joints a hair apart was taken for the other, for ever. */
    @Test
    void aLevelBetweenTwoJointsThatAreAHairApartEndsAtTheNearerOne() {
        double hair = 0.8e-4;
        List<Edge> edges = List.of(
                edge("top", 0, 0, 100, 0),
                edge("right", 100, 0, 100, 50, 100, 50 + hair, 100, 100),
                edge("bottom", 100, 100, 0, 100),
                edge("centre back", 0, 100, 0, 0));
        double y = 50 + hair / 4;
        Piece piece = piece(edges, new Level("waist", Path.through(new Point(0, y), new Point(100, y))));
        assertEquals(50, piece.levelFrame("waist").outerEnd().y(), 1e-9);
    }

    /** Notches of one name on two edges are sewn together, or to others: marking one leaves the other. */
    @Test
    void aNotchTakesThePlaceOfItsNamesakeOnItsOwnEdgeOnly() {
        Piece back = TestPatterns.straightBack(225, 1000, 400);
        Notch onCentre = new Notch("hip", 1, new Line(new Point(0, 600), new Point(6, 600)));
        Notch onSide = new Notch("hip", 1, new Line(new Point(225, 600), new Point(219, 600)));
        Notch lower = new Notch("hip", 1, new Line(new Point(225, 610), new Point(219, 610)));
        Piece marked = back.withMark(onCentre).withMark(onSide).withMark(lower);
        assertEquals(
                List.of(onCentre, lower),
                marked.marks(Notch.class)
                        .filter(notch -> notch.name().equals("hip"))
                        .toList());
    }
}
