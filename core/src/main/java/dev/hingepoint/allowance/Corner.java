package dev.hingepoint.allowance;

import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Edge;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * How the cutting lines of two neighbouring edges meet. Plain corners are mitred, or squared where the allowances differ: both lines run on straight until they meet
 * (at allowance / sin of half the angle from the corner, where both are equal), cut back square beyond a limit so that no spike forms.
 *
 * <p>Where a seam is pressed open or a hem turned up, its allowance lies on the piece, and must end where the cutting line beside it runs: the neighbour's
 * cutting line is mirrored about the stitching line that the allowance is folded along. Derived: the allowance's width at depth t below the line
 * equals the piece's width at t above.
 */
final class Corner {
    /** A corner farther than so many times the wider allowance is cut back. */
    private static final double LIMIT = 2.5;

    private static final Set<String> OPEN = Set.of("neckline", "armhole");

    private Corner() {}

    /**
     * The points of the cutting line up to and round the corner, and those after it.
     *
     * @param before the cutting line of the edge that runs into the corner
     * @param after the cutting line of the edge that leaves it
     */
    record Joined(List<Point> before, List<Point> after) {}

    static Joined join(Edge in, double inWidth, List<Point> before, Edge out, double outWidth, List<Point> after) {
        Point corner = in.path().end();
        Vector along = in.path().endTangent();
        Vector away = out.path().startTangent();
        if (isFolded(out, in) && outWidth > 0) {
            Joined mirrored = folded(before, after, corner, away.negated(), outWidth);
            if (mirrored != null) {
                return mirrored;
            }
        }
        if (isFolded(in, out) && inWidth > 0) {
            Joined mirrored = folded(Polyline.reversed(after), Polyline.reversed(before), corner, along, inWidth);
            if (mirrored != null) {
                return new Joined(Polyline.reversed(mirrored.after()), Polyline.reversed(mirrored.before()));
            }
        }
        return plain(before, after, corner, along, away, Math.max(inWidth, outWidth));
    }

    /** Whether the allowance of the first edge is folded onto the piece and ends at the second: a hem; a shoulder at neck or armhole. */
    private static boolean isFolded(Edge edge, Edge neighbour) {
        return edge.kind() == Edge.Kind.HEM && neighbour.kind() != Edge.Kind.HEM
                || edge.name().equals("shoulder") && OPEN.contains(neighbour.name());
    }

    private static Joined plain(
            List<Point> before, List<Point> after, Point corner, Vector along, Vector away, double width) {
        Point inEnd = before.get(before.size() - 1);
        Point outStart = after.get(0);
        if (inEnd.isCloseTo(outStart, 1e-6)) {
            return new Joined(before, after);
        }
        Point tip = Polyline.meeting(inEnd, along, outStart, away);
        boolean isOutwards = tip != null
                && tip.minus(inEnd).dot(along) >= -1e-9
                && outStart.minus(tip).dot(away) >= -1e-9;
        if (isOutwards) {
            return mitred(before, after, corner, tip, width);
        }
        Polyline.Crossing crossing = Polyline.crossing(before, after);
        if (crossing != null) {
            List<Point> trimmed = new ArrayList<>(before.subList(0, crossing.onRow()));
            trimmed.add(crossing.at());
            List<Point> rest = new ArrayList<>(List.of(crossing.at()));
            rest.addAll(after.subList(crossing.onOther(), after.size()));
            return new Joined(trimmed, rest);
        }
        // neither outwards nor crossing: a gap between unlike allowances on a straight run, or nearly; step across
        return new Joined(before, after);
    }

    private static Joined mitred(List<Point> before, List<Point> after, Point corner, Point tip, double width) {
        List<Point> to = new ArrayList<>(before);
        Vector reach = tip.minus(corner);
        double most = LIMIT * width;
        if (reach.length() <= most) {
            to.add(tip);
            return new Joined(to, after);
        }
        Vector square = reach.left();
        Point cut = corner.plus(reach.unit().times(most));
        Point one =
                Polyline.meeting(before.get(before.size() - 1), tip.minus(before.get(before.size() - 1)), cut, square);
        Point other = Polyline.meeting(after.get(0), tip.minus(after.get(0)), cut, square);
        if (one != null && other != null) {
            to.add(one);
            to.add(other);
        }
        return new Joined(to, after);
    }

    /**
     * The neighbour's cutting line up to the fold line, then mirrored about it as far as the folded allowance is deep.
     *
     * @param before the neighbour's cutting line, running into the corner
     * @param after the folded edge's cutting line, leaving it
     * @param foldLine along the folded edge's stitching line, outwards over the corner
     * @return null where the mirrored end would leave less than the folded edge's allowance beside the edge itself
     */
    private static Joined folded(List<Point> before, List<Point> after, Point corner, Vector foldLine, double depth) {
        List<Point> toFold = Polyline.upTo(before, corner, foldLine);
        Point onFold = toFold.get(toFold.size() - 1);
        if (onFold.minus(corner).dot(foldLine) < -1e-9) {
            return null;
        }
        List<Point> mirroredBack = Polyline.mirrored(toFold, corner, foldLine);
        List<Point> beyond = nearest(Polyline.reversed(mirroredBack), depth);
        Point farthest = beyond.get(beyond.size() - 1);
        if (farthest.minus(corner).dot(foldLine) < -1e-9) {
            return null;
        }
        // the folded edge's cutting line, run on beyond its start, meets the mirrored line
        List<Point> backwards = Polyline.reversed(after);
        Vector on = Polyline.endDirection(backwards);
        Point start = after.get(0);
        List<Point> kept = new ArrayList<>(toFold);
        for (int i = 1; i < beyond.size(); i++) {
            Vector step = beyond.get(i).minus(beyond.get(i - 1));
            Point meets = step.length() < 1e-9 ? null : Polyline.meeting(beyond.get(i - 1), step, start, on);
            boolean isHere = meets != null
                    && meets.minus(beyond.get(i - 1)).dot(step) >= 0
                    && (meets.minus(beyond.get(i)).dot(step) <= 0 || i == beyond.size() - 1);
            if (isHere) {
                kept.add(meets);
                return meets.minus(start).dot(on) >= -1e-9 ? new Joined(kept, after) : null;
            }
            kept.add(beyond.get(i));
        }
        return null;
    }

    /** The first stretch of a row, a good deal longer than a depth. */
    private static List<Point> nearest(List<Point> row, double depth) {
        List<Point> first = new ArrayList<>(List.of(row.get(0)));
        double length = 0;
        for (int i = 1; i < row.size() && length < 3 * depth; i++) {
            length += row.get(i).distanceTo(row.get(i - 1));
            first.add(row.get(i));
        }
        return first;
    }
}
