package dev.hingepoint.move;

import dev.hingepoint.curve.Bisection;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Dart;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * A dart that a wedge crosses, folded out or opened: its legs are rejoined there, then made equal by leaning its widest place over along the line across
 * it, both legs by one amount, which keeps the intake there.
 */
final class FoldedDart {
    /** A leg, parted at its widest place. */
    private record Leg(Path before, Point widest, Path after) {
        static Leg of(Path leg, Position widest) {
            return new Leg(leg.part(leg.startPosition(), widest), leg.at(widest), leg.part(widest, leg.endPosition()));
        }

        /** The leg leant over: its ends stay, its widest place goes by a fraction of {@code along}, all between in proportion. */
        Path leant(Vector along, double fraction) {
            Point to = widest.plus(along.times(fraction));
            Path upTo = before.moved(leaning(before.start(), along, fraction)).withEnd(to);
            Path from = after.moved(leaning(after.end(), along, fraction)).withStart(to);
            return upTo.withStart(before.start()).then(from.withEnd(after.end()));
        }

        private Motion leaning(Point end, Vector along, double fraction) {
            double across = widest.minus(end).dot(along.unit().right());
            return Motion.shear(end, along, fraction * along.length() / across);
        }
    }

    private FoldedDart() {}

    /**
     * The dart with legs, rejoined where the wedge crosses them, made equal.
     *
     * @param dart as it was drawn
     * @param image where a point of it went
     */
    static Dart evened(Dart dart, UnaryOperator<Point> image, Path firstLeg, Path secondLeg) {
        Leg first = parted(dart.legs().get(0), image, firstLeg);
        Leg second = parted(dart.legs().get(1), image, secondLeg);
        Vector along = second.widest().minus(first.widest());
        if (along.length() == 0) {
            return MarksAfterCut.withLegs(dart, firstLeg, secondLeg);
        }
        OptionalDouble even = Bisection.zero(-1, 1, fraction -> difference(first, second, along, fraction));
        return even.isEmpty()
                ? MarksAfterCut.withLegs(dart, firstLeg, secondLeg)
                : MarksAfterCut.withLegs(
                        dart, first.leant(along, even.getAsDouble()), second.leant(along, even.getAsDouble()));
    }

    private static double difference(Leg first, Leg second, Vector along, double fraction) {
        return first.leant(along, fraction).length()
                - second.leant(along, fraction).length();
    }

    /** A leg parted where it was widest as drawn; one that was straight, where it now bends. */
    private static Leg parted(Path drawn, UnaryOperator<Point> image, Path rejoined) {
        Position widest = widest(drawn);
        boolean isStraight = aside(drawn, widest) <= Tolerance.COINCIDENT;
        return Leg.of(rejoined, isStraight ? widest(rejoined) : rejoined.nearest(image.apply(drawn.at(widest))));
    }

    /** The place farthest from the straight line between a leg's ends. */
    private static Position widest(Path leg) {
        Vector aside = leg.end().minus(leg.start()).left();
        Position left = leg.farthest(aside);
        Position right = leg.farthest(aside.negated());
        return aside(leg, left) > aside(leg, right) ? left : right;
    }

    private static double aside(Path leg, Position position) {
        return Math.abs(leg.at(position)
                .minus(leg.start())
                .cross(leg.end().minus(leg.start()).unit()));
    }
}
