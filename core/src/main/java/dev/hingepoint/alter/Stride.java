package dev.hingepoint.alter;

import dev.hingepoint.Reason;
import dev.hingepoint.check.Measurements;
import dev.hingepoint.curve.Path;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether one can walk in a skirt. A stride asks for a hem sweep of {@value #STRIDE} mm at mid-calf, {@value #KNEE_TO_CALF} mm below the knee, and for as
 * much less as the hem lies nearer to the waist: the legs part in proportion. Where the sweep is less, a slit is offered that ends where it is enough.
 * Common practice, no source; a cloth that the pattern needs to stretch gives, and is not asked.
 */
final class Stride {
    private static final double STRIDE = 1050;

    /** For a body that was not measured. */
    private static final double WAIST_TO_KNEE = 590;

    private static final double KNEE_TO_CALF = 200;

    /** Slits are as long as a tape is read. */
    private static final double WHOLE = 10;

    private Stride() {}

    /** How far in mm along the side seam the hem lies below the waist; empty where no piece draws both. */
    static OptionalDouble belowWaist(List<Piece> pieces) {
        return pieces.stream()
                .filter(piece -> piece.hasEdge(Names.SIDE_SEAM) && piece.hasLevel(Names.WAIST))
                .mapToDouble(piece -> {
                    Path side = piece.downwards(Names.SIDE_SEAM);
                    return side.length()
                            - side.distanceAlong(
                                    side.nearest(piece.levelFrame(Names.WAIST).outerEnd()));
                })
                .min();
    }

    /**
     * What to say of a hem, with what is open at it already.
     *
     * @param pieces those on the body that end at the hem
     */
    static Optional<String> note(Draft draft, List<Piece> pieces, Options options) {
        Optional<Length> asked = options.length("stride");
        OptionalDouble below = belowWaist(pieces);
        Double sweep = Measurements.of(draft).get("hem sweep");
        if (sweep == null || asked.isEmpty() && (draft.pattern().card().isKnit() || below.isEmpty())) {
            return Optional.empty();
        }
        double calf = KNEE_TO_CALF
                + options.body(draft, "waist to knee").map(Length::mm).orElse(WAIST_TO_KNEE);
        double needed = asked.map(Length::mm).orElseGet(() -> STRIDE * Math.min(1, below.orElseThrow() / calf));
        double slit = below.isEmpty() ? 0 : WHOLE * Math.ceil(below.getAsDouble() * (1 - sweep / needed) / WHOLE);
        boolean isOpen = draft.openings().stream()
                .anyMatch(opening ->
                        opening.from().equals(Names.HEM) && opening.length().mm() >= slit);
        if (sweep >= needed || isOpen) {
            return Optional.empty();
        }
        String offer = slit > 0 ? "slit: " + Reason.millimetres(slit) : "slit: with its length";
        return Optional.of("the hem sweep is " + Reason.millimetres(Math.rint(sweep)) + " round, and a stride asks for "
                + Reason.millimetres(Math.rint(needed)) + " there: write " + offer
                + " for a slit from the hem up, or widen the skirt at the side seams");
    }
}
