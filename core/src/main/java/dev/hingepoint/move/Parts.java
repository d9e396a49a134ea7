package dev.hingepoint.move;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What lines across a piece part it into: a planar graph whose arcs are stretches of the outline and both sides of each slash, and
 * whose faces are the parts. The outline is walked clockwise as one looks at the paper, so that paper lies to the right.
 */
final class Parts {
    /** A stretch of one edge between two cut points. */
    record Stretch(String edge, Path path) {}

    /** The outline between two neighbouring cut points: stretches of one or more edges. */
    record Arc(List<Stretch> stretches, Point from, Point to) {}

    /** One part: its boundary in order, and which outline arcs belong to it. */
    record Face(Path boundary, Set<Integer> arcs) {}

    private record HalfEdge(Path path, int arc) {
        boolean isOutline() {
            return arc >= 0;
        }

        boolean isReverseOf(HalfEdge other) {
            return !isOutline() && !other.isOutline() && path.equals(other.path.reversed());
        }
    }

    private record Node(int edge, Position position, Point point) {}

    private final List<Edge> clockwise;
    private final List<Path> slashes;
    private final List<Arc> arcs;
    private final List<Face> faces;

    private Parts(List<Edge> clockwise, List<Path> slashes, List<Arc> arcs, List<Face> faces) {
        this.clockwise = clockwise;
        this.slashes = slashes;
        this.arcs = arcs;
        this.faces = faces;
    }

    static List<Edge> clockwise(Piece piece) {
        return piece.isClockwise() ? piece.edges() : reversed(piece.edges());
    }

    static List<Edge> reversed(List<Edge> edges) {
        List<Edge> reversed = new ArrayList<>();
        for (int i = edges.size() - 1; i >= 0; i--) {
            reversed.add(edges.get(i).reversed());
        }
        return reversed;
    }

    /**
     * @param lines each from outline to outline, or to a point that it shares with other lines
     */
    static Parts of(Piece piece, List<Path> lines) {
        List<Edge> edges = clockwise(piece);
        List<Node> nodes = new ArrayList<>();
        List<Path> slashes = new ArrayList<>();
        for (Path line : lines) {
            Path started = line.withStart(nodeAt(edges, line.start(), nodes));
            slashes.add(started.withEnd(nodeAt(edges, line.end(), nodes)));
        }
        nodes.sort(Comparator.comparingInt(Node::edge).thenComparing(Node::position));
        List<Arc> arcs = arcs(edges, nodes);
        List<Path> split = splitAtEachOther(slashes);
        return new Parts(edges, split, arcs, faces(arcs, split));
    }

    /** The exact point of the outline nearest to a slash's end, noted as a node; a point inside the piece is left as it is. */
    private static Point nodeAt(List<Edge> edges, Point point, List<Node> nodes) {
        for (Node node : nodes) {
            if (node.point().isCloseTo(point, Tolerance.COINCIDENT)) {
                return node.point();
            }
        }
        for (int i = 0; i < edges.size(); i++) {
            Path path = edges.get(i).path();
            Position position = path.nearest(point);
            Point on = path.at(position);
            if (on.isCloseTo(point, Tolerance.COINCIDENT)) {
                nodes.add(new Node(i, position, on));
                return on;
            }
        }
        return point;
    }

