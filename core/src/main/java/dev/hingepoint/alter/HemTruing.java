package dev.hingepoint.alter;

import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Spot;

/** Trues hems: square to the fold, fair between their corners and through what a cut left. */
final class HemTruing {
    /** A hem runs square to a fold for this many mm. */
    private static final double SQUARE = 20;

    /** A hem is redrawn over so many mm on either side of what a cut left. */
    private static final double HEALED_OVER = 60;

    private HemTruing() {}

    /**
     * The hem with its fold corner {@code higher} mm above the old one, and its side corner where the side seam keeps its old length.
     *
     * @param before the piece as it was
     * @param now the piece with its side seam faired
     */
    static Redraw on(Piece before, Piece now, String fold, double higher) {
        String hem = now.below(fold).name();
        Path oldFold = before.from(fold, hem).reversed();
        Point foldCorner = oldFold.end().minus(oldFold.endTangent().times(higher));
        Path nowFold = now.from(fold, hem).reversed();
        Path newFold = Path.through(nowFold.start(), foldCorner);
        Path newSide = now.from(Names.SIDE_SEAM, hem)
                .reversed()
                .withLength(before.edge(Names.SIDE_SEAM).path().length());

        Vector square = square(now.from(hem, fold), newFold.endTangent());
        Vector oldSideDown = before.from(Names.SIDE_SEAM, hem).startTangent().negated();
        double angle = oldSideDown.angleTo(before.from(hem, Names.SIDE_SEAM).startTangent());
        Vector intoSide = newSide.endTangent().turned(angle).negated();

        Point squareEnd = foldCorner.plus(square.times(SQUARE));
        double third = squareEnd.distanceTo(newSide.end()) / 3;
        Path newHem = Path.through(foldCorner, squareEnd)
                .then(Path.of(new Cubic(
                        squareEnd,
                        squareEnd.plus(square.times(third)),
                        newSide.end().minus(intoSide.times(third)),
                        newSide.end())));
        String caption = "True the hem: square to the fold, the side seam as long as it was";
        return Redraw.whole(caption, now, fold, hem, newFold.reversed())
                .and(Redraw.whole(caption, now, hem, fold, newHem))
                .and(Redraw.whole(caption, now, Names.SIDE_SEAM, hem, newSide.reversed()));
    }

    /**
     * The hem drawn fair through the stretch between two places where paper was put in or taken away.
     *
     * @param centre the edge near which the hem keeps running square
     */
    static Redraw healed(Piece piece, String hem, String centre, Spot one, Spot other) {
        Path path = piece.edge(hem).path();
        double start = path.distanceAlong(Spot.first(one, other).position());
        double end = path.distanceAlong(Spot.last(one, other).position());
        boolean centreFirst = piece.before(hem).name().equals(centre);
        double room = centreFirst ? start - SQUARE : path.length() - end - SQUARE;
        double reach = Math.max(0, Math.min(HEALED_OVER, Math.min(room, centreFirst ? path.length() - end : start)));
        return Redraw.bridged("Draw the hem fair", piece, one, other, reach);
    }

    /** Square to the fold, towards the hem's own side. */
    private static Vector square(Path hem, Vector foldDown) {
        Vector square = foldDown.left();
        return hem.end().minus(hem.start()).dot(square) > 0 ? square : square.negated();
    }
}
