package dev.hingepoint.fit;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.check.Measurements;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.BodyChart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Whether one can get into a garment. The neckline, stretched as its finish stretches, and twice the opening must go round the head; the
 * narrowest girth that no opening opens, stretched as the cloth stretches, must pass the bust or the hips, whichever is less. Common practice, no source.
 */
public final class GettingIn {
    private GettingIn() {}

    /**
     * One narrow place.
     *
     * @param place the neckline, or a level
     * @param opens how far in mm it opens
     * @param passes what must pass through it
     * @param needed how much that measures in mm
     * @param opening the opening in mm from the neckline that would do; empty where none is needed, or none can be told
     */
    public record Narrow(String place, double opens, String passes, double needed, OptionalDouble opening) {
        public boolean isWideEnough() {
            return opens >= needed;
        }

        /** In plain words. */
        public Message message() {
            Message opened = Message.of("fit.getting-in.opens", place, whole(opens), passes, whole(needed));
            if (isWideEnough()) {
                return opened;
            }
            return opening.isPresent()
                    ? Message.of("fit.getting-in.needs-opening", opened, whole(Math.ceil(opening.getAsDouble())))
                    : Message.of("fit.getting-in.too-narrow", opened);
        }

        /** The message in English. */
        public String sentence() {
            return message().text();
        }

        private static Quantity whole(double mm) {
            return Quantity.millimetres(Math.rint(mm));
        }
    }

    /**
     * The neckline, and the narrowest level that is not opened; what the pieces do not draw is left out. Of a drawing without front or back, such
     * as a block, nothing can be told.
     */
    public static List<Narrow> into(Draft draft, Body body, FitRules rules) {
        double stretch =
                body.cloth().map(Cloth::across).orElse(draft.pattern().card().stretchAcross());
        return into(draft, body, rules, piece -> stretch);
    }

    /** The same for a garment of several cloths, each piece with the stretch of its own, as a fraction. */
    public static List<Narrow> into(Draft draft, Body body, FitRules rules, ToDoubleFunction<Piece> stretch) {
        if (draft.piecesWithEdges("centre front").isEmpty()
                || draft.piecesWithEdges("centre back").isEmpty()) {
            return List.of();
        }
        List<Narrow> narrow = new ArrayList<>();
        neckline(draft, body, rules, stretch).ifPresent(narrow::add);
        narrowestLevel(draft, body, stretch).ifPresent(narrow::add);
        return narrow;
    }

    private static Optional<Narrow> neckline(Draft draft, Body body, FitRules rules, ToDoubleFunction<Piece> stretch) {
        if (Measurements.girth(draft, "neckline").isEmpty()) {
            return Optional.empty();
        }
        // a facing or a turned edge does not stretch; a band or binding of the garment's own cloth does
        boolean isBound = draft.piecesWithEdges("neckline").stream()
                .allMatch(piece -> piece.edge("neckline").kind() == Edge.Kind.BOUND);
        double stretched = draft.piecesWithEdges("neckline").stream()
                .mapToDouble(piece -> piece.widths()
                        * piece.sewnLength("neckline")
                        * (1 + (isBound ? stretch.applyAsDouble(piece) : 0)))
                .sum();
        double opened = openings(draft).stream()
                .mapToDouble(opening -> opening.length().mm())
                .sum();
        double head = body.mm(Measure.HEAD_GIRTH).orElse(rules.headGirth());
        double opens = stretched + 2 * opened;
        OptionalDouble would = opens >= head ? OptionalDouble.empty() : OptionalDouble.of((head - stretched) / 2);
        return Optional.of(new Narrow("neckline", opens, "a head", head, would));
    }

    /** Openings from the neckline, and what they run on into below a yoke, on pieces that are there. */
    private static List<Opening> openings(Draft draft) {
        return draft.openings().stream()
                .filter(opening -> draft.find(opening.edge().piece()).isPresent())
                .filter(opening -> opening.from().equals("neckline") || runsOn(draft, opening))
                .toList();
    }

    private static boolean runsOn(Draft draft, Opening opening) {
        EdgeRef from = new EdgeRef(opening.edge().piece(), opening.from());
        return draft.openings().stream()
                .filter(above -> above.from().equals("neckline"))
                .filter(above -> above.edge().edge().equals(opening.edge().edge()))
                .map(above -> new EdgeRef(above.edge().piece(), opening.from()))
                .anyMatch(above -> draft.seams().stream().anyMatch(seam -> seam.joins(above) && seam.joins(from)));
    }

