package dev.hingepoint.allowance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Spot;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.ArrayList;
import java.util.List;
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
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

class CuttingLineTest {
    private static final double INCH = 25.4;

    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AllowancePlan plan(Piece piece, double seam, double hem) {
        return AllowancePlan.even(piece, seam).with("hem", hem);
    }

    /** The law, held at points along the cutting line: nowhere nearer than the allowance, and exactly that far from the inside of an edge. */
    @Property(seed = "401", tries = 80)
    void theCuttingLineIsTheAllowanceAway(
            @ForAll("shapes") Shape shape,
            @ForAll @DoubleRange(min = 6, max = 20) double seam,
            @ForAll @DoubleRange(min = 10, max = 50) double hem) {
        for (Piece piece : TestPatterns.dress(shape).in("40").pieces()) {
            AllowancePlan plan = plan(piece, seam, hem);
            List<Point> ring = CuttingLine.of(piece, plan).outline();
            Polygon cut = JtsBridge.polygon(ring);
            assertTrue(cut.isValid());
            assertTrue(cut.buffer(0.011).covers(JtsBridge.polygon(piece)));
            Path line = Path.through(ring);
            for (double along = 0; along < line.length(); along += 7) {
                Point point = line.at(along);
                Spot nearest = piece.nearest(point);
                Edge edge = piece.edge(nearest.edge());
                if (isAtDart(piece, nearest.point(), seam) || isAtCorner(edge.path(), nearest, 1)) {
                    continue;
                }
                double off = point.distanceTo(nearest.point());
                String where = edge.name() + " of the " + piece.name() + " at " + nearest.point() + ": " + off;
                assertTrue(off >= plan.of(edge) - 0.02, where);
                if (!isAtPressedCorner(piece, nearest.point(), 3 * Math.max(seam, hem))) {
                    assertEquals(plan.of(edge), off, 0.02, where);
                }
            }
        }
    }

    private static boolean isAtDart(Piece piece, Point point, double width) {
        return piece.marks(EdgeDart.class)
                .anyMatch(
                        dart -> Path.through(dart.mouthStart(), dart.mouthEnd()).distanceTo(point) < width);
    }

    /** There the allowance ends as the neighbour's cutting line is mirrored, farther out than the allowance where the corner is blunt. */
    private static boolean isAtPressedCorner(Piece piece, Point point, double within) {
        return piece.edges().stream()
                .filter(edge -> edge.kind() == Edge.Kind.HEM || edge.name().equals("shoulder"))
                .anyMatch(edge -> edge.path().start().distanceTo(point) < within
                        || edge.path().end().distanceTo(point) < within);
    }

    private static boolean isAtCorner(Path path, Spot spot, double within) {
        return spot.point().distanceTo(path.start()) < within || spot.point().distanceTo(path.end()) < within;
    }

    @Property(seed = "402", tries = 40)
    void drawnTheOtherWayRoundItIsTheSameLine(@ForAll("shapes") Shape shape) {
        for (Piece piece : TestPatterns.dress(shape).in("40").pieces()) {
            List<Edge> reversed = new ArrayList<>();
            for (int i = piece.edges().size() - 1; i >= 0; i--) {
                reversed.add(piece.edges().get(i).reversed());
            }
            Piece other = piece.with(reversed, piece.marks());
            Geometry one =
                    JtsBridge.polygon(CuttingLine.of(piece, plan(piece, 15, 40)).outline());
            Geometry two =
                    JtsBridge.polygon(CuttingLine.of(other, plan(other, 15, 40)).outline());
            assertEquals(0, difference(one, two).getArea(), 0.02 * one.getLength());
        }
    }

    /** On the fold the cutting line is the stitching line, run on straight. */
    @Property(seed = "403", tries = 30)
    void onTheFoldThereIsNoAllowance(@ForAll("shapes") Shape shape) {
        Piece front = TestPatterns.dress(shape).in("40").piece("front");
        Path fold = front.edge("centre front").path();
        Path line = Path.through(CuttingLine.of(front, plan(front, 15, 40)).outline());
        for (double along = 0; along <= fold.length(); along += 10) {
            assertEquals(0, line.distanceTo(fold.at(along)), 1e-6);
        }
    }

