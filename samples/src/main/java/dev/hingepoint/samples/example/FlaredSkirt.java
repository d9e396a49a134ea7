package dev.hingepoint.samples.example;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Faired;
import dev.hingepoint.alter.LargestAmount;
import dev.hingepoint.alter.Options;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Redraw;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * An alteration that is not in the catalogue: a wider hem, {@code flared skirt: {by: 40 mm}} at each side of front and back. From the hip down the side
 * seam swings out, the hem is drawn on to meet it, and the side seam is faired at the hip.
 *
 * <p>Kept: the length of the side seam, its angle to the hem, every width, the match of front and back. Source: common practice.
 */
final class FlaredSkirt implements Alteration {
    @Override
    public String name() {
        return "flared skirt";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("by", "40 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("by");
        double by = options.positive("by", "by: 40 mm", Message.of("order hip blend"));
        List<Piece> pieces = draft.piecesWithEdges(Names.SIDE_SEAM, Names.HEM);
        if (pieces.isEmpty()) {
            throw new Refusal(new Reason.Missing(
                    Message.of("{0} needs pieces with a side seam and a hem", name()),
                    Where.UNKNOWN.size(draft.size())));
        }
        Altered altered = Altered.of(draft);
        for (Piece piece : pieces) {
            altered = altered.then(
                    before -> LargestAmount.orRefusal(before, by, amount -> flared(before, piece, amount)));
        }
        return altered.withLaws(sideSeamsMatch(draft));
    }

    private static Altered flared(Draft draft, Piece piece, double by) {
        Path side = piece.from(Names.SIDE_SEAM, Names.HEM);
        Path hem = piece.from(Names.HEM, Names.SIDE_SEAM);
        Point hip = Place.level(Names.HIP, Names.SIDE_SEAM).on(piece).point();
        double below = side.distanceAlong(side.nearest(hip));
        Vector skirt = side.start().minus(hip);
        double outwards =
                Math.signum(skirt.right().dot(piece.levelFrame(Names.HIP).outwards()));
        Motion swing = Motion.turn(hip, outwards * 2 * StrictMath.asin(by / 2 / skirt.length()));

        String caption = "Swing the side seam of the " + piece.name() + " out about the hip, by "
                + Reason.millimetres(by) + " at the hem; the hem is drawn on to meet it, at the angle it had";
        Path newHem =
                hem.givingWay(swing.of(hem.start()).minus(hem.start())).withStartTangent(swing.of(hem.startTangent()));
        Paper swung = Paper.of(piece)
                .then(Redraw.end(
                                caption,
                                piece,
                                Names.SIDE_SEAM,
                                Names.HEM,
                                below,
                                side.part(0, below).moved(swing))
                        .and(Redraw.whole(caption, piece, Names.HEM, Names.SIDE_SEAM, newHem)));
        Spot corner = swung.piece().nearest(swung.piece().edge(Names.SIDE_SEAM), hip);
        return Faired.untilLawsHold(draft, Redraw.reach(swung.piece(), corner), reach -> {
            Redraw faired = Redraw.faired("Fair the side seam at the hip", swung.piece(), corner, reach);
            return Altered.of(draft, swung.then(faired), Map.of("by", by)).withLaws(laws(piece, by));
        });
    }

    private static List<Law> laws(Piece piece, double by) {
        List<Law> laws = new ArrayList<>();
        laws.add(Law.changesLength(piece.name(), Names.HEM, by, 1));
        laws.add(Law.keepsLength(piece.name(), Names.SIDE_SEAM, 0.3));
        piece.marks(Level.class).forEach(level -> laws.add(Law.keepsWidth(piece.name(), level.name(), 0.5)));
        return laws;
    }

    private static List<Law> sideSeamsMatch(Draft draft) {
        return draft.seams().stream()
                .filter(seam ->
                        seam.join().stream().anyMatch(edge -> edge.edge().equals(Names.SIDE_SEAM)))
                .map(seam -> Law.keepsDifference(seam.join(), seam.to(), 0.1))
                .toList();
    }
}