    /** Whether a level, were it {@code girth} mm round, could still be passed; one that is opened always can. */
    static boolean couldPass(Draft draft, Body body, String level, double girth) {
        double stretch =
                body.cloth().map(Cloth::across).orElse(draft.pattern().card().stretchAcross());
        OptionalDouble bust = body.mm(Measure.FULL_BUST);
        OptionalDouble hip = body.mm(Measure.HIP);
        return bust.isEmpty()
                || hip.isEmpty()
                || isOpened(draft, level)
                || girth * (1 + stretch) >= Math.min(bust.getAsDouble(), hip.getAsDouble());
    }

    private static Optional<Narrow> narrowestLevel(Draft draft, Body body, ToDoubleFunction<Piece> stretch) {
        OptionalDouble bust = body.mm(Measure.FULL_BUST);
        OptionalDouble hip = body.mm(Measure.HIP);
        if (bust.isEmpty() || hip.isEmpty()) {
            return Optional.empty();
        }
        boolean overBust = bust.getAsDouble() <= hip.getAsDouble();
        double passing = Math.min(bust.getAsDouble(), hip.getAsDouble());
        return draft.levels().stream()
                .filter(level -> BodyChart.column(level).isPresent())
                .filter(level -> !isOpened(draft, level))
                .min(Comparator.comparingDouble(level -> stretched(draft, level, stretch)))
                .map(level -> {
                    double opens = stretched(draft, level, stretch);
                    return new Narrow(
                            level,
                            opens,
                            overBust ? "a bust" : "hips",
                            passing,
                            opens >= passing
                                    ? OptionalDouble.empty()
                                    : openingPast(draft, level, passing * draft.girth(level) / opens));
                });
    }

    /** Round the body at a level, each piece stretched as its cloth stretches. */
    private static double stretched(Draft draft, String level, ToDoubleFunction<Piece> stretch) {
        return draft.pieces().stream()
                .filter(piece -> piece.hasLevel(level))
                .mapToDouble(piece -> piece.widths() * piece.width(level) * (1 + stretch.applyAsDouble(piece)))
                .sum();
    }

    private static boolean isOpened(Draft draft, String level) {
        return openings(draft).stream()
                .anyMatch(opening ->
                        from(draft.piece(opening.edge().piece()), opening.edge().edge(), opening.from(), level).stream()
                                .anyMatch(along -> along <= opening.length().mm()));
    }

    private static OptionalDouble fromNeckline(Piece piece, String edge, String level) {
        return from(piece, edge, "neckline", level);
    }

    /** How far in mm below its end at a neighbour a level meets an edge. */
    private static OptionalDouble from(Piece piece, String edge, String neighbour, String level) {
        boolean startsThere = piece.hasEdge(edge)
                && piece.hasLevel(level)
                && (piece.before(edge).name().equals(neighbour)
                        || piece.after(edge).name().equals(neighbour));
        if (!startsThere) {
            return OptionalDouble.empty();
        }
        Path down = piece.from(edge, neighbour);
        Path drawn = piece.levelFrame(level).path();
        for (Point end : List.of(drawn.start(), drawn.end())) {
            double along = down.distanceAlong(down.nearest(end));
            if (down.at(along).isCloseTo(end, 1)) {
                return OptionalDouble.of(along);
            }
        }
        return OptionalDouble.empty();
    }

    /** How long an opening down the centre back must be to end where the garment is wide enough. */
    private static OptionalDouble openingPast(Draft draft, String level, double needed) {
        return draft.piecesWithEdges("centre back", "neckline").stream()
                .findFirst()
                .map(back -> {
                    double at = fromNeckline(back, "centre back", level).orElse(0);
                    double girth = draft.girth(level);
                    double wide = back.sewnLength("centre back");
                    for (String lower : draft.levels()) {
                        OptionalDouble along = fromNeckline(back, "centre back", lower);
                        if (along.isPresent() && along.getAsDouble() > at && draft.girth(lower) >= needed) {
                            double part = (needed - girth) / (draft.girth(lower) - girth);
                            wide = Math.min(wide, at + part * (along.getAsDouble() - at));
                        }
                    }
                    return OptionalDouble.of(wide);
                })
                .orElse(OptionalDouble.empty());
    }
}
