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
import java.util.List;
import java.util.Optional;

/**
 * The facing of one piece's share of an edge: the edge, cut off at its ends by what is taken out there; a seam, fold or opening at each end, along
 * the piece's own; and the outer edge.
 */
final class TracedFacing {
    static final String JOINED = "joined edge";
    static final String OUTER = "outer edge";

    /** Beside an opening the outer edge ends so many mm clear of it, so that no fastening catches it (common practice, no source). */
    static final double CLEAR = 6;

    private final JoinedEdge run;
    private final FacingShape shape;
    private final Part part;
    private final double atStart;
    private final double atEnd;

    /**
     * @param atStart how much in mm is taken out of the edge at the end where the run enters the piece
     * @param atEnd the same where it leaves
     */
    TracedFacing(JoinedEdge run, FacingShape shape, Part part, double atStart, double atEnd) {
        this.run = run;
        this.shape = shape;
        this.part = part;
        this.atStart = atStart;
        this.atEnd = atEnd;
    }

    Part part() {
        return part;
    }

    String name() {
        return part.piece().name() + " " + run.edge() + " facing";
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
        return part.path().part(atStart, part.path().length() - atEnd);
    }

    /** Where the outer edge ends. */
    private Position corner(boolean isStart, boolean isOpening) {
        Vector seam = isStart ? part.startSeam(run.edge()) : part.endSeam(run.edge());
        Path joined = joinedPath();
        Point from = isStart ? joined.start() : joined.end();
        if (isOpening) {
            Point corner = isStart ? part.path().start() : part.path().end();
            Vector along = isStart
                    ? part.path().startTangent()
                    : part.path().endTangent().negated();
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
        Point now = made.from(JOINED, end(part.startNeighbour())).start();
        Vector home = part.laid().inverse().of(joinedPath().start()).minus(now);
        return made.edge(OUTER).path().moved(Motion.shift(home).then(part.laid()));
    }

    /** The piece, as its own piece of the garment is drawn, either way round as that is. */
    Piece piece(List<Cutting> cuttings, boolean opensAtStart, boolean opensAtEnd) {
        Path joined = joinedPath();
        Path outer = outerPath(opensAtStart, opensAtEnd);
        Motion back = part.laid().inverse();
        List<Edge> edges = new ArrayList<>(List.of(
                new Edge(JOINED, Edge.Kind.SEAM, joined.moved(back)),
                new Edge(
                        end(part.endNeighbour()),
                        kind(part.endNeighbour()),
                        Path.through(joined.end(), outer.end()).moved(back)),
                new Edge(OUTER, Edge.Kind.SEAM, outer.reversed().moved(back)),
                new Edge(
                        end(part.startNeighbour()),
                        kind(part.startNeighbour()),
                        Path.through(outer.start(), joined.start()).moved(back))));
        if (!part.piece().before(run.edge()).name().equals(part.startNeighbour())) {
            Collections.reverse(edges);
            edges.replaceAll(Edge::reversed);
        }
        Path outline = edges.stream().map(Edge::path).reduce(Path::then).orElseThrow();
        List<Mark> marks = new ArrayList<>(notches(joined.moved(back)));
        marks.add(NewPiece.grain(outline, part.piece().grain().down()));
        return Piece.of(name(), part.piece().size(), part.piece().front(), cuttings, edges, marks);
    }

    private Edge.Kind kind(String neighbour) {
        return part.piece().edge(neighbour).kind() == Edge.Kind.FOLD ? Edge.Kind.FOLD : Edge.Kind.SEAM;
    }

    /** The edge's notches, where they stand. */
    private List<Notch> notches(Path joined) {
        return part.piece()
                .marks(Notch.class)
                .filter(notch -> joined.distanceTo(notch.at()) < Tolerance.JOINING)
                .toList();
    }

    Step step(String caption, Piece made) {
        return new Step(
                caption,
                part.piece(),
                made,
                List.of(part.piece().edge(run.edge()).path()),
                List.of(),
                List.of(),
                List.of(made.edge(OUTER).path()));
    }

    /** On the fold where the piece is. */
    List<Cutting> cuttings(Optional<String> cloth) {
        boolean onFold = kind(part.startNeighbour()) == Edge.Kind.FOLD || kind(part.endNeighbour()) == Edge.Kind.FOLD;
        Cutting.How how = onFold ? Cutting.How.ON_FOLD : Cutting.How.PAIR;
        return List.of(new Cutting(1, how, cloth), new Cutting(1, how, Optional.of("interfacing")));
    }
}
