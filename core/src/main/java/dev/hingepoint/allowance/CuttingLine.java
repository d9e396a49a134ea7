package dev.hingepoint.allowance;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Offset;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.SewnEdge;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.TopologyException;

/**
 * The line to cut along round a piece.
 *
 * <p>Guarantees: it never crosses itself and contains the piece; it is nowhere nearer to an edge than that edge's allowance, and exactly that far wherever the nearest
 * point lies inside the edge and the edge's radius allows; along folds and bound edges it is the stitching line. All within 0.02 mm. Corners are as
 * {@link Corner} says, darts have a {@link DartCap}.
 */
public final class CuttingLine {
    /** Length of a notch's stroke, and distance between two, in mm. */
    private static final double STROKE = 5;

    private static final double BETWEEN_STROKES = 3;

    private final List<Point> outline;
    private final List<Line> notches;

    private CuttingLine(List<Point> outline, List<Line> notches) {
        this.outline = List.copyOf(outline);
        this.notches = List.copyOf(notches);
    }

    /** With the allowances of the pattern's card. */
    public static CuttingLine of(Draft draft, Piece piece) {
        return of(piece, AllowancePlan.of(draft.allowances(), piece));
    }

    /** @throws Refusal where the allowance is too wide for the piece's shape, or a dart lies where no cap can be drawn */
    public static CuttingLine of(Piece piece, AllowancePlan plan) {
        try {
            return drawn(piece, plan);
        } catch (IllegalArgumentException | TopologyException wrong) {
            throw new Refusal(
                    new Reason.Unsound(Message.of("allowance.cutting-line.cannot-be-drawn"), piece.where()), wrong);
        }
    }

    private static CuttingLine drawn(Piece piece, AllowancePlan plan) {
        List<Edge> edges = piece.edges();
        double outwards = piece.isClockwise() ? 1 : -1;
        List<List<Point>> rows = new ArrayList<>();
        for (Edge edge : edges) {
            rows.add(beside(piece, edge, plan.of(edge), outwards));
        }
        for (int i = 0; i < edges.size(); i++) {
            int next = (i + 1) % edges.size();
            Corner.Joined joined = Corner.join(
                    edges.get(i),
                    plan.of(edges.get(i)),
                    rows.get(i),
                    edges.get(next),
                    plan.of(edges.get(next)),
                    rows.get(next));
            rows.set(i, joined.before());
            rows.set(next, joined.after());
        }
        List<Point> ring = new ArrayList<>();
        rows.forEach(row -> row.forEach(point -> {
            if (ring.isEmpty() || !ring.get(ring.size() - 1).isCloseTo(point, Tolerance.COINCIDENT)) {
                ring.add(point);
            }
        }));
        if (ring.get(0).isCloseTo(ring.get(ring.size() - 1), Tolerance.COINCIDENT)) {
            ring.remove(ring.size() - 1);
        }
        ring.add(ring.get(0));
        List<Point> outline = verified(piece, ring);
        return new CuttingLine(outline, notches(piece, plan, outwards));
    }

    /** The parallel of one edge, with a cap over each dart. */
    private static List<Point> beside(Piece piece, Edge edge, double width, double outwards) {
        if (width == 0) {
            return edge.path().flatten(Tolerance.FLATTENING);
        }
        List<EdgeDart> darts = piece.marks(EdgeDart.class)
                .filter(dart -> SewnEdge.isOn(edge.path(), dart))
                .sorted(Comparator.comparing(dart -> edge.path().nearest(dart.mouthMiddle())))
                .toList();
        Path path = edge.path();
        if (darts.isEmpty()) {
            return Offset.polyline(path, outwards * width, Tolerance.FLATTENING);
        }
        Position from = path.startPosition();
        Optional<Capped> open = Optional.empty();
        for (EdgeDart dart : darts) {
            Position one = path.nearest(dart.mouthStart());
            Position other = path.nearest(dart.mouthEnd());
            Position mouthFrom = one.compareTo(other) < 0 ? one : other;
            Position mouthTo = one.compareTo(other) < 0 ? other : one;
            List<Point> row = joined(piece, open, stretch(path, from, mouthFrom, outwards * width));
            open = Optional.of(new Capped(row, dart, path.at(mouthFrom), path.at(mouthTo)));
            from = mouthTo;
        }
        return joined(piece, open, stretch(path, from, path.endPosition(), outwards * width));
    }

