package dev.hingepoint.alter;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Position;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.pattern.SewnEdge;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.List;

/** A bust dart's intake left as fullness on the front side seam, eased in between two notches: for cloth that takes it. */
final class BustEase {
    /** The fullness lies within so many mm of the bust level on either side. */
    private static final double EACH_SIDE = 40;

    /** The seam is drawn fair over so many mm on either side of the gap, or less where the bust level runs near. */
    static final double FAIR_OVER = 60;

    private BustEase() {}

    /**
     * The paper with the side seam drawn fair past the gap that the slash left, in one curve. What is a hair shorter than the gap and the seam
     * were is no fullness: the seam's ease is what the fair line holds.
     */
    static Paper eased(Paper cut, Point upper, Point lower, double over) {
        Piece piece = cut.piece();
        Edge side = piece.edge(Names.SIDE_SEAM);
        Spot one = piece.nearest(side, upper);
        Spot other = piece.nearest(side, lower);
        String caption = "Fill the gap at the side seam, and draw it fair: the fullness is eased in";
        return cut.then(Redraw.bridged(caption, piece, one, other, over));
    }

    /** The seam's ease and the notches, on both sides, that say where the fullness goes. */
    static Altered inSeam(Altered altered, Piece before, BustLines lines) {
        Draft draft = altered.draft();
        EdgeRef frontSide = new EdgeRef(before.name(), Names.SIDE_SEAM);
        List<Seam> seams = new ArrayList<>();
        List<Piece> changed = new ArrayList<>();
        Piece front = draft.piece(before.name());
        double intake = front.sewnLength(Names.SIDE_SEAM) - before.sewnLength(Names.SIDE_SEAM);
        double bust = bustAlong(before, lines);
        changed.add(notched(front, bust - EACH_SIDE, bust + EACH_SIDE + intake));
        for (Seam seam : draft.seams()) {
            if (!seam.joins(frontSide)) {
                seams.add(seam);
                continue;
            }
            boolean isFirst = seam.join().contains(frontSide);
            seams.add(
                    isFirst
                            ? seam.withEase(seam.easeFrom(), seam.easeTo() + intake)
                            : seam.withEase(seam.easeFrom() - intake, seam.easeTo()));
            for (EdgeRef other : isFirst ? seam.to() : seam.join()) {
                draft.find(other.piece())
                        .filter(piece -> other.edge().equals(Names.SIDE_SEAM))
                        .ifPresent(piece -> changed.add(notched(piece, bust - EACH_SIDE, bust + EACH_SIDE)));
            }
        }
        return altered.withDraft(draft.with(changed).with(draft.construction().withSeams(seams)));
    }

    /** How far in mm the slash on the side seam lay below the underarm, as sewn before. */
    private static double bustAlong(Piece before, BustLines lines) {
        SewnEdge side = before.sewn(Names.SIDE_SEAM);
        Path drawn = before.edge(Names.SIDE_SEAM).path();
        double along = side.distanceAlong(drawn.nearest(lines.upperLegEnd()));
        return before.downwards(Names.SIDE_SEAM) == drawn ? along : side.length() - along;
    }

    private static Piece notched(Piece piece, double from, double to) {
        return piece.withMark(notch(piece, "ease begins", from)).withMark(notch(piece, "ease ends", to));
    }

    private static Notch notch(Piece piece, String name, double sewnBelowUnderarm) {
        SewnEdge side = piece.sewn(Names.SIDE_SEAM);
        Path drawn = piece.edge(Names.SIDE_SEAM).path();
        double sewn = Math.min(side.length(), Math.max(0, sewnBelowUnderarm));
        boolean isDownwards = piece.downwards(Names.SIDE_SEAM) == drawn;
        Position at = side.positionAt(isDownwards ? sewn : side.length() - sewn);
        return Notch.on(piece, Names.SIDE_SEAM, at, name, 1);
    }
}
