package dev.hingepoint.move;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Dart;

/**
 * A dart that a folded wedge crosses: its legs are rejoined at the closed line, then made equal by sliding both joints along that line by
 * one amount, which keeps the intake there.
 */
final class FoldedDart {
    private static final int HALVINGS = 80;

    /** One leg: what is left before the wedge, where it is rejoined, and what is left after. */
    record Leg(Path before, Point joint, Path after) {
        Path slid(Vector by) {
            Point at = joint.plus(by);
            return before.withEnd(at).then(after.withStart(at));
        }
    }

    private FoldedDart() {}

    static Dart rejoined(Dart dart, Leg first, Leg second) {
        Vector along = second.joint().minus(first.joint());
        double low = -1;
        double high = 1;
        if (along.length() == 0 || difference(first, second, along, low) * difference(first, second, along, high) > 0) {
            return MarksAfterCut.withLegs(dart, first.slid(Vector.ZERO), second.slid(Vector.ZERO));
        }
        boolean rising = difference(first, second, along, high) > 0;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (difference(first, second, along, middle) > 0 == rising) {
                high = middle;
            } else {
                low = middle;
            }
        }
        Vector slide = along.times((low + high) / 2);
        return MarksAfterCut.withLegs(dart, first.slid(slide), second.slid(slide));
    }

    private static double difference(Leg first, Leg second, Vector along, double fraction) {
        Vector slide = along.times(fraction);
        return first.slid(slide).length() - second.slid(slide).length();
    }
}
