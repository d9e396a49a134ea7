package dev.hingepoint.alter;

import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The notches of a sleeve's cap: which is sewn where, and how they move along it. */
final class CapNotches {
    private CapNotches() {}

    /** The notches of an edge. */
    static Stream<Notch> on(Piece piece, String edge) {
        Path path = piece.edge(edge).path();
        return piece.marks(Notch.class)
                .filter(notch -> path.hull().distanceTo(notch.at()) <= Tolerance.JOINING)
                .filter(notch -> path.distanceTo(notch.at()) <= Tolerance.JOINING);
    }

    private static List<EdgeRef> armholes(Seam seam) {
        return seam.join().contains(UnderarmBlend.cap(seam)) ? seam.to() : seam.join();
    }

    /** The sewn length in mm of the armholes that a cap goes into. */
    static double armholes(Draft draft, Seam seam) {
        return draft.sewnLength(armholes(seam));
    }

    /** The one that meets the shoulder: no armhole has a notch of that name, and none lies higher. */
    static Optional<Notch> top(Draft draft, Seam seam) {
        EdgeRef cap = UnderarmBlend.cap(seam);
        Piece sleeve = draft.piece(cap.piece());
        Vector down = sleeve.grain().down();
        Point origin = sleeve.edge(cap.edge()).path().start();
        return on(sleeve, cap.edge())
                .filter(notch -> armholes(seam).stream()
                        .flatMap(armhole -> on(draft.piece(armhole.piece()), armhole.edge()))
                        .noneMatch(other -> other.name().equals(notch.name())))
                .min(Comparator.comparingDouble(
                        notch -> notch.at().minus(origin).dot(down)));
    }

    /**
     * The neighbour at the end of the cap that goes to a piece's armhole: told by a notch that both have, else by a neighbour that is called
     * after the piece.
     */
    static Optional<String> endAt(Draft draft, Seam seam, Piece piece) {
        EdgeRef cap = UnderarmBlend.cap(seam);
        Piece sleeve = draft.piece(cap.piece());
        String first = sleeve.before(cap.edge()).name();
        String last = sleeve.after(cap.edge()).name();
        Path path = sleeve.edge(cap.edge()).path();
        Optional<String> byNotch = on(sleeve, cap.edge())
                .filter(notch ->
                        on(piece, Names.ARMHOLE).anyMatch(other -> other.name().equals(notch.name())))
                .findFirst()
                .map(notch -> path.distanceAlong(path.nearest(notch.at())) < path.length() / 2 ? first : last);
        return byNotch.or(() -> Stream.of(first, last)
                .filter(name -> name.contains(piece.name()))
                .findFirst());
    }

    /** The piece with one notch of an edge moved along it by so many mm, away from the end at {@code from}. */
    static Piece slid(Piece piece, String edge, Notch notch, String from, double by) {
        Path path = piece.edge(edge).path();
        double drawn = path.distanceAlong(path.nearest(notch.at()));
        double to = piece.before(edge).name().equals(from) ? drawn + by : drawn - by;
        Position at = path.positionAt(Math.max(0, Math.min(path.length(), to)));
        Vector shift = path.at(at).minus(notch.at());
        Notch moved = new Notch(
                notch.name(),
                notch.count(),
                new Line(notch.line().start().plus(shift), notch.line().end().plus(shift)));
        return piece.withMarksChanged(mark -> mark.equals(notch) ? moved : mark);
    }

    /**
     * The notches of a cap after cap or armholes changed: as far beyond their partners from the underarm as they were, so that nothing
     * is eased in below them that was not; the one at the top as the armhole there says, with half of what the cap alone has gained.
     */
    static Draft following(Draft before, Draft after, Seam seam) {
        EdgeRef cap = UnderarmBlend.cap(seam);
        Optional<Notch> top = top(before, seam);
        double gained = after.sewnLength(cap) - before.sewnLength(cap) - armholes(after, seam) + armholes(before, seam);
        Draft draft = after;
        for (EdgeRef armhole : armholes(seam)) {
            Optional<String> end = endAt(before, seam, before.piece(armhole.piece()));
            if (end.isPresent()) {
                for (Notch notch : partners(before, cap, armhole)) {
                    double more = fromEnd(after, armhole, notch.name(), Names.SIDE_SEAM)
                            - fromEnd(before, armhole, notch.name(), Names.SIDE_SEAM);
                    draft = placed(before, draft, cap, notch, end.get(), more);
                }
                if (top.isPresent()) {
                    double more = after.sewnLength(armhole) - before.sewnLength(armhole) + gained / 2;
                    draft = placed(before, draft, cap, top.get(), end.get(), more);
                    top = Optional.empty();
                }
            }
        }
        return draft;
    }

    /** The notches of the cap whose name stands once on it and once on the armhole. */
    private static List<Notch> partners(Draft draft, EdgeRef cap, EdgeRef armhole) {
        List<Notch> own = on(draft.piece(cap.piece()), cap.edge()).toList();
        List<Notch> others = on(draft.piece(armhole.piece()), armhole.edge()).toList();
        return own.stream()
                .filter(notch ->
                        own.stream().filter(o -> o.name().equals(notch.name())).count() == 1
                                && others.stream()
                                                .filter(o -> o.name().equals(notch.name()))
                                                .count()
                                        == 1)
                .toList();
    }

    private static double fromEnd(Draft draft, EdgeRef ref, String notch, String end) {
        Piece piece = draft.piece(ref.piece());
        Path path = piece.from(ref.edge(), end);
        Notch found = on(piece, ref.edge())
                .filter(other -> other.name().equals(notch))
                .findFirst()
                .orElseThrow();
        return path.distanceAlong(path.nearest(found.at()));
    }

    /** The draft with a notch of the cap as far from an end as it was, and so many mm more. */
    private static Draft placed(Draft before, Draft draft, EdgeRef cap, Notch notch, String end, double more) {
        double wanted = fromEnd(before, cap, notch.name(), end) + more;
        Piece sleeve = draft.piece(cap.piece());
        Notch now = on(sleeve, cap.edge())
                .filter(other -> other.name().equals(notch.name()))
                .findFirst()
                .orElseThrow();
        return draft.with(slid(sleeve, cap.edge(), now, end, wanted - fromEnd(draft, cap, notch.name(), end)));
    }
}
