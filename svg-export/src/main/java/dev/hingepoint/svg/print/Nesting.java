package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Piece;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How the sizes of a piece lie in one another: as they are drawn, where they are drawn in one another; else brought together, grain along grain, and the centre line's end
 * of a level on that of the same level.
 */
final class Nesting {
    /** The levels in the order in which they are asked for; then any other. */
    private static final List<String> LEVELS = List.of("bust", "waist", "high hip", "hip");

    private Nesting() {}

    /** How each size moves to lie with the others where one of them lies. */
    static List<Motion> of(List<Piece> sizes, Piece kept) {
        if (sizes.stream().allMatch(size -> isDrawnIn(size, kept))) {
            return sizes.stream().map(size -> Motion.STAY).toList();
        }
        Optional<String> level = Stream.concat(
                        LEVELS.stream(), kept.marks(Level.class).map(Level::name))
                .filter(name -> sizes.stream().allMatch(size -> size.hasLevel(name)))
                .findFirst();
        return sizes.stream().map(size -> brought(size, kept, level)).toList();
    }

    /** Whether two sizes lie in one another as they are drawn: their boxes share more than half of the smaller. */
    private static boolean isDrawnIn(Piece one, Piece other) {
        Box a = one.outline().bounds();
        Box b = other.outline().bounds();
        double width = Math.min(a.right(), b.right()) - Math.max(a.left(), b.left());
        double height = Math.min(a.bottom(), b.bottom()) - Math.max(a.top(), b.top());
        double smaller = Math.min(a.width() * a.height(), b.width() * b.height());
        return width > 0 && height > 0 && width * height > smaller / 2;
    }

    private static Motion brought(Piece size, Piece kept, Optional<String> level) {
        if (size.equals(kept)) {
            return Motion.STAY;
        }
        Point from = held(size, level);
        Motion turn = Motion.turn(from, size.grain().down(), kept.grain().down());
        return turn.then(Motion.shift(held(kept, level).minus(from)));
    }

    /** What of a size is laid on the same of another. */
    private static Point held(Piece piece, Optional<String> level) {
        return level.map(name -> piece.levelFrame(name).origin())
                .or(() -> piece.marks(Grain.class)
                        .findFirst()
                        .map(drawn -> piece.grain().line().start()))
                .orElseGet(() -> piece.outline().bounds().centre());
    }
}
