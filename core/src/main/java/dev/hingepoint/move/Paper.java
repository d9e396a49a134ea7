package dev.hingepoint.move;

import dev.hingepoint.curve.Path;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

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

    /** The same paper with marks drawn anew, told as a step: what was rubbed out, and what is drawn instead. */
    public Paper marked(String caption, Piece withOtherMarks) {
        Paper marked = marked(withOtherMarks);
        List<Path> were = drawn(piece);
        List<Path> are = drawn(withOtherMarks);
        List<Path> gone = were.stream().filter(path -> !are.contains(path)).toList();
        List<Path> come = new ArrayList<>(
                are.stream().filter(path -> !were.contains(path)).toList());
        come.addAll(ways(piece, withOtherMarks));
        List<Step> told = new ArrayList<>(steps);
        told.add(new Step(caption, piece, withOtherMarks, gone, List.of(), List.of(), come));
        return new Paper(original, marked.piece, map, told);
    }

    /** The lines of darts and levels. */
    private static List<Path> drawn(Piece piece) {
        return Stream.concat(
                        piece.marks(Dart.class).flatMap(dart -> dart.legs().stream()),
                        piece.marks(Level.class).map(Level::path))
                .toList();
    }

    /** From where points were to where they are. */
    private static List<Path> ways(Piece was, Piece is) {
        return is.marks(MarkedPoint.class)
                .flatMap(point -> was
                        .find(MarkedPoint.class, point.name())
                        .filter(old -> !old.at().equals(point.at()))
                        .map(old -> Path.through(old.at(), point.at()))
                        .stream())
                .toList();
    }

    /** The same paper with marks drawn or rubbed out: the paper itself stays as it is. */
    public Paper marked(Piece withOtherMarks) {
        if (!withOtherMarks.edges().equals(piece.edges())) {
            throw new IllegalArgumentException("marking does not change the stitching line");
        }
        return new Paper(original, withOtherMarks, map, steps);
    }
}
