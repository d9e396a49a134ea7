package dev.hingepoint.move;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import java.util.ArrayList;
import java.util.List;

/**
 * Trim: cut an edge off for good, along its new course from the one neighbour to the other. What is drawn on the paper that falls off falls off with it;
 * notches on the edge itself keep their fraction of it.
 *
 * <p>Kept: the place of all that stays on the paper; edge names and order.
 *
 * @param edge the edge that is cut off
 * @param course its new course, from outline to outline
 */
public record Trim(String caption, String edge, Path course) implements Move {
    private static final String CUT = "trimmed edge";

    /** @throws Refusal where a dart lies across the course, or a neighbour would be cut off whole */
    @Override
    public Moved on(Piece piece) {
        Piece kept = new Divide(caption, course, kept(piece), piece.name(), piece.name() + ", cut off", CUT)
                .on(piece)
                .first();
        List<Edge> edges = new ArrayList<>();
        for (Edge old : piece.edges()) {
            boolean isTrimmed = old.name().equals(edge);
            if (!isTrimmed && !kept.hasEdge(old.name())) {
                throw new Refusal(new Reason.Unsound(
                        Message.of("move.trim.cut-off-whole"), piece.where().edge(old.name())));
            }
            edges.add(old.with(kept.edge(isTrimmed ? CUT : old.name()).path()));
        }
        Path before = piece.edge(edge).path();
        Path after = kept.edge(CUT).path();
        List<Mark> marks = new ArrayList<>(kept.marks());
        piece.marks(Notch.class)
                .filter(notch -> before.distanceTo(notch.at()) <= Tolerance.JOINING)
                .forEach(notch -> marks.add(carried(notch, before, after)));
        Piece result = piece.with(edges, marks);
        Step step = new Step(caption, piece, result, List.of(before), List.of(), List.of(), List.of(course));
        return new Moved(result, PaperMap.STAY, step);
    }

    /** The far end of the neighbour that the course begins on. */
    private Place kept(Piece piece) {
        Edge neighbour = piece.before(edge);
        return Place.corner(neighbour.name(), piece.before(neighbour.name()).name());
    }

    private static Notch carried(Notch notch, Path before, Path after) {
        double fraction = before.distanceAlong(before.nearest(notch.at())) / before.length();
        Vector shift = after.at(fraction * after.length()).minus(notch.at());
        return new Notch(
                notch.name(),
                notch.count(),
                new Line(notch.line().start().plus(shift), notch.line().end().plus(shift)));
    }
}
