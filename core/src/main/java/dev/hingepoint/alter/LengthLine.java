package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Across;
import dev.hingepoint.pattern.DoublePointedDart;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.LevelFrame;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.Piece;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Where one piece is lengthened or shortened: a straight line across it, and how much paper above and below it holds nothing that a fitter
 * would not cut away or draw over: no level, no corner, no dart's tip or mouth.
 *
 * @param rides the level or line that the place is named by, and that goes with the paper below; empty for a place between two levels
 * @param middle a point of the line
 * @param along the line's direction
 * @param down along the fold, where the piece has one, which stays one straight line; else square to the line: a bodice that a sway back has
 *     turned gets longer along itself
 */
record LengthLine(Piece piece, Optional<Mark> rides, Point middle, Vector along, Vector down) {
    /** A line that ends nearer to a corner in mm opens the corner, and nobody can say which edge gets longer. */
    private static final double CORNER = 1;

    /** On a level. */
    static LengthLine atLevel(Piece piece, String level) {
        return of(
                piece,
                piece.find(Level.class, level).orElseThrow(),
                piece.levelFrame(level).path());
    }

    /** On a line that is drawn across the piece, or on part of the way. */
    static LengthLine atDrawn(Piece piece, DrawnLine line) {
        return of(piece, line, line.path());
    }

    private static LengthLine of(Piece piece, Mark mark, Path path) {
        Vector along = path.end().minus(path.start()).unit();
        Vector square = along.left();
        Vector down = piece.centre()
                .filter(centre -> centre.kind() == Edge.Kind.FOLD)
                .map(fold -> fold.path().startTangent())
                .orElse(square);
        down = down.dot(piece.grain().down()) > 0 ? down : down.negated();
        return new LengthLine(piece, Optional.of(mark), path.start().midpoint(path.end()), along, down);
    }

    /**
     * How far in mm the next level drawn above a level lies above it.
     *
     * @throws Refusal where none does
     */
    static double toLevelAbove(Piece piece, String level) {
        LengthLine line = atLevel(piece, level);
        return piece.marks(Level.class)
                .map(other -> piece.levelFrame(other.name()))
                .mapToDouble(line::above)
                .filter(above -> above > Tolerance.JOINING)
                .min()
                .orElseThrow(() -> new Refusal(new Reason.Missing(
                        Message.of("alter.length.no-level-above", level),
                        piece.where().mark(level))));
    }

    private double above(LevelFrame level) {
        return Stream.of(level.origin(), level.outerEnd())
                .mapToDouble(this::above)
                .min()
                .orElseThrow();
    }

    /** How far in mm a point lies above the line, along {@link #down}. */
    double above(Point point) {
        return middle.minus(point).cross(along) / down.cross(along);
    }

    /** The line so many mm higher; nothing rides on it. */
    LengthLine higher(double mm) {
        return new LengthLine(piece, Optional.empty(), middle.minus(down.times(mm)), along, down);
    }

    /**
     * Across the piece, so many mm above the line.
     *
     * @throws Refusal where it ends at a corner
     */
    Across across(double mm) {
        Across across = Across.through(piece, middle.minus(down.times(mm)), along);
        for (String edge : across.edges()) {
            Path path = piece.edge(edge).path();
            double toCorner = Math.min(
                    path.start().distanceTo(across.on(edge).point()),
                    path.end().distanceTo(across.on(edge).point()));
            if (toCorner < CORNER) {
                throw new Refusal(new Reason.Unsound(
                        Message.of("alter.length.ends-at-corner"), piece.where().edge(edge)));
            }
        }
        return across;
    }

    /** How much paper in mm above the line can be folded out: no level, no corner and no whole half of a dart in it. */
    double roomAbove() {
        return room(1);
    }

    /** How much paper in mm below the line can be folded out. */
    double roomBelow() {
        return room(-1);
    }

    private double room(int up) {
        return DoubleStream.concat(onSeams().mapToDouble(this::above), dartEnds(up))
                .map(above -> up * above)
                .filter(room -> room > Tolerance.COINCIDENT)
                .min()
                .orElseThrow();
    }

    /** How far in mm above the line a seam that it crosses can be drawn anew. */
    double seamAbove() {
        return onSeams()
                .mapToDouble(this::above)
                .filter(above -> above > Tolerance.COINCIDENT)
                .min()
                .orElseThrow();
    }

    /** How far in mm below the line: not at all below a level, which stays as it is with all below it. */
    double seamBelow() {
        return onSeams()
                .mapToDouble(point -> -above(point))
                .filter(below -> below >= -Tolerance.COINCIDENT)
                .map(below -> Math.max(0, below))
                .min()
                .orElseThrow();
    }

    /** What must stay where it is on the seams that the line crosses: the ends of levels and darts, and corners. */
    private Stream<Point> onSeams() {
        Stream<Point> levels = piece.marks(Level.class)
                .map(level -> piece.levelFrame(level.name()))
                .flatMap(level -> Stream.of(level.origin(), level.outerEnd()));
        Stream<Point> mouths =
                piece.marks(EdgeDart.class).flatMap(dart -> Stream.of(dart.mouthStart(), dart.mouthEnd()));
        Stream<Point> corners = across(0).edges().stream()
                .map(edge -> piece.edge(edge).path())
                .flatMap(path -> Stream.concat(
                        Stream.of(path.start(), path.end()),
                        path.corners(Tolerance.CORNER).stream().map(path::at)));
        return Stream.of(levels, mouths, corners).flatMap(points -> points);
    }

    /** The far ends of what must not be folded out whole, above the line or below it: either half of a dart inside the piece; and the tips of other darts. */
    private DoubleStream dartEnds(int up) {
        DoubleStream halves = piece.marks(DoublePointedDart.class)
                .flatMap(dart -> dart.closed().segments().stream())
                .filter(half ->
                        Stream.of(half.start(), half.end()).allMatch(end -> up * above(end) >= -Tolerance.COINCIDENT))
                .mapToDouble(half -> up * Math.max(up * above(half.start()), up * above(half.end())));
        return DoubleStream.concat(
                halves, piece.marks(EdgeDart.class).map(EdgeDart::tip).mapToDouble(this::above));
    }

    /** @throws Refusal where the line runs through a dart that opens on an edge that it crosses: its legs would no longer match */
    void requireClearOfDarts() {
        List<String> edges = across(0).edges();
        for (EdgeDart dart : piece.marks(EdgeDart.class).toList()) {
            boolean isAbove = above(dart.tip()) > 0;
            boolean isClear = Stream.of(dart.mouthStart(), dart.mouthEnd()).allMatch(leg -> above(leg) > 0 == isAbove);
            if (!isClear && edges.contains(piece.nearest(dart.mouthMiddle()).edge())) {
                throw new Refusal(new Reason.Unsound(
                        Message.of("alter.length.through-dart"), piece.where().mark(dart.name())));
            }
        }
    }
}