    private static List<Point> joined(Piece piece, Optional<Capped> open, List<Point> stretch) {
        return open.map(capped -> capped.joinedTo(piece, stretch)).orElse(stretch);
    }

    /** The parallel of a stretch; empty where there is none, since a dart's mouth begins where it would, at a corner or another dart. */
    private static List<Point> stretch(Path path, Position from, Position to, double distance) {
        boolean isThere = !path.at(from).isCloseTo(path.at(to), Tolerance.JOINING);
        return isThere ? Offset.polyline(path.part(from, to), distance, Tolerance.FLATTENING) : List.of();
    }

    /** The cutting line up to a dart, waiting for what follows it. */
    private record Capped(List<Point> before, EdgeDart dart, Point first, Point second) {
        List<Point> joinedTo(Piece piece, List<Point> after) {
            if (before.isEmpty() && after.isEmpty()) {
                throw new Refusal(new Reason.Unsound(
                        Message.of("allowance.cutting-line.mouth-takes-whole-edge"),
                        piece.where().mark(dart.name())));
            }
            if (DartCap.isPressedToSecond(piece, dart, first, second)) {
                return DartCap.across(before, after, first, dart.tip(), second);
            }
            return Polyline.reversed(
                    DartCap.across(Polyline.reversed(after), Polyline.reversed(before), second, dart.tip(), first));
        }
    }

    /** Without loops; a result that would not hold is refused, never drawn. */
    private static List<Point> verified(Piece piece, List<Point> ring) {
        if (JtsBridge.polygon(ring).isValid()) {
            return ring;
        }
        List<Point> outer = Loops.removed(ring, piece.isClockwise());
        Polygon cut = JtsBridge.polygon(outer);
        boolean holds = cut.isValid() && cut.buffer(Tolerance.FLATTENING).covers(JtsBridge.polygon(piece));
        if (!holds) {
            throw new Refusal(Reason.BeyondLimit.of(Message.of("allowance.cutting-line.too-wide"), piece.where()));
        }
        return outer;
    }

    /**
     * Each notch on the cutting line, square to its edge, pointing in; two or three strokes side by side where it has a count. A notch at a dart's
     * leg lies in line with the leg.
     */
    private static List<Line> notches(Piece piece, AllowancePlan plan, double outwards) {
        List<Line> strokes = new ArrayList<>();
        for (Notch notch : piece.marks(Notch.class).toList()) {
            Spot spot = piece.nearest(notch.at());
            Edge edge = piece.edge(spot.edge());
            Vector tangent = edge.path().tangent(spot.position());
            Vector square = outwards > 0 ? tangent.left() : tangent.right();
            Vector out = leg(piece, notch).orElse(square);
            double width = plan.of(edge) / out.dot(square);
            for (int i = 0; i < notch.count(); i++) {
                double aside = (i - (notch.count() - 1) / 2.0) * BETWEEN_STROKES;
                Point on = spot.point().plus(out.times(width)).plus(tangent.times(aside));
                strokes.add(new Line(on, on.minus(out.times(STROKE))));
            }
        }
        return strokes;
    }

    /** The direction out along the dart's leg that a notch stands at the end of. */
    private static Optional<Vector> leg(Piece piece, Notch notch) {
        return piece.marks(EdgeDart.class)
                .flatMap(dart -> Stream.of(dart.mouthStart(), dart.mouthEnd())
                        .filter(end -> end.isCloseTo(notch.at(), Tolerance.JOINING))
                        .map(end -> end.minus(dart.tip()).unit()))
                .findFirst();
    }

    /** Which way a dart is pressed, across its mouth: a unit vector along it. */
    public static Vector pressedTowards(Piece piece, EdgeDart dart) {
        Vector mouth = dart.mouthEnd().minus(dart.mouthStart()).unit();
        boolean toEnd = DartCap.isPressedToSecond(piece, dart, dart.mouthStart(), dart.mouthEnd());
        return toEnd ? mouth : mouth.negated();
    }

    /** The closed line, first point repeated last, the same way round as the piece was drawn. */
    public List<Point> outline() {
        return outline;
    }

    /** The strokes of the notches, each from the cutting line inwards. */
    public List<Line> notches() {
        return notches;
    }
}
