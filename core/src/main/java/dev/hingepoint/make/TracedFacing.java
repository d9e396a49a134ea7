package dev.hingepoint.make;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.make.JoinedEdge.Part;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The facing of one piece's share of an edge, or of both parts of a divided piece: the edge, cut off at its ends by what is taken out there; a seam, fold or opening at each end, along
 * the piece's own; and the outer edge.
 */
final class TracedFacing {
    static final String JOINED = "joined edge";
    static final String OUTER = "outer edge";

    /** Beside an opening the outer edge ends so many mm clear of it, so that no fastening catches it (common practice, no source). */
    static final double CLEAR = 6;

    private final JoinedEdge run;
    private final FacingShape shape;
    private final List<Part> parts;
    private final double atStart;
    private final double atEnd;

    /**
     * @param atStart how much in mm is taken out of the edge at the end where the run enters the piece
     * @param atEnd the same where it leaves
     */
    TracedFacing(JoinedEdge run, FacingShape shape, List<Part> parts, double atStart, double atEnd) {
        this.run = run;
        this.shape = shape;
        this.parts = List.copyOf(parts);
        this.atStart = atStart;
        this.atEnd = atEnd;
    }

    /** The part that it is named and laid after: of a divided piece the one that kept its name. */
    private Part base() {
        return parts.stream()
                .min(Comparator.comparingInt(part -> part.piece().name().length()))
                .orElseThrow();
    }

    private Part first() {
        return parts.get(0);
    }

    private Part last() {
        return parts.get(parts.size() - 1);
    }

    String startNeighbour() {
        return first().startNeighbour();
    }

    String endNeighbour() {
        return last().endNeighbour();
    }

    /** How much in mm it is shorter than its share of the edge. */
    double shorter() {
        return atStart + atEnd;
    }

    /** The piece that it is traced from. */
    String laidOn() {
        return base().piece().name();
    }

    /** The edge of the garment's pieces beside an end. */
    EdgeRef besideStart() {
        return new EdgeRef(first().piece().name(), startNeighbour());
    }

    EdgeRef besideEnd() {
        return new EdgeRef(last().piece().name(), endNeighbour());
    }

    /** The share of the edge that it is sewn to. */
    List<EdgeRef> edges() {
        return parts.stream()
                .map(part -> new EdgeRef(part.piece().name(), run.edge()))
                .toList();
    }

    String name() {
        return base().piece().name() + " " + run.edge() + " facing";
    }

    private Path path() {
        return parts.stream().map(Part::path).reduce(Path::then).orElseThrow();
    }

    static String end(String neighbour) {
        return neighbour + " end";
    }

    EdgeRef joined() {
        return new EdgeRef(name(), JOINED);
    }

    EdgeRef outer() {
        return new EdgeRef(name(), OUTER);
    }

    EdgeRef endAt(String neighbour) {
        return new EdgeRef(name(), end(neighbour));
    }

    private Path joinedPath() {
        Path path = path();
        return path.part(atStart, path.length() - atEnd);
    }

    /** Where the outer edge ends. */
    private Position corner(boolean isStart, boolean isOpening) {
        Vector seam = isStart ? first().startSeam(run.edge()) : last().endSeam(run.edge());
        Path joined = joinedPath();
        Point from = isStart ? joined.start() : joined.end();
        if (isOpening) {
            Point corner = isStart ? path().start() : path().end();
            Vector along = isStart ? path().startTangent() : path().endTangent().negated();
            Vector inwards = seam.left().dot(along) > 0 ? seam.left() : seam.right();
            from = corner.plus(inwards.times(CLEAR));
        }
        return shape.met(from, seam);
    }

    /** The outer edge as the pieces lie together. */
    Path outerPath(boolean opensAtStart, boolean opensAtEnd) {
        return shape.outer(corner(true, opensAtStart), corner(false, opensAtEnd));
    }

    /** The outer edge of the made piece, wherever that lies on the table, laid back onto the pieces. */
    Path outerOf(Piece made) {
        Point now = made.from(JOINED, end(startNeighbour())).start();
        Motion laid = base().laid();
        Vector home = laid.inverse().of(joinedPath().start()).minus(now);
        return made.edge(OUTER).path().moved(Motion.shift(home).then(laid));
    }

    /** The piece, as its own piece of the garment is drawn, either way round as that is. */
    Piece piece(List<Cutting> cuttings, boolean opensAtStart, boolean opensAtEnd) {
        Path joined = joinedPath();
        Path outer = outerPath(opensAtStart, opensAtEnd);
        Motion back = base().laid().inverse();
        List<Edge> edges = new ArrayList<>(List.of(
                new Edge(JOINED, Edge.Kind.SEAM, joined.moved(back)),
                new Edge(
                        end(endNeighbour()),
                        kind(besideEnd()),
                        Path.through(joined.end(), outer.end()).moved(back)),
                new Edge(OUTER, Edge.Kind.SEAM, outer.reversed().moved(back)),
                new Edge(
                        end(startNeighbour()),
                        kind(besideStart()),
                        Path.through(outer.start(), joined.start()).moved(back))));
        Part base = base();
        if (!base.piece().before(run.edge()).name().equals(base.startNeighbour())) {
            Collections.reverse(edges);
            edges.replaceAll(Edge::reversed);
        }
        Path outline = edges.stream().map(Edge::path).reduce(Path::then).orElseThrow();
        List<Mark> marks = new ArrayList<>(notches(joined, back));
        marks.add(NewPiece.grain(outline, base.piece().grain().down()));
        return Piece.of(name(), base.piece().size(), base.piece().front(), cuttings, edges, marks);
    }

    private Edge.Kind kind(EdgeRef beside) {
        Piece piece = (beside.equals(besideStart()) ? first() : last()).piece();
        return piece.edge(beside.edge()).kind() == Edge.Kind.FOLD ? Edge.Kind.FOLD : Edge.Kind.SEAM;
    }

    /** The edge's notches, where they stand. */
    private List<Notch> notches(Path joined, Motion back) {
        return parts.stream()
                .flatMap(part -> part.piece().marks(Notch.class).map(notch -> notch.moved(part.laid())))
                .filter(notch -> joined.distanceTo(notch.at()) < Tolerance.JOINING)
                .map(notch -> notch.moved(back))
                .toList();
    }

    Step step(String caption, Piece made) {
        return new Step(
                caption,
                base().piece(),
                made,
                List.of(base().piece().edge(run.edge()).path()),
                List.of(),
                List.of(),
                List.of(made.edge(OUTER).path()));
    }

    /** On the fold where the piece is. */
    List<Cutting> cuttings(Optional<String> cloth) {
        boolean onFold = kind(besideStart()) == Edge.Kind.FOLD || kind(besideEnd()) == Edge.Kind.FOLD;
        Cutting.How how = onFold ? Cutting.How.ON_FOLD : Cutting.How.PAIR;
        return List.of(new Cutting(1, how, cloth), new Cutting(1, how, Optional.of("interfacing")));
    }
}
