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
                .orElseThrow(() -> refuse("the piece " + group.id() + " has no name in data-piece", unknown));
        this.size =
                group.words("data-size").orElseThrow(() -> refuse("the piece has no data-size", unknown.piece(name)));
        this.where = unknown.piece(name).size(size);
    }

    Piece piece() {
        String cut = group.words("data-cut")
                .orElseThrow(() -> refuse(
                        "data-cut must say how often the piece is cut, for example 1 on fold, or 1 pair", where));
        try {
            return Piece.of(name, size, group.words("data-front"), CuttingText.parse(cut), edges, marks);
        } catch (IllegalArgumentException wrong) {
            throw refuse(wrong.getMessage(), where);
        }
    }

    void add(Element element, Motion toMillimetres) {
        if (element.has("data-edge") && element.has("data-mark")) {
            throw refuse("the element " + element.id() + " cannot be an edge and a mark", where);
        }
        Where at = where.mark(element.id());
        try {
            if (element.has("data-edge")) {
                edges.add(edge(element, toMillimetres));
            } else {
                marks.add(mark(element, toMillimetres));
            }
        } catch (IllegalArgumentException wrong) {
            throw new Refusal(new Reason.Unreadable(Message.of(wrong.getMessage()), at), wrong);
        }
    }

    private Edge edge(Element element, Motion motion) {
        String edge =
                element.words("data-edge").orElseThrow(() -> new IllegalArgumentException("an edge needs a name"));
        Edge.Kind kind = switch (element.words("data-kind").orElse("seam")) {
            case "seam" -> Edge.Kind.SEAM;
            case "fold" -> Edge.Kind.FOLD;
            case "hem" -> Edge.Kind.HEM;
            case "bound" -> Edge.Kind.BOUND;
            default ->
                throw new IllegalArgumentException("data-kind must be seam, fold, hem or bound, not "
                        + element.words("data-kind").get());
        };
        PathData.Subpath subpath = subpath(element);
        if (subpath.isClosed()) {
            throw new IllegalArgumentException("the edge " + edge + " must be an open path");
        }
        Path path = moved(subpath.path(), motion);
        Box hull = path.hull();
        if (Math.max(hull.width(), hull.height()) > LARGEST) {
            throw new IllegalArgumentException("the edge " + edge + " is "
                    + Math.round(Math.max(hull.width(), hull.height()) / 1000)
                    + " m long, and a piece is at most 20 m; is the drawing's scale right?");
        }
        return new Edge(edge, kind, path);
    }

    private Mark mark(Element element, Motion motion) {
        String kind = element.words("data-mark").orElse("");
        if (!KINDS.contains(kind)) {
            throw new IllegalArgumentException(
                    "data-mark must be " + String.join(", ", KINDS) + ", not '" + kind + "'");
        }
        String mark = element.words("data-name").orElse("");
        if (mark.isEmpty() && !kind.equals("grain")) {
            throw new IllegalArgumentException("the mark needs a data-name");
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
                throw new IllegalArgumentException("a double-pointed dart needs a tip, a leg, a tip and a leg");
            }
            return DoublePointedDart.of(name, path);
        }
        List<Segment> segments = path.segments();
        if (segments.size() < 2) {
            throw new IllegalArgumentException("a dart needs a leg, a tip and a leg");
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
            throw new IllegalArgumentException("data-count must be a number from 1 to 9, not " + count);
        }
        return Integer.parseInt(count);
    }

    private static MarkedPoint point(String name, Element element, Motion motion) {
        if (!element.name().equals("circle")) {
            throw new IllegalArgumentException("a point is drawn as a circle, not as " + element.name());
        }
        Point at = new Point(number(element, "cx", 0), number(element, "cy", 0));
        return new MarkedPoint(name, motion.of(at), number(element, "r", POINT_RADIUS));
    }

    private static double number(Element element, String attribute, double otherwise) {
        String text = element.words(attribute).orElse(Double.toString(otherwise));
        if (!text.matches("[-+]?[0-9]*\\.?[0-9]+([eE][-+]?[0-9]+)?") || Math.abs(Double.parseDouble(text)) > 1e7) {
            throw new IllegalArgumentException(attribute + " must be a number, not '" + text + "'");
        }
        return Double.parseDouble(text);
    }

    private static Path open(Element element, Motion motion) {
        PathData.Subpath subpath = subpath(element);
        if (subpath.isClosed()) {
            throw new IllegalArgumentException("it must be an open line");
        }
        return moved(subpath.path(), motion);
    }

    private static Line straight(Element element, Motion motion) {
        Path path = open(element, motion);
        if (path.segments().size() == 1 && path.segments().get(0) instanceof Line line) {
            return line;
        }
        throw new IllegalArgumentException("it must be one straight line, M and L");
    }

    private static PathData.Subpath subpath(Element element) {
        if (!element.name().equals("path")) {
            throw new IllegalArgumentException("it is drawn as a path, not as " + element.name());
        }
        List<PathData.Subpath> subpaths =
                PathData.parse(element.attribute("d").orElseThrow(() -> new IllegalArgumentException("it has no d")));
        if (subpaths.size() != 1) {
            throw new IllegalArgumentException("it must be one line, and has " + subpaths.size());
        }
        return subpaths.get(0);
    }

    private static Path moved(Path path, Motion motion) {
        try {
            return motion.equals(Motion.STAY) ? path : path.moved(motion);
        } catch (IllegalArgumentException wrong) {
            throw new IllegalArgumentException("its transform leaves nothing of it that could be drawn", wrong);
        }
    }

    private static Refusal refuse(String what, Where where) {
        return new Refusal(new Reason.Unreadable(Message.of(what), where));
    }
}
