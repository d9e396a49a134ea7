package dev.hingepoint.allowance;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * The cap of a dart on the cutting line: what would be cut if the dart were folded closed, pressed to its side, and cut through along the seam's cutting
 * line. Half the intake then lies on the part it is pressed to; unfolded, the raw edge is that part's cutting line, turned shut about the tip, as far as
 * the dart's middle, and its mirror image.
 */
final class DartCap {
    private DartCap() {}

    /** Level and slanted darts are pressed down, upright ones to the centre: the middle of the dart then points that way. */
    static boolean isPressedToSecond(Piece piece, EdgeDart dart, Point first, Point second) {
        Vector axis = dart.tip().minus(dart.mouthMiddle());
        Vector down = piece.grain().down();
        boolean isUpright = Math.abs(axis.dot(down)) > axis.length() * StrictMath.cos(StrictMath.PI / 4);
        if (!isUpright) {
            return second.minus(first).dot(down) > 0;
        }
        return piece.centre()
                .map(edge -> edge.path().distanceTo(second) < edge.path().distanceTo(first))
                .orElse(true);
    }

    /**
     * The cutting line before, across and after the dart, for one that is pressed to the second part.
     *
     * @param before the cutting line up to beside the first leg's end
     * @param after the cutting line from beside the second leg's end
     * @param first the first leg's end
     * @param second the second leg's end
     */
    static List<Point> across(List<Point> before, List<Point> after, Point first, Point tip, Point second) {
        Vector firstLeg = first.minus(tip);
        Vector secondLeg = second.minus(tip);
        Vector middle = firstLeg.unit().plus(secondLeg.unit());
        Motion shut = Motion.turn(tip, secondLeg, firstLeg);
        List<Point> closed = after.stream().map(shut::of).toList();

        List<Point> cap = new ArrayList<>(Polyline.upTo(before, tip, firstLeg));
        // the shut part's cutting line from the first leg to the dart's middle
        List<Point> fromLeg = Polyline.reversed(Polyline.upTo(Polyline.reversed(closed), tip, firstLeg));
        List<Point> half = firstUpTo(fromLeg, tip, middle);
        cap.addAll(half);
        cap.addAll(Polyline.reversed(Polyline.mirrored(half, tip, middle)).subList(1, half.size()));
        cap.addAll(Polyline.reversed(Polyline.upTo(Polyline.reversed(after), tip, secondLeg)));
        return cap;
    }

    /** The row up to where it first crosses a line, run on straight where it does not. */
    private static List<Point> firstUpTo(List<Point> row, Point on, Vector line) {
        Vector unit = line.unit();
        for (int i = 1; i < row.size(); i++) {
            double a = unit.cross(row.get(i - 1).minus(on));
            double b = unit.cross(row.get(i).minus(on));
            if (a != b && a <= 0 != b <= 0) {
                List<Point> kept = new ArrayList<>(row.subList(0, i));
                kept.add(row.get(i - 1).towards(row.get(i), a / (a - b)));
                return kept;
            }
        }
        return Polyline.upTo(row, on, line);
    }
}
