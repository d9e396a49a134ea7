package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Position;
import dev.hingepoint.pattern.Construction;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.List;

/**
 * A slit: a seam left open from the hem up to a notch on either side, its allowance at least {@value #ALLOWANCE} mm wide along the whole seam, to be turned in and
 * stitched beside the slit (common practice, no source). The stitching line stays as it is.
 */
final class Slit {
    private static final double ALLOWANCE = 30;

    /** So much of a seam must stay sewn above a slit. */
    private static final double LEAST_SEWN = 50;

    private Slit() {}

    /**
     * @param pieces those on the body that end at the hem, as they are now
     * @param mm how long
     */
    static Altered in(Altered altered, List<Piece> pieces, double mm, Options options) {
        String seam = seam(pieces, options);
        Draft draft = altered.draft();
        Construction construction = draft.construction();
        List<Opening> openings = new ArrayList<>(construction.openings());
        for (Piece piece : pieces) {
            if (!piece.hasEdge(seam)) {
                continue;
            }
            EdgeRef edge = new EdgeRef(piece.name(), seam);
            requireRoom(piece, edge, openings, mm);
            openings.removeIf(
                    opening -> opening.edge().equals(edge) && opening.from().equals(Names.HEM));
            openings.add(new Opening(edge, Names.HEM, new Length(mm)));
            if (construction.allowances().of(piece, piece.edge(seam)).mm() < ALLOWANCE) {
                construction = construction.withAllowance(edge, new Length(ALLOWANCE));
            }
            draft = draft.with(notched(piece, seam, mm));
        }
        return altered.withDraft(draft.with(construction.withOpenings(openings)))
                .withNote("the " + seam + " stays open " + Reason.millimetres(mm)
                        + " from the hem up, to the notch 'slit'; its allowance is at least "
                        + Reason.millimetres(ALLOWANCE) + ": turn it in and stitch it beside the slit");
    }

    /** Centre back where it is a seam, else the side seams. */
    private static String seam(List<Piece> pieces, Options options) {
        String seam = options.choice("slit in", "centre back", "centre front", Names.SIDE_SEAM)
                .orElseGet(() -> isSeam(pieces, Names.CENTRE_BACK) ? "centre back" : Names.SIDE_SEAM);
        if (!isSeam(pieces, seam)) {
            throw options.refuse("alter.slit.no-seam-to-hem", seam);
        }
        return seam;
    }

    private static boolean isSeam(List<Piece> pieces, String edge) {
        return pieces.stream()
                .filter(piece -> piece.hasEdge(edge))
                .anyMatch(piece -> piece.edge(edge).kind() == Edge.Kind.SEAM
                        && new HemLine(piece, 0).seams().contains(edge));
    }

    private static void requireRoom(Piece piece, EdgeRef edge, List<Opening> openings, double mm) {
        double opened = openings.stream()
                .filter(opening ->
                        opening.edge().equals(edge) && !opening.from().equals(Names.HEM))
                .mapToDouble(opening -> opening.length().mm())
                .sum();
        double most = piece.sewnLength(edge.edge()) - opened - LEAST_SEWN;
        if (!(mm > 0 && mm <= most)) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("alter.slit.not-possible", Quantity.millimetres(mm)),
                    piece.where().edge(edge.edge()),
                    mm,
                    Math.max(0, most)));
        }
    }

    private static Piece notched(Piece piece, String seam, double mm) {
        Path drawn = piece.edge(seam).path();
        boolean isDrawnUp = piece.from(seam, Names.HEM) == drawn;
        Position at = drawn.positionAt(isDrawnUp ? mm : drawn.length() - mm);
        return piece.withMark(Notch.on(piece, seam, at, "slit", 1));
    }
}
