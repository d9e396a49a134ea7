package dev.hingepoint.move;

import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece on the worktable: as it is now, with the map from the paper as it was and the steps so far.
 *
 * @param original the piece as it was
 */
public record Paper(Piece original, Piece piece, PaperMap map, List<Step> steps) {
    public Paper {
        steps = List.copyOf(steps);
    }

    public static Paper of(Piece piece) {
        return new Paper(piece, piece, PaperMap.STAY, List.of());
    }

    /** The paper after one more move. */
    public Paper then(Move move) {
        Move.Moved moved = move.on(piece);
        List<Step> told = new ArrayList<>(steps);
        told.add(moved.step());
        return new Paper(original, moved.piece(), map.then(moved.map()), told);
    }

    /** The same paper with marks drawn or rubbed out: the paper itself stays as it is. */
    public Paper marked(Piece withOtherMarks) {
        if (!withOtherMarks.edges().equals(piece.edges())) {
            throw new IllegalArgumentException("marking does not change the stitching line");
        }
        return new Paper(original, withOtherMarks, map, steps);
    }
}
