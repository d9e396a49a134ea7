package dev.hingepoint.pattern;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.curve.Tolerance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** What must hold of a piece before it exists: edges that close, an outline that does not cross itself, marks in their places. */
final class Soundness {
    private Soundness() {}

    /**
     * The edges with small gaps closed: each edge then begins exactly where the last ended.
     *
     * @param joining the widest gap in mm that is closed
     */
    static List<Edge> closed(List<Edge> edges, double joining, Where where) {
        if (edges.size() < 2) {
            throw unsound(Message.of("pattern.soundness.too-few-edges", edges.size()), where);
        }
        Set<String> names = new HashSet<>();
        List<Edge> closed = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            Edge edge = edges.get(i);
            if (!names.add(edge.name())) {
                throw unsound(Message.of("pattern.soundness.edge-name-twice", edge.name()), where.edge(edge.name()));
            }
            Edge last = edges.get((i + edges.size() - 1) % edges.size());
            Point end = last.path().end();
            double gap = end.distanceTo(edge.path().start());
            // a gap as wide as is allowed, as computed, may be wider by rounding
            if (gap > joining + Tolerance.COINCIDENT) {
                throw unsound(
                        Message.of(
                                "pattern.soundness.gap",
                                last.name(),
                                edge.name(),
                                Quantity.millimetres(gap),
                                Quantity.millimetres(Tolerance.JOINING)),
                        where.edge(edge.name()));
            }
            closed.add(gap == 0 ? edge : edge.with(from(end, edge, gap, where)));
        }
        return closed;
    }

    /** The edge's path from where the last edge ended; what lies within the gap of there is swallowed by it. */
    private static Path from(Point start, Edge edge, double gap, Where where) {
        List<Segment> segments = edge.path().segments();
        int kept = 0;
        while (kept < segments.size() && segments.get(kept).end().isCloseTo(start, gap)) {
            kept++;
        }
        if (kept == segments.size()) {
            throw unsound(
                    Message.of("pattern.soundness.edge-within-gap", Quantity.millimetres(gap)),
                    where.edge(edge.name()));
        }
        return Path.of(segments.subList(kept, segments.size())).withStart(start);
    }

    /**
     * The enclosed area in mm2, exactly: positive where the ring runs clockwise on the paper (y down). For a cubic, Green's theorem gives 3/20
     * (2 P0xP1 + P0xP2 + P0xP3/3 + P1xP2 + P1xP3 + 2 P2xP3); derived.
     */
    static double signedArea(Path ring) {
        double area = 0;
        for (Segment segment : ring.segments()) {
            Point p = segment.start();
            Point s = segment.end();
            if (segment instanceof Cubic cubic) {
                Point q = cubic.startHandle();
                Point r = cubic.endHandle();
                area += 3
                        / 20.0
                        * (2 * cross(p, q)
                                + cross(p, r)
                                + cross(p, s) / 3
                                + cross(q, r)
                                + cross(q, s)
                                + 2 * cross(r, s));
            } else {
                area += cross(p, s) / 2;
            }
        }
        return area;
    }

    private static double cross(Point a, Point b) {
        return a.x() * b.y() - b.x() * a.y();
    }

    /** The marks, with the ends of levels brought to the outline. */
    static List<Mark> marksOnOutline(Piece piece) {
        return piece.marks().stream()
                .map(mark -> mark instanceof Level level ? onOutline(piece, level) : mark)
                .toList();
    }

    private static Level onOutline(Piece piece, Level level) {
        Path ends = atJoint(piece, endOnOutline(piece, level, level.path()));
        Path both = atJoint(piece, endOnOutline(piece, level, ends.reversed())).reversed();
        return both.equals(level.path()) ? level : new Level(level.name(), both);
    }

    /** A line that ends a hair beside a joint of the outline ends at the joint: a cut there then leaves no sliver. */
    private static Path atJoint(Piece piece, Path path) {
        Segment last = path.segments().get(path.segments().size() - 1);
        if (last.start().isCloseTo(path.end(), 2 * Tolerance.LAST_DECIMAL)) {
            return path;
        }
        return piece.edges().stream()
                .flatMap(edge -> edge.path().segments().stream())
                .map(Segment::end)
                .min(Comparator.comparingDouble(joint -> joint.distanceTo(path.end())))
                .filter(joint -> joint.isCloseTo(path.end(), Tolerance.LAST_DECIMAL) && !joint.equals(path.end()))
                .map(path::withEnd)
                .orElse(path);
    }

    /** The line with its last part extended or clipped to where it meets the outline. */
    private static Path endOnOutline(Piece piece, Level level, Path path) {
        Point end = path.end();
        // on the outline as far as a drawing can say, whose every point is rounded: what was written reads back as it
        // was
        if (piece.nearest(end).point().isCloseTo(end, 2 * Tolerance.LAST_DECIMAL)) {
            return path;
        }
        Segment last = path.segments().get(path.segments().size() - 1);
        Point meets = piece.edges().stream()
                .flatMap(edge -> edge.path().crossings(end, last.tangent(1)).stream()
                        .map(position -> edge.path().at(position)))
                .filter(point -> point.minus(last.start()).dot(last.tangent(1)) > 0)
                .min((a, b) -> Double.compare(a.distanceTo(end), b.distanceTo(end)))
                .filter(point -> point.isCloseTo(end, Tolerance.LEVEL_REACH))
                .orElseThrow(() -> unsound(
                        Message.of(
                                "pattern.soundness.level-ends-inside",
                                level.name(),
                                Quantity.millimetres(piece.nearest(end).point().distanceTo(end)),
                                Quantity.millimetres(Tolerance.LEVEL_REACH)),
                        piece.where().mark(level.name())));
        List<Segment> parts = new ArrayList<>(path.segments());
        parts.set(parts.size() - 1, new Line(last.start(), meets));
        return Path.of(parts);
    }

    static Piece checked(Piece piece, List<Mark> marks) {
        if (!marks.equals(piece.marks())) {
            return piece.withMarks(marks);
        }
        Polygon polygon = JtsBridge.polygon(piece);
        TopologyValidationError error = new IsValidOp(polygon).getValidationError();
        if (error != null || !(polygon.getArea() > 0)) {
            throw unsound(
                    error == null ? Message.of("pattern.soundness.encloses-nothing") : crossing(error), piece.where());
        }
        if (piece.cuttings().isEmpty()) {
            throw unsound(Message.of("pattern.soundness.no-cuttings"), piece.where());
        }
        checkNames(piece);
        piece.marks(Notch.class).forEach(notch -> requireOnOutline(piece, notch, notch.at()));
        piece.marks(EdgeDart.class).forEach(dart -> checkDart(piece, dart));
        piece.marks(DoublePointedDart.class)
                .forEach(dart -> Stream.of(dart.firstTip(), dart.secondTip())
                        .forEach(tip -> requireInside(piece, polygon, dart, tip)));
        piece.marks(EdgeDart.class).forEach(dart -> requireInside(piece, polygon, dart, dart.tip()));
        return piece;
    }

    private static Message crossing(TopologyValidationError error) {
        Coordinate at = error.getCoordinate();
        return at == null
                ? Message.of("pattern.soundness.crosses-itself")
                : Message.of(
                        "pattern.soundness.crosses-itself-near",
                        Quantity.millimetres(at.x),
                        Quantity.millimetres(at.y));
    }

    /** Levels, darts and points are called by name, so a name may stand once for each kind; notches and lines may repeat. */
    private static void checkNames(Piece piece) {
        Set<String> names = new HashSet<>();
        piece.marks().stream()
                .filter(mark -> !(mark instanceof Notch || mark instanceof DrawnLine))
                .forEach(mark -> {
                    String kind =
                            mark instanceof Dart ? "dart" : mark.getClass().getSimpleName();
                    if (!names.add(kind + "/" + mark.name())) {
                        throw unsound(
                                Message.of("pattern.soundness.mark-name-twice", mark.name()),
                                piece.where().mark(mark.name()));
                    }
                });
    }

    private static void requireOnOutline(Piece piece, Mark mark, Point point) {
        double off = piece.nearest(point).point().distanceTo(point);
        if (off > Tolerance.JOINING) {
            Quantity away = Quantity.millimetres(off);
            Quantity most = Quantity.millimetres(Tolerance.JOINING);
            throw unsound(
                    mark instanceof Notch
                            ? Message.of("pattern.soundness.notch-off-outline", away, most)
                            : Message.of("pattern.soundness.leg-off-outline", away, most),
                    piece.where().mark(mark.name()));
        }
    }

    private static void checkDart(Piece piece, EdgeDart dart) {
        requireOnOutline(piece, dart, dart.mouthStart());
        requireOnOutline(piece, dart, dart.mouthEnd());
        boolean onOneEdge = piece.edges().stream().map(Edge::path).anyMatch(path -> SewnEdge.isOn(path, dart));
        if (!onOneEdge) {
            throw unsound(
                    Message.of("pattern.soundness.legs-on-two-edges"),
                    piece.where().mark(dart.name()));
        }
    }

    private static void requireInside(Piece piece, Polygon polygon, Dart dart, Point tip) {
        if (!polygon.intersects(polygon.getFactory().createPoint(new Coordinate(tip.x(), tip.y())))) {
            throw unsound(
                    Message.of("pattern.soundness.tip-outside"), piece.where().mark(dart.name()));
        }
    }

    private static Refusal unsound(Message why, Where where) {
        return new Refusal(new Reason.Unsound(why, where));
    }
}
