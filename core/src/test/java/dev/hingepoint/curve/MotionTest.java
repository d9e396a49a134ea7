package dev.hingepoint.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class MotionTest {
    @Provide
    Arbitrary<Point> points() {
        return Curves.points();
    }

    @Property(seed = "21")
    void aTurnBringsOneDirectionOntoTheOther(
            @ForAll("points") Point hinge, @ForAll("points") Point from, @ForAll("points") Point onto) {
        if (hinge.distanceTo(from) > 1e-3 && hinge.distanceTo(onto) > 1e-3) {
            Motion turn = Motion.turn(hinge, from.minus(hinge), onto.minus(hinge));
            Vector image = turn.of(from).minus(hinge);
            assertEquals(0, image.unit().cross(onto.minus(hinge).unit()), 1e-12);
            assertEquals(from.distanceTo(hinge), image.length(), 1e-9);
            assertEquals(0, turn.of(hinge).distanceTo(hinge), 1e-9);
        }
    }

    @Property(seed = "22")
    void aShearKeepsLengthsAlongItsDirection(
            @ForAll("points") Point origin,
            @ForAll("points") Point point,
            @ForAll @DoubleRange(min = -1, max = 1) double factor) {
        Vector along = new Vector(3, 1).unit();
        Motion shear = Motion.shear(origin, along, factor);
        assertEquals(0, shear.of(origin).distanceTo(origin), 1e-9);
        Point farther = point.plus(along.times(17));
        assertEquals(17, shear.of(farther).minus(shear.of(point)).dot(along), 1e-9);
        Vector moved = shear.of(point).minus(point);
        assertEquals(factor * point.minus(origin).dot(along.right()), moved.dot(along), 1e-9);
        assertEquals(0, moved.cross(along), 1e-9);
    }

    /** A part of a turn is the turn by a part of its angle about the same hinge, and of a shift a part of its way. */
    @Property(seed = "23")
    void aPartOfATurnTurnsByThatPart(
            @ForAll("points") Point hinge,
            @ForAll("points") Point point,
            @ForAll @DoubleRange(min = -3, max = 3) double angle,
            @ForAll @DoubleRange(min = 0, max = 1) double part) {
        Point turned = Motion.turn(hinge, angle).part(part).of(point);
        double reach = 1 + hinge.distanceTo(point) + hinge.distanceTo(new Point(0, 0));
        if (Math.abs(angle) > 1e-3) {
            assertEquals(
                    0, turned.distanceTo(Motion.turn(hinge, part * angle).of(point)), 1e-9 * reach / Math.abs(angle));
        }
        Vector way = hinge.minus(point);
        assertEquals(0, Motion.shift(way).part(part).of(point).distanceTo(point.plus(way.times(part))), 1e-9);
        Motion shear = Motion.shear(hinge, new Vector(1, 2), 0.1);
        assertEquals(0, shear.part(1).of(point).distanceTo(shear.of(point)), 1e-9);
        assertEquals(0, shear.part(0).of(point).distanceTo(point), 1e-9);
        assertEquals(0, shear.part(0.5).of(point).distanceTo(point.midpoint(shear.of(point))), 1e-9);
    }

    @Test
    void aFoldAgreesWithItsTwoNeighbours() {
        Point hinge = new Point(200, 100);
        Point kept = new Point(0, 94);
        Point closed = new Point(0, 106);
        Motion fold = Motion.fold(hinge, kept, closed);
        Motion turn = Motion.turn(hinge, closed.minus(hinge), kept.minus(hinge));
        for (double part = 0; part <= 1; part += 0.125) {
            Point onKept = hinge.towards(kept, part);
            Point onClosed = hinge.towards(closed, part);
            assertEquals(0, fold.of(onKept).distanceTo(onKept), 1e-10);
            assertEquals(0, fold.of(onClosed).distanceTo(turn.of(onClosed)), 1e-10);
        }
        assertThrows(IllegalArgumentException.class, fold::inverse);
    }

    @Property(seed = "23")
    void thenIsOneAfterTheOther(
            @ForAll("points") Point a,
            @ForAll("points") Point b,
            @ForAll @DoubleRange(min = -3, max = 3) double angle) {
        Motion turn = Motion.turn(a, angle);
        Motion stretch = Motion.stretch(b, new Vector(1, 2), 1.3);
        Point both = turn.then(stretch).of(new Point(7, -11));
        assertEquals(0, both.distanceTo(stretch.of(turn.of(new Point(7, -11)))), 1e-9);
    }

    @Test
    void betweenFramesPutsOneFrameOntoTheOther() {
        Motion motion = Motion.between(
                new Point(10, 20),
                new Vector(1, 0),
                new Vector(0, 1),
                new Point(5, 6),
                new Vector(0, 2),
                new Vector(-3, 0));
        assertEquals(0, motion.of(new Point(10, 20)).distanceTo(new Point(5, 6)), 1e-12);
        assertEquals(0, motion.of(new Point(11, 20)).distanceTo(new Point(5, 8)), 1e-12);
        assertEquals(0, motion.of(new Point(10, 21)).distanceTo(new Point(2, 6)), 1e-12);
    }

    @Test
    void anEnlargementKeepsTheOriginAndEveryDirection() {
        Motion half = Motion.enlargement(0.5);
        assertEquals(new Point(0, 0), half.of(new Point(0, 0)));
        assertEquals(new Point(-10, 4), half.of(new Point(-20, 8)));
        assertEquals(0.5, half.scale());
    }

    @Test
    void aTurnAndScalingTakesOnePointToAnother() {
        Motion reaching = Motion.reaching(new Point(10, 10), new Point(20, 10), new Point(10, 30));
        assertEquals(0, reaching.of(new Point(20, 10)).distanceTo(new Point(10, 30)), 1e-12);
        assertEquals(0, reaching.of(new Point(10, 20)).distanceTo(new Point(-10, 10)), 1e-12);
    }
}
