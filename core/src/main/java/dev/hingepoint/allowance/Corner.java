package dev.hingepoint.allowance;

import dev.hingepoint.curve.Offset;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Edge;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    private static final double LIMIT = Offset.MITRE_LIMIT;

    private static final Set<String> OPEN = Set.of("neckline", "armhole");

    private Corner() {}

    /**
     * The points of the cutting line up to and round the corner, and those after it.
     *
     * @param before the cutting line of the edge that runs into the corner
     * @param after the cutting line of the edge that leaves it
     */
    record Joined(List<Point> before, List<Point> after) {
        /** The same corner, walked the other way. */
        Joined reversed() {
            return new Joined(Polyline.reversed(after), Polyline.reversed(before));
        }
    }

    static Joined join(Edge in, double inWidth, List<Point> before, Edge out, double outWidth, List<Point> after) {
        Point corner = in.path().end();
        Vector along = in.path().endTangent();
        Vector away = out.path().startTangent();
        if (isFolded(out, in) && outWidth > 0) {
            Optional<Joined> mirrored = folded(before, after, corner, away.negated(), outWidth);
            if (mirrored.isPresent()) {
                return mirrored.get();
            }
        }
        if (isFolded(in, out) && inWidth > 0) {
            Optional<Joined> mirrored =
                    folded(Polyline.reversed(after), Polyline.reversed(before), corner, along, inWidth);
            if (mirrored.isPresent()) {
                return mirrored.get().reversed();
            }
        }
        return plain(before, inWidth, after, outWidth, corner, along, away);
    }

    /** Whether the allowance of the first edge is folded onto the piece and ends at the second: a hem; a shoulder at neck or armhole. */
    private static boolean isFolded(Edge edge, Edge neighbour) {
        return edge.kind() == Edge.Kind.HEM && neighbour.kind() != Edge.Kind.HEM
                || edge.name().equals("shoulder") && OPEN.contains(neighbour.name());
    }

    private static Joined plain(
            List<Point> before,
            double inWidth,
            List<Point> after,
            double outWidth,
            Point corner,
            Vector along,
            Vector away) {
        Point inEnd = before.get(before.size() - 1);
        Point outStart = after.get(0);
        if (inEnd.isCloseTo(outStart, Tolerance.COINCIDENT)) {
            return new Joined(before, after);
        }
        Optional<Point> outwards = Polyline.meeting(inEnd, along, outStart, away)
                .filter(tip -> tip.minus(inEnd).dot(along) >= -Tolerance.LENGTH
                        && outStart.minus(tip).dot(away) >= -Tolerance.LENGTH);
        if (outwards.isPresent()) {
            return mitred(before, after, corner, outwards.get(), Math.max(inWidth, outWidth));
        }
        return Polyline.crossing(before, after)
                .map(crossing -> {
                    List<Point> trimmed = new ArrayList<>(before.subList(0, crossing.onRow()));
                    trimmed.add(crossing.at());
                    List<Point> rest = new ArrayList<>(List.of(crossing.at()));
                    rest.addAll(after.subList(crossing.onOther(), after.size()));
                    return new Joined(trimmed, rest);
                })
                .orElseGet(() -> outWidth > inWidth
                        ? stepped(before, after, corner, away)
                        : stepped(Polyline.reversed(after), Polyline.reversed(before), corner, along.negated())
                                .reversed());
    }

    /**
     * Unlike allowances on a nearly straight run, which neither meet outwards nor cross: the line steps square to the wider edge, all of whose strip stays.
     *
     * @param narrow the narrower allowance's cutting line, running into the corner
     * @param wide the wider one's, leaving it
     * @param away along the wider edge, from the corner
     */
    private static Joined stepped(List<Point> narrow, List<Point> wide, Point corner, Vector away) {
        boolean cutsIntoWide = narrow.get(narrow.size() - 1).minus(corner).dot(away) > 0;
        return new Joined(cutsIntoWide ? Polyline.upTo(narrow, corner, away.left()) : narrow, wide);
    }

    private static Joined mitred(List<Point> before, List<Point> after, Point corner, Point tip, double width) {
        List<Point> to = new ArrayList<>(before);
        Vector reach = tip.minus(corner);
        double most = LIMIT * width;
        if (reach.length() <= most) {
            to.add(tip);
            return new Joined(to, after);
        }
        Point last = before.get(before.size() - 1);
        Vector square = reach.left();
        Point cut = corner.plus(reach.unit().times(most));
        Optional<Point> one = Polyline.meeting(last, tip.minus(last), cut, square);
        Optional<Point> other = Polyline.meeting(after.get(0), tip.minus(after.get(0)), cut, square);
        if (one.isPresent() && other.isPresent()) {
            to.add(one.get());
            to.add(other.get());
        }
        return new Joined(to, after);
    }

    /**
     * The neighbour's cutting line up to the fold line, then mirrored about it as far as the folded allowance is deep.
     *
     * @param before the neighbour's cutting line, running into the corner
     * @param after the folded edge's cutting line, leaving it
     * @param foldLine along the folded edge's stitching line, outwards over the corner
     * @return empty where the mirrored end would leave less than the folded edge's allowance beside the edge itself
     */
    private static Optional<Joined> folded(
            List<Point> before, List<Point> after, Point corner, Vector foldLine, double depth) {
        List<Point> toFold = Polyline.upTo(before, corner, foldLine);
        Point onFold = toFold.get(toFold.size() - 1);
        if (onFold.minus(corner).dot(foldLine) < -Tolerance.LENGTH) {
            return Optional.empty();
        }
        List<Point> mirroredBack = Polyline.mirrored(toFold, corner, foldLine);
        List<Point> beyond = nearest(Polyline.reversed(mirroredBack), depth);
        Point farthest = beyond.get(beyond.size() - 1);
        if (farthest.minus(corner).dot(foldLine) < -Tolerance.LENGTH) {
            return Optional.empty();
        }
        // the folded edge's cutting line, run on beyond its start, meets the mirrored line
        Vector on = Polyline.endDirection(Polyline.reversed(after));
        Point start = after.get(0);
        List<Point> kept = new ArrayList<>(toFold);
        for (int i = 1; i < beyond.size(); i++) {
            Point last = beyond.get(i - 1);
            Point next = beyond.get(i);
            boolean isLast = i == beyond.size() - 1;
            Vector step = next.minus(last);
            Optional<Point> meets = step.length() < Tolerance.LENGTH
                    ? Optional.empty()
                    : Polyline.meeting(last, step, start, on)
                            .filter(point -> point.minus(last).dot(step) >= 0
                                    && (isLast || point.minus(next).dot(step) <= 0));
            if (meets.isPresent()) {
                kept.add(meets.get());
                boolean isBeyond = meets.get().minus(start).dot(on) >= -Tolerance.LENGTH;
                return isBeyond ? Optional.of(new Joined(kept, after)) : Optional.empty();
            }
            kept.add(next);
        }
        return Optional.empty();
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
