package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.pattern.Piece;

/** The law that an edge still meets a neighbour as it did: a hem square to its seams, a neckline square to a fold. */
final class KeptAngle {
    private KeptAngle() {}

    static Law of(Piece piece, String edge, String neighbour) {
        return Law.ofAngles(
                Message.of("alter.law.keeps-angle", edge, neighbour),
                piece.where().edge(edge),
                (before, after) -> between(before.piece(piece.name()), edge, neighbour),
                (before, after) -> between(after.piece(piece.name()), edge, neighbour),
                Tolerance.COINCIDENT);
    }

    /** In radians, on the one side or the other. */
    static double between(Piece piece, String edge, String neighbour) {
        return Math.abs(piece.from(edge, neighbour)
                .startTangent()
                .angleTo(piece.from(neighbour, edge).startTangent()));
    }
}
