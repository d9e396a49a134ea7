package dev.hingepoint.alter;

import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Position;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.SewnEdge;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** Notches of one name on two side seams that are sewn together: what they miss each other by after a blend, more than before it, each takes half of. */
final class PairedNotches {
    private PairedNotches() {}

    static Draft shared(Draft before, Draft after, EdgeRef one, EdgeRef other) {
        Map<String, Double> was = below(before.piece(one.piece()), one.edge());
        Map<String, Double> wasOther = below(before.piece(other.piece()), other.edge());
        Map<String, Double> is = below(after.piece(one.piece()), one.edge());
        Map<String, Double> isOther = below(after.piece(other.piece()), other.edge());
        Map<String, Double> forOne = new LinkedHashMap<>();
        Map<String, Double> forOther = new LinkedHashMap<>();
        is.keySet().stream().filter(isOther::containsKey).forEach(name -> {
            double allowed =
                    was.containsKey(name) && wasOther.containsKey(name) ? was.get(name) - wasOther.get(name) : 0;
            double half = (is.get(name) - isOther.get(name) - allowed) / 2;
            forOne.put(name, is.get(name) - half);
            forOther.put(name, isOther.get(name) + half);
        });
        return after.with(
                slid(after.piece(one.piece()), one.edge(), forOne),
                slid(after.piece(other.piece()), other.edge(), forOther));
    }

    /** The piece {@code after} a change, each notch of an edge as far from the edge's upper end, as sewn, as it was before. */
    static Piece whereTheyWere(Piece before, Piece after, String edge) {
        return slid(after, edge, below(before, edge));
    }

    /** How far in mm of sewn length each notch of an edge lies below its upper end. */
    private static Map<String, Double> below(Piece piece, String edge) {
        Path drawn = piece.edge(edge).path();
        SewnEdge sewn = piece.sewn(edge);
        boolean isDownwards = piece.downwards(edge) == drawn;
        Map<String, Double> below = new LinkedHashMap<>();
        Set<String> repeated = new HashSet<>();
        piece.marks(Notch.class)
                .filter(notch -> drawn.distanceTo(notch.at()) <= Tolerance.JOINING)
                .forEach(notch -> {
                    double along = sewn.distanceAlong(drawn.nearest(notch.at()));
                    Double other = below.put(notch.name(), isDownwards ? along : sewn.length() - along);
                    if (other != null) {
                        repeated.add(notch.name());
                    }
                });
        // of two notches of one name on one edge nobody can say which is sewn to which
        below.keySet().removeAll(repeated);
        return below;
    }

    /** @param below by name, how far in mm of sewn length a notch is to lie below the edge's upper end */
    private static Piece slid(Piece piece, String edge, Map<String, Double> below) {
        Path drawn = piece.edge(edge).path();
        SewnEdge sewn = piece.sewn(edge);
        boolean isDownwards = piece.downwards(edge) == drawn;
        return piece.withMarksChanged(mark -> {
            if (!(mark instanceof Notch notch)
                    || !below.containsKey(notch.name())
                    || drawn.distanceTo(notch.at()) > Tolerance.JOINING) {
                return mark;
            }
            double along = isDownwards ? below.get(notch.name()) : sewn.length() - below.get(notch.name());
            return slid(notch, drawn, sewn.positionAt(Math.min(sewn.length(), Math.max(0, along))));
        });
    }

    private static Notch slid(Notch notch, Path edge, Position to) {
        Vector shift = edge.at(to).minus(notch.at());
        boolean stays = shift.length() <= Tolerance.COINCIDENT;
        return stays
                ? notch
                : new Notch(
                        notch.name(),
                        notch.count(),
                        new Line(
                                notch.line().start().plus(shift),
                                notch.line().end().plus(shift)));
    }
}