    private static List<Arc> arcs(List<Edge> edges, List<Node> nodes) {
        if (nodes.isEmpty()) {
            throw new IllegalArgumentException("a cut must reach the outline");
        }
        List<Arc> arcs = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            Node from = nodes.get(i);
            Node to = nodes.get((i + 1) % nodes.size());
            arcs.add(new Arc(stretches(edges, from, to, i + 1 == nodes.size()), from.point(), to.point()));
        }
        return arcs;
    }

    private static List<Stretch> stretches(List<Edge> edges, Node from, Node to, boolean wraps) {
        List<Stretch> stretches = new ArrayList<>();
        int last = to.edge() + (wraps ? edges.size() : 0);
        for (int i = from.edge(); i <= last; i++) {
            Edge edge = edges.get(i % edges.size());
            Path path = edge.path();
            Position start = i == from.edge() ? from.position() : path.startPosition();
            Position end = i == last ? to.position() : path.endPosition();
            if (!path.at(start).isCloseTo(path.at(end), Tolerance.COINCIDENT)
                    || path.distanceAlong(end) - path.distanceAlong(start) > Tolerance.COINCIDENT) {
                stretches.add(new Stretch(edge.name(), path.part(start, end)));
            }
        }
        return stretches;
    }

    /** The slashes parted where another one begins or ends on them. */
    private static List<Path> splitAtEachOther(List<Path> slashes) {
        List<Path> split = new ArrayList<>();
        for (Path slash : slashes) {
            List<Position> joints = slashes.stream()
                    .flatMap(other -> Stream.of(other.start(), other.end()))
                    .filter(point -> !point.isCloseTo(slash.start(), Tolerance.COINCIDENT)
                            && !point.isCloseTo(slash.end(), Tolerance.COINCIDENT))
                    .filter(point -> slash.distanceTo(point) <= Tolerance.COINCIDENT)
                    .map(slash::nearest)
                    .sorted()
                    .distinct()
                    .toList();
            Position from = slash.startPosition();
            for (Position joint : joints) {
                split.add(slash.part(from, joint));
                from = joint;
            }
            split.add(slash.part(from, slash.endPosition()));
        }
        return split;
    }

    private static List<Face> faces(List<Arc> arcs, List<Path> slashes) {
        List<HalfEdge> halfEdges = new ArrayList<>();
        for (int i = 0; i < arcs.size(); i++) {
            halfEdges.add(new HalfEdge(whole(arcs.get(i)), i));
        }
        for (Path slash : slashes) {
            halfEdges.add(new HalfEdge(slash, -1));
            halfEdges.add(new HalfEdge(slash.reversed(), -1));
        }
        Set<HalfEdge> walked = new HashSet<>();
        List<Face> faces = new ArrayList<>();
        for (HalfEdge start : halfEdges) {
            if (!walked.contains(start)) {
                faces.add(walk(start, halfEdges, walked));
            }
        }
        return faces;
    }

    static Path whole(Arc arc) {
        return arc.stretches().stream().map(Stretch::path).reduce(Path::then).orElseThrow();
    }

    /** Round one part, keeping it to the right: at every node the sharpest turn to the right. */
    private static Face walk(HalfEdge start, List<HalfEdge> halfEdges, Set<HalfEdge> walked) {
        Path boundary = null;
        Set<Integer> arcs = new HashSet<>();
        HalfEdge at = start;
        do {
            if (!walked.add(at)) {
                throw new IllegalArgumentException("the slashes do not part the piece: they cross without meeting");
            }
            boundary = boundary == null ? at.path() : boundary.then(at.path());
            if (at.isOutline()) {
                arcs.add(at.arc());
            }
            at = next(at, halfEdges);
        } while (at != start);
        return new Face(boundary, arcs);
    }

    private static HalfEdge next(HalfEdge arriving, List<HalfEdge> halfEdges) {
        Point node = arriving.path().end();
        Vector direction = arriving.path().endTangent();
        return halfEdges.stream()
                .filter(leaving -> leaving.path().start().isCloseTo(node, Tolerance.COINCIDENT))
                .max(Comparator.comparingDouble(leaving -> leaving.isReverseOf(arriving)
                        ? -4
                        : direction.angleTo(leaving.path().startTangent())))
                .orElseThrow();
    }

    List<Edge> clockwiseEdges() {
        return clockwise;
    }

    List<Path> slashes() {
        return slashes;
    }

    List<Arc> arcs() {
        return arcs;
    }

    List<Face> faces() {
        return faces;
    }

    Face faceOfArc(int arc) {
        return faces.stream()
                .filter(face -> face.arcs().contains(arc))
                .findFirst()
                .orElseThrow();
    }

    /** The part whose outline holds a place. */
    Face holding(Spot spot) {
        for (int i = 0; i < arcs.size(); i++) {
            for (Stretch stretch : arcs.get(i).stretches()) {
                if (stretch.edge().equals(spot.edge())
                        && stretch.path().distanceTo(spot.point()) <= Tolerance.COINCIDENT) {
                    return faceOfArc(i);
                }
            }
        }
        throw new IllegalArgumentException("no part holds " + spot);
    }
}