    /** JTS's mitred buffer of the same outline, at one distance, away from hems, shoulders and darts. */
    @Property(seed = "404", tries = 30)
    void atOneDistanceItIsJtsMitredBuffer(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 5, max = 20) double width) {
        Assume.that(!shape.bustDart() && !shape.foldedBack());
        Piece back = TestPatterns.dress(shape).in("40").piece("back");
        Polygon ours = JtsBridge.polygon(
                CuttingLine.of(back, AllowancePlan.even(back, width)).outline());
        BufferParameters mitred = new BufferParameters(8, BufferParameters.CAP_ROUND, BufferParameters.JOIN_MITRE, 10);
        mitred.setSimplifyFactor(0);
        Geometry jts = new BufferOp(JtsBridge.polygon(back), mitred).getResultGeometry(width);
        // pressed corners differ by at most a corner's worth each; the rest by flattening
        double corners = 6 * width * width;
        assertTrue(difference(ours, jts).getArea() < corners + 0.02 * jts.getLength());
        // and away from the ends of hem and shoulder by flattening alone
        Geometry ends = back.edges().stream()
                .filter(edge -> edge.name().equals("hem") || edge.name().equals("shoulder"))
                .flatMap(edge -> List.of(edge.path().start(), edge.path().end()).stream())
                .map(point -> JtsBridge.polygon(
                                List.of(point, point.plus(new Vector(0.1, 0)), point.plus(new Vector(0, 0.1)), point))
                        .buffer(4 * width))
                .reduce(Geometry::union)
                .orElseThrow();
        assertEquals(
                0,
                OverlayNGRobust.overlay(difference(ours, jts), ends, OverlayNG.DIFFERENCE)
                        .getArea(),
                0.02 * jts.getLength());
    }

    private static Geometry difference(Geometry one, Geometry other) {
        return OverlayNGRobust.overlay(one, other, OverlayNG.SYMDIFFERENCE);
    }

    /** Derived: the offset corner lies allowance / sin(angle / 2) from the seam corner; for 5/8 in: 60 degrees 1.2500, 90: 0.8839, 120: 0.7217 in. */
    @ParameterizedTest
    @CsvSource({"60, 1.2500", "90, 0.8839", "120, 0.7217"})
    void aCornerLiesAllowanceOverSineOfHalfTheAngleAway(double degrees, double inches) {
        Point corner = new Point(0, 0);
        Point one = new Point(300, 0);
        Vector other = Vector.ofAngle(StrictMath.toRadians(degrees)).times(300);
        Piece triangle = straight(corner, one, corner.plus(other));
        List<Point> ring = CuttingLine.of(triangle, AllowancePlan.even(triangle, 5 / 8.0 * INCH))
                .outline();
        double farthest = ring.stream()
                .filter(point -> point.distanceTo(corner) < 60)
                .mapToDouble(point -> point.distanceTo(corner))
                .max()
                .orElseThrow();
        assertEquals(inches, farthest / INCH, 5e-5);
    }

    /** Steiner's formula for a convex outline, its round corners (pi d squared in all) exchanged for mitres (d squared cot(angle / 2) each). */
    @Test
    void theAreaAddedIsSteiners() {
        Piece rectangle = straight(new Point(0, 0), new Point(300, 0), new Point(300, 200), new Point(0, 200));
        Polygon cut = JtsBridge.polygon(
                CuttingLine.of(rectangle, AllowancePlan.even(rectangle, 10)).outline());
        assertEquals(300 * 200 + 1000 * 10 + 4 * 10 * 10, cut.getArea(), 1e-6);
    }

    @Test
    void noSpikeFormsAtASharpCorner() {
        Piece wedge = straight(new Point(0, 0), new Point(300, -20), new Point(300, 20));
        List<Point> ring = CuttingLine.of(wedge, AllowancePlan.even(wedge, 10)).outline();
        double farthest = ring.stream().mapToDouble(point -> -point.x()).max().orElseThrow();
        assertTrue(farthest <= 25 + 1e-6 && farthest >= 10, "cut back at " + farthest);
    }

    @Test
    void unlikeAllowancesMeetSquare() {
        Piece rectangle = straight(new Point(0, 0), new Point(300, 0), new Point(300, 200), new Point(0, 200));
        AllowancePlan plan = AllowancePlan.even(rectangle, 10).with("edge 0", 25);
        List<Point> ring = CuttingLine.of(rectangle, plan).outline();
        assertTrue(ring.stream().anyMatch(point -> point.isCloseTo(new Point(-10, -25), 1e-9)));
        assertTrue(ring.stream().anyMatch(point -> point.isCloseTo(new Point(310, -25), 1e-9)));
    }

    /** At a blunt corner, either way bent, the wider edge keeps its whole strip: nowhere is the line nearer to an edge than its allowance, from beside that edge. */
    @ParameterizedTest
    @CsvSource({
        "-40, 10, 25",
        "-20, 10, 25",
        "-5, 10, 25",
        "-1, 10, 25",
        "-20, 25, 10",
        "-5, 25, 10",
        "-1, 40, 10",
        "0, 10, 25",
        "1, 10, 25",
        "5, 25, 10",
        "20, 10, 25",
        "40, 25, 10",
        "-20, 0, 15",
        "20, 15, 0"
    })
    void unlikeAllowancesAtABluntCornerLeaveTheWiderStripWhole(double degrees, double one, double two) {
        double angle = StrictMath.toRadians(degrees);
        Point corner = new Point(200, 200);
        Point end = corner.plus(Vector.ofAngle(angle).times(200));
        Piece drawn = straight(new Point(0, 200), corner, end, new Point(end.x(), 600), new Point(0, 600));
        List<Edge> reversed = new ArrayList<>();
        drawn.edges().forEach(edge -> reversed.add(0, edge.reversed()));
        for (Piece piece : List.of(drawn, drawn.with(reversed, List.of()))) {
            AllowancePlan plan =
                    AllowancePlan.even(piece, 10).with("edge 0", one).with("edge 1", two);
            Path line = Path.through(CuttingLine.of(piece, plan).outline());
            for (double along = 0; along < line.length(); along += 0.5) {
                Point point = line.at(along);
                if (point.distanceTo(corner) > 80) {
                    continue;
                }
                for (String name : List.of("edge 0", "edge 1")) {
                    Path path = piece.edge(name).path();
                    Point nearest = path.at(path.nearest(point));
                    boolean isBeside = nearest.distanceTo(path.start()) > 0.01 && nearest.distanceTo(path.end()) > 0.01;
                    double off = nearest.distanceTo(point);
                    double allowance = name.equals("edge 0") ? one : two;
                    assertTrue(!isBeside || off >= allowance - 1e-6, point + " is " + off + " from " + name);
                }
            }
        }
    }

    /** Derived hem rule: the hem allowance is the mirror image of the piece about the hemline; a tapered side therefore flares below. */
    @Test
    void theHemIsAsWideBelowAsThePieceIsAbove() {
        List<Edge> edges = List.of(
                line("top", Edge.Kind.SEAM, 0, 0, 200, 0),
                line("right", Edge.Kind.SEAM, 200, 0, 170, 300),
                line("hem", Edge.Kind.HEM, 170, 300, 30, 300),
                line("left", Edge.Kind.SEAM, 30, 300, 0, 0));
        Piece sleeve = Piece.of("sleeve", "40", Optional.empty(), pair(), edges, List.of());
        Path ring = Path.through(
                CuttingLine.of(sleeve, AllowancePlan.even(sleeve, 12).with("hem", 30))
                        .outline());
        for (double depth = 2; depth < 30; depth += 4) {
            assertEquals(widthAt(ring, 300 - depth), widthAt(ring, 300 + depth), 0.02, "at " + depth);
        }
    }

    private static double widthAt(Path ring, double y) {
        List<Position> crossings = ring.crossings(new Point(0, y), new Vector(1, 0));
        return Math.abs(
                ring.at(crossings.get(0)).x() - ring.at(crossings.get(1)).x());
    }

    /** Folded shut and pressed down, the dart's raw edge ends on the cutting line of the closed seam: here one straight line. */
    @Test
    void aDartsCapEndsOnTheCuttingLineOfTheClosedSeam() {
        // a side seam that is straight once the dart, pressed down, is sewn: its upper part leans by the dart's angle
        Point tip = new Point(100, 200);
        double half = 0.15;
        Point lower = tip.plus(new Vector(100, 0).turned(half));
        Point upper = tip.plus(new Vector(100, 0).turned(-half));
        Vector below = new Vector(0, 1).turned(half);
        Vector above = new Vector(0, -1).turned(-half);
        Point foot = lower.plus(below.times(150));
        Point head = upper.plus(above.times(80));
        List<Edge> edges = List.of(
                new Edge("top", Edge.Kind.SEAM, Path.through(new Point(0, head.y()), head)),
                new Edge("side seam", Edge.Kind.SEAM, Path.through(head, upper, lower, foot)),
                new Edge("waist", Edge.Kind.SEAM, Path.through(foot, new Point(0, foot.y()))),
                new Edge("centre front", Edge.Kind.FOLD, Path.through(new Point(0, foot.y()), new Point(0, head.y()))));
        Piece front = Piece.of(
                "front", "40", Optional.empty(), pair(), edges, List.of(EdgeDart.of("dart", upper, tip, lower)));
        List<Point> ring = CuttingLine.of(front, AllowancePlan.even(front, 12)).outline();
        // between the upper leg's line and the middle of the dart, the cap lies on the upper part's own cutting line,
        // run on
        Vector side = above.negated();
        Vector out = side.left();
        List<Point> cap = ring.stream()
                .filter(point -> Math.abs(tip.minus(point).unit().negated().angleTo(new Vector(1, 0))) <= half + 1e-9)
                .filter(point -> point.x() > tip.x() + 50)
                .toList();
        assertTrue(cap.size() >= 3, cap.toString());
        for (Point point : cap) {
            Point folded = point.minus(tip).cross(new Vector(1, 0)) >= 0 ? point : mirrored(point, tip);
            assertEquals(12, folded.minus(upper).dot(out), 1e-6, point.toString());
        }
    }

    /**
     * A dart whose mouth begins at a corner, or ends there. With the dart closed the piece is a rectangle, and so is its cutting line: on the paper that is
     * within the middle of the dart, folded back and pressed to its side, the line to cut along is the rectangle's.
     */
    @ParameterizedTest
    @CsvSource({"true, true", "true, false", "false, true", "false, false"})
    void aDartAtACornerHasItsCap(boolean atStart, boolean reversed) {
        double half = 0.12;
        // closed, the right edge is x = 300 from y = 0 to 400; the dart is sewn along the level at its upper or lower
        // end
        Point corner = new Point(300, atStart ? 100 : 300);
        Point tip = new Point(160, corner.y());
        // the part beyond the dart is turned open about the tip, away from the rest
        Motion open = Motion.turn(tip, (atStart ? 1 : -1) * 2 * half);
        List<Point> rest = atStart
                ? List.of(corner, new Point(300, 400), new Point(0, 400))
                : List.of(new Point(0, 0), new Point(300, 0), corner);
        List<Point> turned = rest.stream().map(open::of).toList();
        List<Edge> edges = atStart
                ? List.of(
                        through("top", new Point(0, 100), corner),
                        through("side", corner, turned.get(0), turned.get(1)),
                        through("bottom", turned.get(1), turned.get(2)),
                        through("left", turned.get(2), new Point(0, 100)))
                : List.of(
                        through("top", turned.get(0), turned.get(1)),
                        through("side", turned.get(1), turned.get(2), corner),
                        through("bottom", corner, new Point(0, 300)),
                        through("left", new Point(0, 300), turned.get(0)));
        EdgeDart dart = atStart
                ? EdgeDart.of("dart", corner, tip, turned.get(0))
                : EdgeDart.of("dart", turned.get(2), tip, corner);
        // pressed down: to the part that is there, where the dart begins at the upper corner, else to where there is
        // none
        List<Edge> ordered = new ArrayList<>();
        edges.forEach(edge -> ordered.add(reversed ? 0 : ordered.size(), reversed ? edge.reversed() : edge));
        Piece piece = Piece.of("front", "40", Optional.empty(), pair(), ordered, List.of(dart));
        List<Point> ring = CuttingLine.of(piece, AllowancePlan.even(piece, 12)).outline();
        Polygon cut = JtsBridge.polygon(ring);
        assertTrue(cut.isValid());
        assertTrue(cut.buffer(0.011).covers(JtsBridge.polygon(piece)));
        // the seam's cutting line once the dart is closed: x = 312; a point between a leg and the middle folds onto it
        Vector middle = dart.mouthMiddle().minus(tip);
        List<Point> cap = ring.stream()
                .filter(point -> Math.abs(middle.angleTo(point.minus(tip))) <= half + 1e-9)
                .filter(point -> point.minus(tip).dot(middle) > 0)
                .toList();
        assertTrue(cap.size() >= 3, cap.toString());
        for (Point point : cap) {
            // folded at the leg that it is pressed to and turned shut, or lying on that part: both are 12 mm off the
            // seam
            double besideFixed = foldedBeside(point, tip, middle, atStart);
            assertEquals(312, besideFixed, 1e-6, point + " of " + cap);
        }
    }

    /** Where a point of the cap lies across once the dart is closed: its half next to the part that stays, or the other half mirrored onto that. */
    private static double foldedBeside(Point point, Point tip, Vector middle, boolean atStart) {
        Vector from = point.minus(tip);
        boolean nearFixed = middle.cross(from) * (atStart ? 1 : -1) <= 1e-9;
        Vector unit = middle.unit();
        Vector onFixedSide = nearFixed ? from : unit.times(2 * from.dot(unit)).minus(from);
        return tip.plus(onFixedSide).x();
    }

    private static Edge through(String name, Point... points) {
        return new Edge(name, Edge.Kind.SEAM, Path.through(points));
    }

    /** About the dart's middle, the level through its tip. */
    private static Point mirrored(Point point, Point tip) {
        return new Point(point.x(), 2 * tip.y() - point.y());
    }

    private static Piece straight(Point... corners) {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            edges.add(
                    new Edge("edge " + i, Edge.Kind.SEAM, Path.through(corners[i], corners[(i + 1) % corners.length])));
        }
        return Piece.of("patch", "40", Optional.empty(), pair(), edges, List.of());
    }

    private static Edge line(String name, Edge.Kind kind, double x1, double y1, double x2, double y2) {
        return new Edge(name, kind, Path.through(new Point(x1, y1), new Point(x2, y2)));
    }

    private static List<Cutting> pair() {
        return List.of(new Cutting(1, Cutting.How.PAIR, Optional.empty()));
    }
}
