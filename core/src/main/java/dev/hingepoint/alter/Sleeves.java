package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The sleeves of a draft, and what is measured on them. */
final class Sleeves {
    private Sleeves() {}

    /**
     * The caps: what is sewn into an armhole, else every edge of that name.
     *
     * @throws Refusal where there is none
     */
    static List<EdgeRef> caps(Draft draft, String alteration) {
        List<EdgeRef> sewn = CapEase.seams(draft, draft.piecesWithEdges(Names.ARMHOLE)).stream()
                .map(UnderarmBlend::cap)
                .distinct()
                .toList();
        List<EdgeRef> caps = sewn.isEmpty()
                ? draft.piecesWithEdges(Names.CAP).stream()
                        .map(piece -> new EdgeRef(piece.name(), Names.CAP))
                        .toList()
                : sewn;
        if (caps.isEmpty()) {
            throw new Refusal(new Reason.Missing(
                    Message.of("alter.sleeve.needs-cap", alteration), Where.UNKNOWN.size(draft.size())));
        }
        return caps;
    }

    /** The edge between the two underarm seams, where the sleeve is of one piece. */
    static Optional<String> hem(Piece sleeve, String cap) {
        String afterLast = sleeve.after(sleeve.after(cap).name()).name();
        String beforeFirst = sleeve.before(sleeve.before(cap).name()).name();
        return Optional.of(afterLast).filter(beforeFirst::equals);
    }

    /** The seams that close a sleeve. */
    static List<Seam> underarmSeams(Draft draft, EdgeRef cap) {
        return draft.seams().stream()
                .filter(seam -> Stream.concat(seam.join().stream(), seam.to().stream())
                        .allMatch(ref -> ref.piece().equals(cap.piece())))
                .toList();
    }

    /** Round one arm in mm, where the cap ends. */
    static double upperArm(Draft draft, EdgeRef cap) {
        Piece sleeve = draft.piece(cap.piece());
        Path path = sleeve.edge(cap.edge()).path();
        Vector across = sleeve.grain().down().left();
        return Math.abs(path.end().minus(path.start()).dot(across));
    }

    /** From the ends of the cap, half way between them, to its top, in mm. */
    static double capHeight(Draft draft, EdgeRef cap) {
        Piece sleeve = draft.piece(cap.piece());
        Path path = sleeve.edge(cap.edge()).path();
        return path.start()
                .midpoint(path.end())
                .minus(top(sleeve, cap.edge()))
                .dot(sleeve.grain().down());
    }

    static Point top(Piece sleeve, String cap) {
        Path path = sleeve.edge(cap).path();
        return path.at(path.farthest(sleeve.grain().down().negated()));
    }

    /** Along the grain in mm from the top of the cap to the hem. */
    static double length(Piece sleeve, String cap, String hem) {
        Vector down = sleeve.grain().down();
        Point top = top(sleeve, cap);
        Path path = sleeve.edge(hem).path();
        return path.crossings(top, down).stream()
                .mapToDouble(position -> path.at(position).minus(top).dot(down))
                .max()
                .orElseThrow(() -> new Refusal(new Reason.Unsound(
                        Message.of("alter.sleeve.hem-above-cap"), sleeve.where().edge(hem))));
    }

    /** The darts of seams that were redrawn, each as wide as it was and its legs equal. */
    static Piece withDarts(Piece before, Piece after) {
        Piece kept = after;
        for (var edge : after.edges()) {
            kept = Bodice.withDarts(before, kept, edge.name());
        }
        return kept;
    }
}
