package dev.hingepoint.pattern;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * One pattern piece in one size: its stitching line and everything drawn on it. Immutable, and sound since it was built: closed,
 * simple, its darts and notches where they belong.
 */
public final class Piece {
    private final String name;
    private final String size;
    private final Optional<String> front;
    private final List<Cutting> cuttings;
    private final List<Edge> edges;
    private final List<Mark> marks;

    /** Found when it is first asked for; the same whoever asks first. */
    private final AtomicReference<Grain> grain = new AtomicReference<>();

    private Piece(
            String name,
            String size,
            Optional<String> front,
            List<Cutting> cuttings,
            List<Edge> edges,
            List<Mark> marks) {
        this.name = name;
        this.size = size;
        this.front = front;
        this.cuttings = List.copyOf(cuttings);
        this.edges = List.copyOf(edges);
        this.marks = List.copyOf(marks);
    }

    /**
     * A piece from its edges, in order round it, either way, and its marks. Gaps up to {@link
     * Tolerance#JOINING} between neighbouring edges are closed, and the ends of levels are brought to the
     * outline.
     *
     * @param front the name of a second front, where this is one
     * @throws Refusal saying which edge or mark is unsound, and why
     */
    public static Piece of(
            String name,
            String size,
            Optional<String> front,
            List<Cutting> cuttings,
            List<Edge> edges,
            List<Mark> marks) {
        return new Piece(name, size, front, cuttings, edges, marks).checked(Tolerance.JOINING);
    }

    private Piece checked(double joining) {
        Piece closed = new Piece(name, size, front, cuttings, Soundness.closed(edges, joining, where()), marks);
        return Soundness.checked(closed, Soundness.marksOnOutline(closed));
    }

    /**
     * The same piece with other edges and marks, checked anew. Its edges must meet as computed points do, within {@link Tolerance#COINCIDENT}: paper that
     * was moved so that a gap opens is an error, never closed in silence.
     */
    public Piece with(List<Edge> changedEdges, List<Mark> changedMarks) {
        return new Piece(name, size, front, cuttings, changedEdges, changedMarks).checked(Tolerance.COINCIDENT);
    }

    /** The same piece with other marks, checked anew. */
    public Piece withMarks(List<Mark> changed) {
        return with(edges, changed);
    }

    /** The same piece with one mark more, in the place of any of that kind and name; of notches, of those on the same edge. */
    public Piece withMark(Mark mark) {
        return withMarks(Stream.concat(marks.stream().filter(old -> !isReplacedBy(old, mark)), Stream.of(mark))
                .toList());
    }

    private boolean isReplacedBy(Mark old, Mark mark) {
        return old.getClass() == mark.getClass()
                && old.name().equals(mark.name())
                && !(old instanceof Notch one && mark instanceof Notch other && !areOnOneEdge(one.at(), other.at()));
    }

    private boolean areOnOneEdge(Point one, Point other) {
        return nearest(one).edge().equals(nearest(other).edge());
    }

    /** The same piece with one mark rubbed out. */
    public Piece withoutMark(Mark mark) {
        return withMarks(marks.stream().filter(old -> !old.equals(mark)).toList());
    }

    public Piece withMarksChanged(UnaryOperator<Mark> change) {
        List<Mark> changed = marks.stream().map(change).toList();
        return changed.equals(marks) ? this : withMarks(changed);
    }

    /** The same paper under another name, cut otherwise. */
    public Piece named(String changed, List<Cutting> changedCuttings) {
        return of(changed, size, front, changedCuttings, edges, marks);
    }

    /** The same drawing in the books of another size. */
    public Piece inSize(String changed) {
        return of(name, changed, front, cuttings, edges, marks);
    }

    /** The whole piece, laid elsewhere by a rigid motion. */
    public Piece moved(Motion motion) {
        return with(
                edges.stream().map(edge -> edge.with(edge.path().moved(motion))).toList(),
                marks.stream().map(mark -> mark.moved(motion)).toList());
    }

    public String name() {
        return name;
    }

    public String size() {
        return size;
    }

    public Optional<String> front() {
        return front;
    }

    public List<Cutting> cuttings() {
        return cuttings;
    }

    public List<Edge> edges() {
        return edges;
    }

    public List<Mark> marks() {
        return marks;
    }

    public Where where() {
        return Where.inPiece(name).size(size);
    }

    /** Whether other is the same piece of the same size, however altered. */
    public boolean isSamePieceAs(Piece other) {
        return name.equals(other.name) && size.equals(other.size) && front.equals(other.front);
    }

    /** How often the paper's width goes round the body: cut from the main cloth, or, where it is not, from another outer one. */
    public int widths() {
        int main = cuttings.stream()
                .filter(Cutting::isMainCloth)
                .mapToInt(Cutting::widths)
                .sum();
        return main > 0
                ? main
                : cuttings.stream()
                        .filter(cutting -> !cutting.isInside())
                        .mapToInt(Cutting::widths)
                        .max()
                        .orElse(0);
    }

    public boolean hasEdge(String edge) {
        return edges.stream().anyMatch(e -> e.name().equals(edge));
    }

    public boolean hasLevel(String level) {
        return marks(Level.class).anyMatch(mark -> mark.name().equals(level));
    }

    /** @throws Refusal where the piece has no such edge */
    public Edge edge(String edge) {
        return edges.get(indexOf(edge));
    }

    private int indexOf(String edge) {
        for (int i = 0; i < edges.size(); i++) {
            if (edges.get(i).name().equals(edge)) {
                return i;
            }
        }
        throw missing(
                Message.of("pattern.piece.no-such-edge", edge), edges.stream().map(Edge::name));
    }

    /** The neighbour that {@code edge} meets at the start of its path. */
    public Edge before(String edge) {
        return edges.get((indexOf(edge) + edges.size() - 1) % edges.size());
    }

