package dev.hingepoint.make;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Refit;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.SewnEdge;
import java.util.ArrayList;
import java.util.List;

/**
 * One piece's underarm, taken in square to the side seam, so that front and back stay alike. The armhole is stretched to meet it, leaves the shoulder as it did and
 * meets the side seam at its old angle; the side seam runs fair from the new underarm into its old line, above any dart.
 */
final class TakenInUnderarm {

    /** The side seam is taken in over so many mm below the underarm, or less where a dart opens. */
    private static final double FAIR_OVER = 120;

    private static final double LEAST = 25;

    private final Piece piece;
    private final double takeIn;
    private final double over;
    private final Point underarm;

    TakenInUnderarm(Piece piece, double takeIn, double over) {
        this.piece = piece;
        this.takeIn = takeIn;
        this.over = over;
        Path side = piece.from(Names.SIDE_SEAM, Names.ARMHOLE);
        Vector down = side.startTangent();
        Vector armhole = piece.from(Names.ARMHOLE, Names.SIDE_SEAM).startTangent();
        Vector inwards = down.left().dot(armhole) > 0 ? down.left() : down.right();
        this.underarm = side.start().plus(inwards.times(takeIn));
    }

    /** How far in mm below the underarm every side seam runs without a dart. */
    static double roomBelow(Draft draft) {
        double room = FAIR_OVER;
        for (Piece piece : draft.piecesWithEdges(Names.ARMHOLE, Names.SIDE_SEAM)) {
            Path side = piece.from(Names.SIDE_SEAM, Names.ARMHOLE);
            room = Math.min(room, side.length() / 2);
            for (EdgeDart dart : piece.marks(EdgeDart.class)
                    .filter(dart -> SewnEdge.isOn(side, dart))
                    .toList()) {
                room = Math.min(room, side.distanceAlong(side.nearest(dart.mouthStart())));
                room = Math.min(room, side.distanceAlong(side.nearest(dart.mouthEnd())));
            }
            if (room < LEAST) {
                throw new Refusal(Reason.BeyondLimit.of(
                        Message.of("make.taken-in.dart-in-the-way", Quantity.millimetres(room)),
                        piece.where().edge(Names.SIDE_SEAM)));
            }
        }
        return room;
    }

    Paper paper() {
        Path side = piece.from(Names.SIDE_SEAM, Names.ARMHOLE);
        Path armhole = piece.from(Names.ARMHOLE, Names.SIDE_SEAM).reversed();
        Path taken = side(side);
        double turned = side.startTangent().angleTo(taken.startTangent());
        String caption = (takeIn < 0 ? "Let the underarm out " : "Take the underarm in ")
                + Reason.millimetres(Math.abs(takeIn)) + "; draw armhole and side seam fair";
        return Paper.of(piece)
                .then(Redraw.whole(caption, piece, Names.SIDE_SEAM, Names.ARMHOLE, taken)
                        .and(Redraw.whole(
                                caption,
                                piece,
                                Names.ARMHOLE,
                                Names.SIDE_SEAM,
                                armhole(armhole, turned).reversed())));
    }

    /** From the new underarm straight, then fair into the old line. */
    private Path side(Path old) {
        Path kept = old.part(over, old.length());
        // at a dart's mouth the edge has a corner: the seam comes into it as it did
        Vector into = old.part(0, over).endTangent();
        double third = underarm.distanceTo(kept.start()) / 3;
        Vector towards = kept.start().minus(underarm).unit();
        Cubic fair = new Cubic(
                underarm, underarm.plus(towards.times(third)), kept.start().minus(into.times(third)), kept.start());
        return Path.of(fair).then(kept);
    }

    /** Stretched from the shoulder to the new underarm, leaving the shoulder as it did; its end turned with the side seam. */
    private Path armhole(Path old, double turned) {
        Point tip = old.start();
        Vector leaving = old.startTangent();
        Motion stretch = Motion.between(tip, leaving, old.end().minus(tip), tip, leaving, underarm.minus(tip));
        List<Segment> segments = new ArrayList<>(old.moved(stretch).segments());
        Cubic last = Refit.asCubic(segments.remove(segments.size() - 1));
        double handle = last.end().distanceTo(last.endHandle());
        Vector arriving = old.endTangent().turned(turned);
        segments.add(new Cubic(last.start(), last.startHandle(), underarm.minus(arriving.times(handle)), underarm));
        return Path.of(segments);
    }

    List<Law> laws() {
        List<Law> laws = new ArrayList<>();
        piece.edges().stream()
                .map(Edge::name)
                .filter(edge -> !edge.equals(Names.ARMHOLE) && !edge.equals(Names.SIDE_SEAM))
                .forEach(edge -> laws.add(Law.keepsPlace(piece.name(), edge)));
        laws.add(new Law(
                Message.of("make.taken-in.law.takes-in", Quantity.millimetres(takeIn)),
                piece.where().edge(Names.ARMHOLE),
                (before, after) -> Math.abs(takeIn),
                (before, after) -> corner(before).distanceTo(corner(after)),
                0.01));
        return laws;
    }

    private Point corner(Draft draft) {
        return draft.piece(piece.name()).from(Names.ARMHOLE, Names.SIDE_SEAM).start();
    }
}
