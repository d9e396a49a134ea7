package dev.hingepoint.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** The one rule of fairing; its closed forms are derived in the project's design notes. */
class FairingTest {
    private static final Point CORNER = new Point(100, 100);

    private static Path before(double length) {
        return Path.of(new Line(CORNER.minus(new Vector(length, 0)), CORNER));
    }

    private static Path after(double bend, double length) {
        return Path.of(new Line(CORNER, CORNER.plus(Vector.ofAngle(bend).times(length))));
    }

    @Property(seed = "31")
    void theReachIsTheRules(@ForAll @DoubleRange(min = 0.01, max = 1.2) double bend) {
        double delta = bend / 2;
        double rule = Math.min(60, Math.min(3 / delta, 0.15 / (delta * delta)));
        assertEquals(rule, Fairing.reach(before(500), after(bend, 500)), 1e-9);
        assertEquals(Math.min(rule, 7), Fairing.reach(before(500), after(bend, 7)), 1e-9);
    }

    @Property(seed = "32")
    void bothSidesMeetWithOneTangentInsideTheBend(@ForAll @DoubleRange(min = -0.6, max = 0.6) double bend) {
        if (Math.abs(bend) < 0.01) {
            return;
        }
        double reach = Fairing.reach(before(500), after(bend, 500));
        Path faired = Fairing.corner(before(reach), after(bend, reach));
        Vector in = faired.segments().get(0).tangent(1);
        Vector out = faired.segments().get(1).tangent(0);
        assertEquals(0, in.angleTo(out), 1e-12);
        assertEquals(bend / 2, new Vector(1, 0).angleTo(in), 1e-9);
        double moved = faired.segments().get(0).end().distanceTo(CORNER);
        assertEquals(reach * StrictMath.sin(Math.abs(bend) / 2) / 2, moved, 1e-9);
        // the ends keep their places and directions
        assertEquals(before(reach).start(), faired.start());
        assertEquals(after(bend, reach).end(), faired.end());
        assertEquals(0, before(reach).startTangent().angleTo(faired.startTangent()), 1e-9);
        assertEquals(0, after(bend, reach).endTangent().angleTo(faired.endTangent()), 1e-9);
    }

    @Property(seed = "33")
    void onStraightLinesTheLengthLostIsTwoThirdsLDeltaSquared(@ForAll @DoubleRange(min = 0.01, max = 0.2) double bend) {
        double reach = Fairing.reach(before(500), after(bend, 500));
        Path faired = Fairing.corner(before(reach), after(bend, reach));
        double delta = bend / 2;
        double lost = 2 * reach - faired.length();
        double predicted = 2 * reach * delta * delta / 3;
        assertTrue(
                lost >= 0 && Math.abs(lost - predicted) <= 0.25 * predicted + 1e-6, lost + " instead of " + predicted);
    }

    @Property(seed = "34")
    void drawnTheOtherWayRoundItIsTheSameLine(@ForAll @DoubleRange(min = 0.02, max = 0.6) double bend) {
        Path forward = Fairing.corner(before(20), after(bend, 20));
        Path backward = Fairing.corner(after(bend, 20).reversed(), before(20).reversed());
        assertTrue(forward.isCloseTo(backward.reversed(), 1e-9));
    }

    /** Derived: an end handle of a third of L that turns moves its curve by 4/27 L times the turn at most. */
    @Property(seed = "35")
    void anEndThatTurnsLeavesItsCourseByNoMoreThanItMay(@ForAll @DoubleRange(min = -0.4, max = 0.4) double turn) {
        Path straight = before(300);
        Path turned = Fairing.turnedAtEnd(straight, Vector.ofAngle(turn), 0.25);
        assertEquals(straight.start(), turned.start());
        assertEquals(straight.end(), turned.end());
        assertEquals(0, turned.endTangent().angleTo(Vector.ofAngle(turn)), 1e-9);
        assertEquals(0, turned.corners(1e-9).size());
        double off = turned.flatten(0.001).stream()
                .mapToDouble(point -> Math.abs(point.y() - CORNER.y()))
                .max()
                .orElseThrow();
        assertTrue(off <= 0.25 && (Math.abs(turn) < 0.05 || off > 0.2), "off by " + off);
        assertEquals(straight, Fairing.turnedAtEnd(straight, new Vector(1, 0), 0.25));
    }
}
