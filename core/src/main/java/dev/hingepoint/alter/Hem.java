package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Makes the skirt as long as is wished, level all round: {@code hem: {length: 950 mm}} from the back neck down the centre back, {@code hem: {to: knee}} from
 * the body's {@code waist to knee}, with {@code below: 50 mm} or {@code above: 50 mm} where the hem is to lie beside it, or {@code hem: {by: -40 mm}}.
 *
 * <p>Every seam that ends at the hem of a piece on the body changes by one length, so front and back stay level and walk; the hem keeps its angle to each.
 * Kept: all else. What lies below a hem that is cut off falls off with it. The hem sweep is held against a {@linkplain Stride stride}; {@code slit: 250 mm} opens
 * a seam from the hem up.
 */
final class Hem implements Alteration {

    /** So much of the shortest seam must be left. */
    private static final double LEAST_LEFT = 10;

    @Override
    public String name() {
        return "hem";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("by", "-40 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("by", "length", "to", "below", "above", "stride", "slit", "slit in");
        List<Piece> pieces = pieces(draft);
        double by = options.carried(by(draft, pieces, options));
        List<HemLine> lines =
                pieces.stream().map(piece -> new HemLine(piece, by)).toList();
        List<EdgeRef> seams = lines.stream()
                .flatMap(line -> line.seams().stream()
                        .map(seam -> new EdgeRef(line.piece().name(), seam)))
                .toList();
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("by", by);
        options.text("to").ifPresent(to -> amounts.put("to", to));
        Altered altered = new Altered(draft, amounts, List.of(), List.of(), List.of());
        if (Math.abs(by) > Tolerance.LAST_DECIMAL) {
            SewnTogether.requireBothSides(draft, seams, Message.of("alter.sewn-together.hem"));
            requireRoom(draft, lines, by);
            altered = moved(altered, lines).withLaws(SewnTogether.keepDifference(draft, seams, Tolerance.COINCIDENT));
        }
        List<String> names = pieces.stream().map(Piece::name).toList();
        altered = altered.withLaws(draft.pieces().stream()
                .filter(piece -> !names.contains(piece.name()))
                .map(Law::keepsPiece)
                .toList());
        List<Piece> now = names.stream().map(altered.draft()::piece).toList();
        Altered done = options.has("slit")
                ? Slit.in(altered, now, options.length("slit").orElseThrow().mm(), options)
                : altered;
        return Stride.note(done.draft(), now, options).map(done::withNote).orElse(done);
    }

    /** The pieces that hang on the centre line or a side seam: not a sleeve. */
    private static List<Piece> pieces(Draft draft) {
        List<Piece> pieces = draft.piecesWithEdges(Names.HEM).stream()
                .filter(piece -> piece.centre().isPresent() || piece.hasEdge(Names.SIDE_SEAM))
                .toList();
        if (pieces.isEmpty()) {
            throw new Refusal(
                    new Reason.Missing(Message.of("alter.hem.needs-edges"), Where.UNKNOWN.size(draft.size())));
        }
        return pieces;
    }

    private double by(Draft draft, List<Piece> pieces, Options options) {
        long ways = List.of("by", "length", "to").stream().filter(options::has).count();
        if (ways > 1 || ways == 0 && !options.has("slit")) {
            throw options.refuse("alter.hem.needs-one-amount");
        }
        if (options.has("length")) {
            return options.length("length").orElseThrow().mm() - centreBack(draft, options);
        }
        if (options.has("to")) {
            return toPlace(draft, pieces, options);
        }
        return options.length("by").map(Length::mm).orElse(0.0);
    }

    /** From the back neck to the hem, over whatever seam lies between. */
    private static double centreBack(Draft draft, Options options) {
        List<Piece> backs = draft.piecesWithEdges(Names.CENTRE_BACK).stream()
                .filter(piece -> piece.widths() > 0)
                .toList();
        for (String end : List.of(Names.NECKLINE, Names.HEM)) {
            if (backs.stream().noneMatch(piece -> piece.hasEdge(end))) {
                throw options.refuse("alter.hem.no-back-length", end);
            }
        }
        return backs.stream()
                .mapToDouble(piece -> piece.sewnLength(Names.CENTRE_BACK))
                .sum();
    }

    /** The tape runs down the side from the waist, and so does the pattern's length that it is held against. */
    private static double toPlace(Draft draft, List<Piece> pieces, Options options) {
        String measure = "waist to " + options.text("to").orElseThrow();
        double wanted = options.body(draft, measure)
                .orElseThrow(() -> options.refuse("alter.hem.body-not-known", measure))
                .mm();
        double beside = options.length("below").map(Length::mm).orElse(0.0)
                - options.length("above").map(Length::mm).orElse(0.0);
        return wanted + beside - belowWaist(draft, pieces, options);
    }

    /** How far in mm along the side seam the hem lies below the waist. */
    private static double belowWaist(Draft draft, List<Piece> pieces, Options options) {
        return Stride.belowWaist(pieces).orElseThrow(() -> options.refuse("alter.hem.no-waist"));
    }

    private static void requireRoom(Draft draft, List<HemLine> lines, double by) {
        for (HemLine line : lines) {
            double opened = draft.openings().stream()
                    .filter(opening ->
                            opening.edge().piece().equals(line.piece().name())
                                    && line.seams().contains(opening.edge().edge()))
                    .filter(opening -> !opening.from().equals(Names.HEM))
                    .mapToDouble(
                            opening -> line.piece().sewnLength(opening.edge().edge())
                                    - opening.length().mm())
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
            double most = Math.min(line.room(), opened) - LEAST_LEFT;
            if (-by > most) {
                throw new Refusal(Reason.BeyondLimit.of(
                        Message.of("alter.hem.something-ends-there", Quantity.millimetres(-by)),
                        line.piece().where().edge(Names.HEM),
                        -by,
                        Math.max(0, most)));
            }
        }
    }

    private static Altered moved(Altered altered, List<HemLine> lines) {
        Draft changed = altered.draft();
        List<Step> steps = new ArrayList<>();
        List<Law> laws = new ArrayList<>();
        for (HemLine line : lines) {
            Paper paper = line.paper();
            changed = changed.with(paper.piece());
            steps.addAll(paper.steps());
            laws.addAll(line.laws(paper.piece()));
        }
        List<String> levels = changed.levels();
        List<Opening> openings = new ArrayList<>();
        for (Opening opening : changed.openings()) {
            boolean isAtHem = opening.from().equals(Names.HEM)
                    && lines.stream()
                            .anyMatch(line ->
                                    line.piece().name().equals(opening.edge().piece()));
            double length = opening.length().mm() + (isAtHem ? lines.get(0).by() : 0);
            if (length > 0) {
                openings.add(opening.withLength(length));
            }
        }
        List<String> gone = altered.draft().levels().stream()
                .filter(level -> !levels.contains(level))
                .map(level -> "the " + level + " falls off with what is cut off, and no width is told there any more")
                .toList();
        return new Altered(
                changed.with(changed.construction().withOpenings(openings)), altered.amounts(), steps, laws, gone);
    }
}
