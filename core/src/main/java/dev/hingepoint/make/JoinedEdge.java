package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * An edge that runs on over the pieces that are sewn together beside it: a neckline over front and back, an armhole, a hem. The pieces are laid together
 * at those seams, as one does with shoulder seams before tracing a facing: each lies flat, on the other side of the seam from the one before.
 */
final class JoinedEdge {
    /** Where a run that closes on itself is taken to begin: where one would sew it together last. */
    private static final List<String> LAST_SEWN =
            List.of(Names.SIDE_SEAM, "underarm seam", "back underarm seam", "front underarm seam");

    /**
     * One piece's share.
     *
     * @param startNeighbour the edge of the piece at which the run enters
     * @param endNeighbour the edge at which it leaves
     * @param laid from the piece as drawn to where it lies
     * @param path of the edge, as the piece lies, in the direction of the run
     */
    record Part(Piece piece, String startNeighbour, String endNeighbour, Motion laid, Path path) {
        /** Which way the seam at an end of the run leaves it, as the piece lies. */
        Vector endSeam(String edge) {
            return laid.of(piece.from(endNeighbour, edge).startTangent());
        }

        Vector startSeam(String edge) {
            return laid.of(piece.from(startNeighbour, edge).startTangent());
        }
    }

    private final String title;
    private final String edge;
    private final List<Part> parts;
    private final boolean closed;

    private JoinedEdge(String title, String edge, List<Part> parts, boolean closed) {
        this.title = title;
        this.edge = edge;
        this.parts = List.copyOf(parts);
        this.closed = closed;
    }

    /**
     * @param named an edge's name where only one run has it, else {@code piece/edge}: that piece's
     * @throws Refusal where no piece has it, or several runs do
     */
    static JoinedEdge of(Draft draft, String named) {
        Optional<EdgeRef> ref = named.contains("/") ? Optional.of(EdgeRef.parse(named)) : Optional.empty();
        String edge = ref.map(EdgeRef::edge).orElse(named);
        List<Piece> left = new ArrayList<>(draft.piecesWithEdges(edge));
        if (left.isEmpty()) {
            throw new Refusal(new Reason.Missing(Message.of("make.no-such-edge", edge), Where.UNKNOWN));
        }
        List<JoinedEdge> runs = new ArrayList<>();
        while (!left.isEmpty()) {
            JoinedEdge run = through(draft, edge, left.get(0));
            left.removeAll(run.parts.stream().map(Part::piece).toList());
            runs.add(run);
        }
        List<JoinedEdge> meant = runs.stream()
                .filter(run -> ref.isEmpty() || run.holds(ref.get().piece()))
                .toList();
        if (meant.size() != 1) {
            List<String> all = runs.stream()
                    .map(run -> run.parts.get(0).piece().name() + "/" + edge)
                    .toList();
            throw new Refusal(new Reason.Missing(
                    Message.of("make.joined-edge.which", edge, Message.joined("make.joined-edge.or", all)),
                    Where.UNKNOWN));
        }
        JoinedEdge run = meant.get(0);
        String title = ref.map(own -> own.piece() + " " + edge).orElse(edge);
        return new JoinedEdge(title, edge, run.parts, run.closed);
    }

    private static JoinedEdge through(Draft draft, String edge, Piece any) {
        List<EdgeRef> entered = new ArrayList<>();
        EdgeRef entry = new EdgeRef(any.name(), any.before(edge).name());
        // back to where the run begins, or once round
        while (!entered.contains(entry)) {
            entered.add(entry);
            Optional<EdgeRef> before = sewnTo(draft, edge, entry);
            if (before.isEmpty()) {
                break;
            }
            entry = across(draft, edge, before.get());
        }
        boolean closed = entered.contains(entry) && sewnTo(draft, edge, entry).isPresent();
        EdgeRef start = closed
                ? entered.stream()
                        .min(Comparator.comparingInt(JoinedEdge::inOrderOfSewing))
                        .orElseThrow()
                : entry;
        JoinedEdge run = new JoinedEdge(edge, edge, laid(draft, edge, start), closed);
        return run.beginsAtBack() ? new JoinedEdge(edge, edge, laid(draft, edge, run.lastExit()), closed) : run;
    }

    private static int inOrderOfSewing(EdgeRef entry) {
        int place = LAST_SEWN.indexOf(entry.edge());
        return place < 0 ? LAST_SEWN.size() : place;
    }

    /** Runs are told from the front. */
    private boolean beginsAtBack() {
        Part first = parts.get(0);
        Part last = parts.get(parts.size() - 1);
        return parts.size() > 1
                && (last.piece().hasEdge(Names.CENTRE_FRONT) || first.piece().hasEdge(Names.CENTRE_BACK));
    }

