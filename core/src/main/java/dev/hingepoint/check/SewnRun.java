package dev.hingepoint.check;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.SewnEdge;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;

/** One side of a seam, run through in one direction: one edge, or several that meet at seams of their own. */
final class SewnRun {
    /** An edge of the run, and whether it is run through as it was drawn. */
    private record Leg(Piece piece, EdgeRef ref, boolean asDrawn) {
        EdgeRef startNeighbour() {
            return neighbour(asDrawn);
        }

        EdgeRef endNeighbour() {
            return neighbour(!asDrawn);
        }

        private EdgeRef neighbour(boolean before) {
            return new EdgeRef(piece.name(), (before ? piece.before(ref.edge()) : piece.after(ref.edge())).name());
        }

        double length() {
            return piece.sewnLength(ref.edge());
        }

        /** The inner angle in radians of the paper at an end. */
        double angle(boolean atStart) {
            boolean atDrawnStart = atStart == asDrawn;
            Path own = piece.edge(ref.edge()).path();
            Path other = (atDrawnStart ? piece.before(ref.edge()) : piece.after(ref.edge())).path();
            Vector out = atDrawnStart ? own.startTangent() : own.endTangent().negated();
            Vector away = atDrawnStart ? other.endTangent().negated() : other.startTangent();
            double turn = atDrawnStart == piece.isClockwise() ? out.angleTo(away) : away.angleTo(out);
            return turn < 0 ? turn + 2 * Math.PI : turn;
        }
    }

    private final List<Leg> legs;
    private Map<String, Double> notches;

    private SewnRun(List<Leg> legs) {
        this.legs = legs;
    }

    /** Every way to run through the edges in their order so that ends meet which are sewn; where there is none, as drawn, and back. */
    static List<SewnRun> through(Draft draft, List<EdgeRef> side, BiPredicate<EdgeRef, EdgeRef> isSewn) {
        List<SewnRun> sewn = through(draft, side, isSewn, List.of(true, false));
        if (!sewn.isEmpty()) {
            return sewn;
        }
        List<SewnRun> asDrawn = new ArrayList<>(through(draft, side, (one, other) -> true, List.of(true)));
        asDrawn.addAll(through(draft, side, (one, other) -> true, List.of(false)));
        return asDrawn;
    }

    private static List<SewnRun> through(
            Draft draft, List<EdgeRef> side, BiPredicate<EdgeRef, EdgeRef> isSewn, List<Boolean> ways) {
        List<SewnRun> runs = new ArrayList<>(List.of(new SewnRun(List.of())));
        for (EdgeRef ref : side) {
            Piece piece = draft.piece(ref.piece());
            piece.edge(ref.edge());
            List<SewnRun> longer = new ArrayList<>();
            for (SewnRun run : runs) {
                for (boolean forwards : ways) {
                    SewnRun next = run.followedBy(new Leg(piece, ref, forwards));
                    List<EdgeRef[]> joints = next.joints();
                    if (joints.isEmpty()
                            || isSewn.test(joints.get(joints.size() - 1)[0], joints.get(joints.size() - 1)[1])) {
                        longer.add(next);
                    }
                }
            }
            runs = longer;
        }
        return runs;
    }

    private SewnRun followedBy(Leg leg) {
        List<Leg> longer = new ArrayList<>(legs);
        longer.add(leg);
        return new SewnRun(longer);
    }

    /** Where one edge of the run meets the next: the two neighbours that must be sewn together for that. */
    List<EdgeRef[]> joints() {
        List<EdgeRef[]> joints = new ArrayList<>();
        for (int i = 1; i < legs.size(); i++) {
            joints.add(
                    new EdgeRef[] {legs.get(i - 1).endNeighbour(), legs.get(i).startNeighbour()});
        }
        return joints;
    }

    boolean isAsDrawn() {
        return legs.get(0).asDrawn();
    }

    double length() {
        return legs.stream().mapToDouble(Leg::length).sum();
    }

    EdgeRef startNeighbour() {
        return legs.get(0).startNeighbour();
    }

    EdgeRef endNeighbour() {
        return legs.get(legs.size() - 1).endNeighbour();
    }

    double startAngle() {
        return legs.get(0).angle(true);
    }

    double endAngle() {
        return legs.get(legs.size() - 1).angle(false);
    }

    /** How far along the run, in mm of sewn length, each notch lies; a name that stands twice says nothing. */
    Map<String, Double> notches() {
        if (notches == null) {
            notches = found();
        }
        return notches;
    }

    private Map<String, Double> found() {
        Map<String, Double> found = new LinkedHashMap<>();
        List<String> twice = new ArrayList<>();
        double before = 0;
        for (Leg leg : legs) {
            SewnEdge sewn = leg.piece().sewn(leg.ref().edge());
            Path path = leg.piece().edge(leg.ref().edge()).path();
            for (Notch notch : leg.piece().marks(Notch.class).toList()) {
                if (path.hull().distanceTo(notch.at()) <= Tolerance.JOINING
                        && path.distanceTo(notch.at()) <= Tolerance.JOINING) {
                    double along = sewn.distanceAlong(path.nearest(notch.at()));
                    double inRun = before + (leg.asDrawn() ? along : sewn.length() - along);
                    if (found.put(notch.name(), inRun) != null) {
                        twice.add(notch.name());
                    }
                }
            }
            before += leg.length();
        }
        twice.forEach(found::remove);
        return found;
    }
}