    /** The neighbour that {@code edge} meets at the end of its path. */
    public Edge after(String edge) {
        return edges.get((indexOf(edge) + 1) % edges.size());
    }

    /**
     * The path of {@code edge} from the end where it meets {@code neighbour}.
     *
     * @throws Refusal where the two do not meet
     */
    public Path from(String edge, String neighbour) {
        Path drawn = edge(edge).path();
        if (before(edge).name().equals(neighbour)) {
            return drawn;
        }
        if (after(edge).name().equals(neighbour)) {
            return drawn.reversed();
        }
        throw new Refusal(
                new Reason.Missing(Message.of("pattern.piece.edges-do-not-meet", edge, neighbour), where().edge(edge)));
    }

    /** The path of {@code edge} from its upper end, as the grain runs, to its lower one. */
    public Path downwards(String edge) {
        Path drawn = edge(edge).path();
        return drawn.end().minus(drawn.start()).dot(grain().down()) >= 0 ? drawn : drawn.reversed();
    }

    /** The neighbour that {@code edge} meets at its lower end, as the grain runs: a side seam's hem. */
    public Edge below(String edge) {
        return downwards(edge) == edge(edge).path() ? after(edge) : before(edge);
    }

    /** The closed stitching line, as drawn. */
    public Path outline() {
        return Path.of(
                edges.stream().flatMap(edge -> edge.path().segments().stream()).toList());
    }

    /** The area within the stitching line, darts open, in mm2: exact. */
    public double area() {
        return Math.abs(Soundness.signedArea(outline()));
    }

    /** Whether the stitching line runs clockwise as one looks at the paper. */
    public boolean isClockwise() {
        return Soundness.signedArea(outline()) > 0;
    }

    /** Whether a point lies on the paper within the stitching line. */
    public boolean holds(Point point) {
        return JtsBridge.holds(this, point);
    }

    /** Square to the stitching line, into the paper, where the line runs along {@code run} as it is drawn. */
    public Vector inwards(Vector run) {
        return isClockwise() ? run.right() : run.left();
    }

    /** The edge on the body's centre line: centre front or centre back, else a fold; empty for a sleeve. */
    public Optional<Edge> centre() {
        return edges.stream()
                .filter(e -> e.name().equals("centre front") || e.name().equals("centre back"))
                .findFirst()
                .or(() -> edges.stream().filter(e -> e.kind() == Edge.Kind.FOLD).findFirst());
    }

    public <M extends Mark> Stream<M> marks(Class<M> kind) {
        return marks.stream().filter(kind::isInstance).map(kind::cast);
    }

    /** The mark of that kind and name, where there is one. */
    public <M extends Mark> Optional<M> find(Class<M> kind, String mark) {
        return marks(kind).filter(m -> m.name().equals(mark)).findFirst();
    }

    /** @throws Refusal where the piece has no such level */
    public LevelFrame levelFrame(String level) {
        return LevelFrame.of(
                this,
                find(Level.class, level)
                        .orElseThrow(() -> missing(
                                Message.of("pattern.piece.no-such-level", level),
                                marks(Level.class).map(Mark::name))));
    }

    /** @throws Refusal where no such point is marked */
    public Point point(String point) {
        return find(MarkedPoint.class, point)
                .orElseThrow(() -> missing(
                        Message.of("pattern.piece.no-such-point", point),
                        marks(MarkedPoint.class).map(Mark::name)))
                .at();
    }

    /** The grainline, from its upper end on the body to its lower; where none is drawn, what common practice takes for it: straight down. */
    public Grain grain() {
        Grain known = grain.get();
        if (known == null) {
            known = Grain.of(this);
            grain.set(known);
        }
        return known;
    }

    /** The edge as it is sewn, from its drawn start: darts closed. */
    public SewnEdge sewn(String edge) {
        return SewnEdge.of(this, edge(edge));
    }

    /** The sewn length of an edge in mm: darts closed. */
    public double sewnLength(String edge) {
        return sewn(edge).length();
    }

    /** The width at a level in mm: along the level's own line, dart intake and parts along the grain left out. */
    public double width(String level) {
        return levelFrame(level).width();
    }

    /** The place of the stitching line nearest to a point. */
    public Spot nearest(Point point) {
        // the edge whose hull is nearest first: it leaves few others that could come nearer
        List<Edge> byHull = edges.stream()
                .sorted(Comparator.comparingDouble(edge -> edge.path().hull().distanceTo(point)))
                .toList();
        Spot best = null;
        double bestDistance = Double.POSITIVE_INFINITY;
        for (Edge edge : byHull) {
            if (edge.path().hull().distanceTo(point) >= bestDistance) {
                break;
            }
            Spot spot = nearest(edge, point);
            double distance = spot.point().distanceTo(point);
            if (distance < bestDistance) {
                best = spot;
                bestDistance = distance;
            }
        }
        return best;
    }

    /** The place of one edge nearest to a point. */
    public Spot nearest(Edge edge, Point point) {
        var position = edge.path().nearest(point);
        return new Spot(edge.name(), position, edge.path().at(position));
    }

    private Refusal missing(Message why, Stream<String> drawn) {
        List<String> names = drawn.toList();
        Message there = names.isEmpty() ? Message.of("pattern.piece.has-none") : Message.of("pattern.piece.has", names);
        return new Refusal(new Reason.Missing(Message.of("pattern.piece.missing", why, there), where()));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Piece piece
                && isSamePieceAs(piece)
                && cuttings.equals(piece.cuttings)
                && edges.equals(piece.edges)
                && marks.equals(piece.marks);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + edges.hashCode();
    }

    @Override
    public String toString() {
        return "piece " + name + ", size " + size;
    }
}
