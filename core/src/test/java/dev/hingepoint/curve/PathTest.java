package dev.hingepoint.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class PathTest {
    @Provide
    Arbitrary<Path> paths() {
        return Curves.paths();
    }

    @Provide
    Arbitrary<Cubic> smooth() {
        return Curves.smooth();
    }

    @Provide
    Arbitrary<Motion> rigidMotions() {
        return Curves.rigidMotions();
    }

    @Provide
    Arbitrary<Point> points() {
        return Curves.points();
    }

    @Test
    void aPathWithAGapIsRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> Path.of(new Line(new Point(0, 0), new Point(1, 0)), new Line(new Point(1, 1), new Point(2, 0))));
    }

    @Property(seed = "11")
    void movingRigidlyChangesNoLength(@ForAll("paths") Path path, @ForAll("rigidMotions") Motion motion) {
        assertEquals(path.length(), path.moved(motion).length(), 1e-7);
    }

    @Property(seed = "12")
    void movingBackGivesTheSamePath(@ForAll("paths") Path path, @ForAll("rigidMotions") Motion motion) {
        List<Point> before = path.controlPoints().toList();
        List<Point> after =
                path.moved(motion).moved(motion.inverse()).controlPoints().toList();
        for (int i = 0; i < before.size(); i++) {
            assertEquals(0, before.get(i).distanceTo(after.get(i)), 1e-9);
        }
    }

    @Property(seed = "13")
    void reversingTwiceIsTheSamePath(@ForAll("paths") Path path) {
        assertEquals(path, path.reversed().reversed());
        assertEquals(path.length(), path.reversed().length(), 1e-8);
    }

    @Property(seed = "14")
    void partsAddUpAndMeet(@ForAll("paths") Path path, @ForAll @DoubleRange(min = 0.02, max = 0.98) double fraction) {
        double at = fraction * path.length();
        Path first = path.part(0, at);
        Path second = path.part(at, path.length());
        assertEquals(at, first.length(), 1e-7);
        assertEquals(path.length(), first.length() + second.length(), 1e-7);
        assertEquals(first.end(), second.start());
    }

    @Property(seed = "15")
    void distanceAlongUndoesPositionAt(@ForAll("paths") Path path, @ForAll @DoubleRange(max = 1) double fraction) {
        double at = fraction * path.length();
        assertEquals(at, path.distanceAlong(path.positionAt(at)), 1e-7);
    }

    @Property(seed = "16")
    void noFlattenedPointIsNearerThanTheNearest(@ForAll("paths") Path path, @ForAll("points") Point point) {
        double nearest = path.distanceTo(point);
        path.flatten(1).forEach(on -> assertTrue(on.distanceTo(point) >= nearest - 1e-9));
    }

    @Property(seed = "17")
    void runningOnReachesTheLengthAskedFor(
            @ForAll("smooth") Cubic cubic, @ForAll @DoubleRange(min = -3, max = 20) double longer) {
        Path path = Path.of(cubic);
        double wanted = path.length() + longer;
        Path changed = path.withLength(wanted);
        assertEquals(wanted, changed.length(), 1e-6);
        assertEquals(path.start(), changed.start());
    }

    /** Nothing on the path lies farther, compared with the path flattened. */
    @Property(seed = "18")
    void theFarthestPlaceLiesFarthest(
            @ForAll("paths") Path path, @ForAll @DoubleRange(min = -3.14, max = 3.14) double angle) {
        Vector direction = new Vector(StrictMath.cos(angle), StrictMath.sin(angle));
        double farthest = path.at(path.farthest(direction)).minus(path.start()).dot(direction);
        double flattened = path.flatten(0.001).stream()
                .mapToDouble(point -> point.minus(path.start()).dot(direction))
                .max()
                .orElseThrow();
        assertEquals(flattened, farthest, 0.001);
        assertTrue(farthest >= flattened - 1e-9);
    }

    /** Every place of a line that lies along another would be a crossing; none is given, however rounding tilts the two. */
    @Property(seed = "20")
    void aLineThatLiesAlongAnotherDoesNotCrossIt(
            @ForAll("points") Point from,
            @ForAll @DoubleRange(min = -3.14, max = 3.14) double angle,
            @ForAll @DoubleRange(min = 1, max = 900) double length,
            @ForAll @DoubleRange(min = -900, max = 900) double aside) {
        Vector along = Vector.ofAngle(angle);
        Line line = new Line(from, from.plus(along.times(length)));
        assertEquals(List.of(), line.crossings(from.plus(along.times(aside)), along));
        Vector across = along.left();
        assertEquals(1, line.crossings(line.at(0.5), across).size());
        assertEquals(0.5, line.crossings(line.at(0.5), across).get(0), 1e-9);
    }

    /** Only the end of a path gives way to its new length, and smoothly. */
    @Property(seed = "19")
    void withAnotherLengthItIsTheSamePathButForItsEnd(
            @ForAll("smooth") Cubic cubic, @ForAll @DoubleRange(min = -20, max = 20) double more) {
        Path path = Path.of(cubic);
        double wanted = Math.max(path.length() / 2, path.length() + more);
        Path changed = path.withLength(wanted);
        assertEquals(wanted, changed.length(), 1e-6);
        double kept = Math.min(wanted, path.length() - Math.max(30, 2 * more));
        if (kept > 1) {
            assertTrue(changed.part(0, kept).isCloseTo(path.part(0, kept), 1e-6));
        }
        assertTrue(changed.corners(1e-6).isEmpty());
    }

    /** Derived: a line drawn at even speed gives way by 1 - smoothstep; a smooth path stays smooth and keeps its directions at both ends. */
    @Property(seed = "13")
    void aPathGivesWayToAStartThatMoved(
            @ForAll @DoubleRange(min = -15, max = 15) double across,
            @ForAll @DoubleRange(min = -15, max = 15) double down) {
        Vector shift = new Vector(across, down);
        Path line = Path.through(new Point(0, 0), new Point(0, 120));
        Path moved = line.givingWay(shift);
        for (double t = 0; t <= 1; t += 0.125) {
            Point expected = new Point(0, 120 * t).plus(shift.times(1 - t * t * (3 - 2 * t)));
            Segment only = moved.segments().get(0);
            assertEquals(0, only instanceof Line ? 0 : only.at(t).distanceTo(expected), 1e-9);
        }
        Cubic whole = new Cubic(new Point(0, 0), new Point(-10, 50), new Point(20, 90), new Point(70, 95));
        Path curve = Path.of(whole.part(0, 0.3), whole.part(0.3, 0.55), whole.part(0.55, 1));
        Path given = curve.givingWay(shift);
        assertEquals(0, given.start().distanceTo(curve.start().plus(shift)), 1e-12);
        assertEquals(curve.end(), given.end());
        assertEquals(0, given.startTangent().angleTo(curve.startTangent()), 1e-12);
        assertEquals(0, given.endTangent().angleTo(curve.endTangent()), 1e-12);
        assertEquals(0, given.corners(1e-9).size());
    }

    /** Derived: an S that leaves and arrives level turns to one side and back by its slope half way, here 1 in 2. */
    @Test
    void howFarAPathTurnsBack() {
        Path bend = Path.of(new Cubic(new Point(0, 0), new Point(-10, 50), new Point(20, 90), new Point(70, 95)));
        assertEquals(0, bend.turnedBack(), 1e-12);
        Path s = Path.of(new Cubic(new Point(0, 0), new Point(40, 0), new Point(60, 30), new Point(100, 30)));
        assertEquals(StrictMath.atan(0.5), s.turnedBack(), 1e-9);
        assertEquals(StrictMath.atan(0.5), s.reversed().turnedBack(), 1e-9);
    }

    /** A place computed a hair before a joint leaves no sliver before the next segment. */
    @Test
    void aStretchFromAHairBesideAJointHasNoSliver() {
        Path path = Path.through(new Point(0, 0), new Point(100, 0), new Point(100, 80));
        Path part = path.part(new Position(0, 1 - 1e-9), path.endPosition());
        assertEquals(1, part.segments().size(), part.toString());
        Path upTo = path.part(path.startPosition(), new Position(1, 1e-9));
        assertEquals(1, upTo.segments().size(), upTo.toString());
    }
}
