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
     * The cutting line before, across and after the dart, for one that is pressed to the second part. A dart that begins or ends at a corner has no seam on that
     * side: the seam is then thought to run on there, straight from the other leg, once the dart is closed.
     *
     * @param before the cutting line up to beside the first leg's end; empty for a dart that begins at a corner
     * @param after the cutting line from beside the second leg's end; empty for one that ends there
     * @param first the first leg's end
     * @param second the second leg's end
     */
    static List<Point> across(List<Point> before, List<Point> after, Point first, Point tip, Point second) {
        Vector firstLeg = first.minus(tip);
        Vector secondLeg = second.minus(tip);
        Vector middle = firstLeg.unit().plus(secondLeg.unit());
        List<Point> toLeg = before.isEmpty() ? List.of() : upToLeg(before, tip, firstLeg);
        // the shut part's cutting line from the first leg on
        List<Point> fromLeg;
        if (after.isEmpty()) {
            Point onLeg = toLeg.get(toLeg.size() - 1);
            fromLeg = List.of(onLeg, onLeg.plus(Polyline.endDirection(before)));
        } else {
            Motion shut = Motion.turn(tip, secondLeg, firstLeg);
            List<Point> closed = after.stream().map(shut::of).toList();
            fromLeg = Polyline.reversed(upToLeg(Polyline.reversed(closed), tip, firstLeg));
        }
        List<Point> half = Polyline.firstUpTo(fromLeg, tip, middle);

        List<Point> cap = new ArrayList<>(toLeg);
        cap.addAll(half);
        cap.addAll(Polyline.reversed(Polyline.mirrored(half, tip, middle)).subList(1, half.size()));
        if (!after.isEmpty()) {
            cap.addAll(Polyline.reversed(upToLeg(Polyline.reversed(after), tip, secondLeg)));
        }
        return cap;
    }

    /** The row up to a leg's line; of one so short that all of it lies beyond, only where it meets that line, run back. */
    private static List<Point> upToLeg(List<Point> row, Point tip, Vector leg) {
        List<Point> kept = Polyline.upTo(row, tip, leg);
        Point onLeg = kept.get(kept.size() - 1);
        boolean isBeyond =
                onLeg.minus(row.get(row.size() - 1)).dot(Polyline.endDirection(row)) < 0 && kept.size() > row.size();
        return isBeyond ? List.of(onLeg) : kept;
    }
}