    private EdgeRef lastExit() {
        Part last = parts.get(parts.size() - 1);
        return new EdgeRef(last.piece().name(), last.endNeighbour());
    }

    private boolean holds(String piece) {
        return parts.stream().anyMatch(part -> part.piece().name().equals(piece));
    }

    /** Whether it is a seam that ends under the arm, where an armhole is most curved. */
    static boolean isUnderarm(String neighbour) {
        return LAST_SEWN.contains(neighbour);
    }

    /** The other neighbour of the edge on the same piece. */
    private static EdgeRef across(Draft draft, String edge, EdgeRef neighbour) {
        Piece piece = draft.piece(neighbour.piece());
        Edge before = piece.before(edge);
        return new EdgeRef(
                piece.name(),
                before.name().equals(neighbour.edge()) ? piece.after(edge).name() : before.name());
    }

    /** The neighbour of the edge, on the next piece or on the same, that this neighbour of it is sewn to. */
    private static Optional<EdgeRef> sewnTo(Draft draft, String edge, EdgeRef neighbour) {
        return draft.seams().stream()
                .filter(seam -> seam.joins(neighbour))
                .flatMap(seam -> (seam.join().contains(neighbour) ? seam.to() : seam.join()).stream())
                .filter(other -> !other.equals(neighbour))
                .filter(other -> draft.find(other.piece())
                        .filter(piece -> piece.hasEdge(edge) && piece.hasEdge(other.edge()))
                        .filter(piece -> piece.before(edge).name().equals(other.edge())
                                || piece.after(edge).name().equals(other.edge()))
                        .isPresent())
                .findFirst();
    }

    private static List<Part> laid(Draft draft, String edge, EdgeRef start) {
        List<Part> parts = new ArrayList<>();
        Optional<EdgeRef> entry = Optional.of(start);
        while (entry.isPresent()) {
            EdgeRef in = entry.get();
            Piece piece = draft.piece(in.piece());
            Path drawn = piece.from(edge, in.edge());
            Motion laid =
                    parts.isEmpty() ? Motion.STAY : onto(parts.get(parts.size() - 1), edge, piece, in.edge(), drawn);
            EdgeRef out = across(draft, edge, in);
            parts.add(new Part(piece, in.edge(), out.edge(), laid, drawn.moved(laid)));
            entry = sewnTo(draft, edge, out).filter(next -> !next.equals(start));
        }
        return parts;
    }

    /** Lays a piece beside the last one, seam on seam. */
    private static Motion onto(Part last, String edge, Piece piece, String seam, Path drawn) {
        Vector seamThere = last.endSeam(edge);
        Vector seamHere = piece.from(seam, edge).startTangent();
        Vector paperThere = towards(seamThere, last.path().endTangent().negated());
        Vector paperHere = towards(seamHere, drawn.startTangent());
        return Motion.between(drawn.start(), seamHere, paperHere, last.path().end(), seamThere, paperThere.negated());
    }

    /** Square to a seam, on the side on which the paper lies. */
    private static Vector towards(Vector seam, Vector paper) {
        return seam.left().dot(paper) > 0 ? seam.left() : seam.right();
    }

    /** What is made for it is named after this: the edge, with its piece where only that one is meant. */
    String title() {
        return title;
    }

    String edge() {
        return edge;
    }

    List<Part> parts() {
        return parts;
    }

    /** Whether the run comes back to where it began: an armhole. */
    boolean isClosed() {
        return closed;
    }

    /** The parts, those of one divided piece together: the seam between them is in what is traced of them left out. */
    List<List<Part>> undivided() {
        List<List<Part>> groups = new ArrayList<>();
        for (Part part : parts) {
            if (groups.isEmpty() || !part.startNeighbour().equals(Yoke.SEAM)) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(part);
        }
        return groups;
    }

    /** The whole run as it lies: smooth across a seam where the edges run on. */
    Path path() {
        return parts.stream().map(Part::path).reduce(Path::then).orElseThrow();
    }

    /** The sewn length in mm, darts closed, of the pieces as drawn. */
    double sewnLength() {
        return parts.stream().mapToDouble(part -> part.piece().sewnLength(edge)).sum();
    }

    /** How often the run goes round the body as drawn: an open run is half of a whole. */
    int halves() {
        return closed ? 1 : 2;
    }

    /** 1 where the paper lies to the left of the run, -1 where to the right. */
    double paperSide() {
        Part first = parts.get(0);
        boolean asDrawn = first.piece().before(edge).name().equals(first.startNeighbour());
        return asDrawn == first.piece().isClockwise() ? -1 : 1;
    }
}
