package dev.hingepoint.svg.file;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.DoublePointedDart;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Gathers one piece of a drawing, edge by edge and mark by mark, in millimetres. */
final class PieceReader {
    /** No piece of cloth is longer than this in mm; a drawing that is has its unit wrong. */
    private static final double LARGEST = 20_000;

    private static final double POINT_RADIUS = 3;
    private static final List<String> KINDS = List.of("level", "grain", "dart", "notch", "line", "point");

    private final Element group;
    private final String name;
    private final String size;
    private final Where where;
    private final List<Edge> edges = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();

    PieceReader(String file, Element group) {
        this.group = group;
        Where unknown = Where.inFile(file);
        this.name = group.words("data-piece")
                .orElseThrow(() -> unreadable(Message.of("file.piece.no-name", group.id()), unknown));
        this.size = group.words("data-size")
                .orElseThrow(() -> unreadable(Message.of("file.piece.no-size"), unknown.piece(name)));
        this.where = unknown.piece(name).size(size);
    }

    Piece piece() {
        String cut = group.words("data-cut").orElseThrow(() -> unreadable(Message.of("file.piece.no-cut"), where));
        try {
            return Piece.of(name, size, group.words("data-front"), CuttingText.parse(cut), edges, marks);
        } catch (IllegalArgumentException wrong) {
            throw unreadable(Illegible.why(wrong), where);
        }
    }

    void add(Element element, Motion toMillimetres) {
        if (element.has("data-edge") && element.has("data-mark")) {
            throw unreadable(Message.of("file.piece.edge-and-mark", element.id()), where);
        }
        Where at = where.mark(element.id());
        try {
            if (element.has("data-edge")) {
                edges.add(edge(element, toMillimetres));
            } else {
                marks.add(mark(element, toMillimetres));
            }
        } catch (IllegalArgumentException wrong) {
            throw new Refusal(new Reason.Unreadable(Illegible.why(wrong), at), wrong);
        }
    }

    private Edge edge(Element element, Motion motion) {
        String edge = element.words("data-edge").orElseThrow(() -> new Illegible(Message.of("file.edge.no-name")));
        Edge.Kind kind = switch (element.words("data-kind").orElse("seam")) {
            case "seam" -> Edge.Kind.SEAM;
            case "fold" -> Edge.Kind.FOLD;
            case "hem" -> Edge.Kind.HEM;
            case "bound" -> Edge.Kind.BOUND;
            default ->
                throw new Illegible(Message.of(
                        "file.edge.no-such-kind", element.words("data-kind").get()));
        };
        PathData.Subpath subpath = subpath(element);
        if (subpath.isClosed()) {
            throw new Illegible(Message.of("file.edge.closed", edge));
        }
        Path path = moved(subpath.path(), motion);
        Box hull = path.hull();
        if (Math.max(hull.width(), hull.height()) > LARGEST) {
            throw new Illegible(
                    Message.of("file.edge.too-long", edge, Math.round(Math.max(hull.width(), hull.height()) / 1000)));
        }
        return new Edge(edge, kind, path);
    }

    private Mark mark(Element element, Motion motion) {
        String kind = element.words("data-mark").orElse("");
        if (!KINDS.contains(kind)) {
            throw new Illegible(Message.of("file.mark.no-such-kind", KINDS, kind));
        }
        String mark = element.words("data-name").orElse("");
        if (mark.isEmpty() && !kind.equals("grain")) {
            throw new Illegible(Message.of("file.mark.no-name"));
        }
        return switch (kind) {
            case "level" -> new Level(mark, open(element, motion));
            case "grain" -> new Grain(straight(element, motion));
            case "dart" -> dart(mark, subpath(element), motion);
            case "notch" -> new Notch(mark, count(element), straight(element, motion));
            case "line" -> new DrawnLine(mark, moved(subpath(element).path(), motion));
            default -> point(mark, element, motion);
        };
    }

    private static Mark dart(String name, PathData.Subpath subpath, Motion motion) {
        Path path = moved(subpath.path(), motion);
        if (subpath.isClosed() || path.start().equals(path.end())) {
            if (path.segments().size() < 4) {
                throw new Illegible(Message.of("file.mark.double-pointed-dart"));
            }
            return DoublePointedDart.of(name, path);
        }
        List<Segment> segments = path.segments();
        if (segments.size() < 2) {
            throw new Illegible(Message.of("file.mark.dart"));
        }
        // the tip is the joint farthest from the mouth
        Vector mouth = path.end().minus(path.start()).unit();
        int tip = IntStream.range(1, segments.size())
                .boxed()
                .max(Comparator.comparingDouble(
                        i -> Math.abs(mouth.cross(segments.get(i).start().minus(path.start())))))
                .orElseThrow();
        return new EdgeDart(name, Path.of(segments.subList(0, tip)), Path.of(segments.subList(tip, segments.size())));
    }

    private static int count(Element element) {
        String count = element.words("data-count").orElse("1");
        if (!count.matches("[1-9]")) {
            throw new Illegible(Message.of("file.mark.count", count));
        }
        return Integer.parseInt(count);
    }

    private static MarkedPoint point(String name, Element element, Motion motion) {
        if (!element.name().equals("circle")) {
            throw new Illegible(Message.of("file.mark.no-circle", element.name()));
        }
        Point at = new Point(number(element, "cx", 0), number(element, "cy", 0));
        return new MarkedPoint(name, motion.of(at), number(element, "r", POINT_RADIUS));
    }

    private static double number(Element element, String attribute, double otherwise) {
        String text = element.words(attribute).orElse(Double.toString(otherwise));
        if (!text.matches("[-+]?[0-9]*\\.?[0-9]+([eE][-+]?[0-9]+)?") || Math.abs(Double.parseDouble(text)) > 1e7) {
            throw new Illegible(Message.of("file.mark.no-number", attribute, text));
        }
        return Double.parseDouble(text);
    }

    private static Path open(Element element, Motion motion) {
        PathData.Subpath subpath = subpath(element);
        if (subpath.isClosed()) {
            throw new Illegible(Message.of("file.mark.closed"));
        }
        return moved(subpath.path(), motion);
    }

    private static Line straight(Element element, Motion motion) {
        Path path = open(element, motion);
        if (path.segments().size() == 1 && path.segments().get(0) instanceof Line line) {
            return line;
        }
        throw new Illegible(Message.of("file.mark.not-straight"));
    }

    private static PathData.Subpath subpath(Element element) {
        if (!element.name().equals("path")) {
            throw new Illegible(Message.of("file.drawing.no-path", element.name()));
        }
        List<PathData.Subpath> subpaths = PathData.parse(
                element.attribute("d").orElseThrow(() -> new Illegible(Message.of("file.drawing.no-data"))));
        if (subpaths.size() != 1) {
            throw new Illegible(Message.of("file.drawing.several-lines", subpaths.size()));
        }
        return subpaths.get(0);
    }

    private static Path moved(Path path, Motion motion) {
        try {
            return motion.equals(Motion.STAY) ? path : path.moved(motion);
        } catch (IllegalArgumentException wrong) {
            throw new Illegible(Message.of("file.drawing.vanishes"), wrong);
        }
    }

    private static Refusal unreadable(Message why, Where where) {
        return new Refusal(new Reason.Unreadable(why, where));
    }
}
