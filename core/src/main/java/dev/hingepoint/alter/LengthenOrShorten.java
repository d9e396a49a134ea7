package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.check.Law;
import dev.hingepoint.curve.Bisection;
import dev.hingepoint.move.Paper;
import dev.hingepoint.move.Step;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoublePredicate;
import java.util.function.ToDoubleFunction;

/**
 * Makes every piece that a line crosses longer or shorter by one amount: {@code lengthen: {by: 30 mm, at: waist}}, {@code shorten: {by: 20 mm, above:
 * hip}}, or, where neither is written, at the line that is drawn {@value #LINE}.
 *
 * <p>{@code at} a level or a drawn line: paper is let in or taken out right above it, and it goes with the paper below. So {@code at: waist} changes the
 * length down to the waist, and the skirt stays as it was. {@code above} a level: half way up to the next level drawn, at one height on all pieces.
 * {@code piece: sleeve} does it on that piece only; without it, a drawn line means the pieces that hang on the centre line or a side seam.
 *
 * <p>Kept: all above the line in its place, all below it in its shape, the width of the paper at every level, the intake of a dart that is crossed. A seam
 * is drawn fair from at most {@value #REACH} mm above to as much below, or as far as it was changed, never past a level. A seam that leans by s loses
 * or gains up to amount (1 - cos s) of what its depth changes by; seams that are sewn together differ as they did. Source: Central Washington University costume text, ch. 17.
 */
final class LengthenOrShorten implements Alteration {
    private static final String LINE = "lengthen or shorten";
    private static final double REACH = 60;

    /** So much of a seam must be left to draw it fair in. */
    private static final double LEAST_REACH = 5;

    /** A seam bends in radians by no more than this from its own way to where it is drawn anew: more would be a jog, not a seam (common practice, no source). */
    private static final double MOST_JOG = StrictMath.toRadians(6);

    private static final double SEAMS = 0.5;

    private final boolean isLonger;

    private LengthenOrShorten(boolean isLonger) {
        this.isLonger = isLonger;
    }

    static LengthenOrShorten lengthen() {
        return new LengthenOrShorten(true);
    }

    static LengthenOrShorten shorten() {
        return new LengthenOrShorten(false);
    }

    @Override
    public String name() {
        return isLonger ? "lengthen" : "shorten";
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("by", "20 mm", "above", "waist");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("by", "at", "above", "piece");
        double amount = options.requiredAmount("by", "by: 30 mm").mm();
        if (!(amount > 0)) {
            throw options.refuse(
                    "alter.length.not-positive", Quantity.millimetres(amount), isLonger ? "shorten" : "lengthen");
        }
        List<LengthLine> lines = lines(draft, options);
        List<LengthChange> changes = changes(lines, isLonger ? amount : -amount, options);
        List<EdgeRef> edges = changes.stream()
                .flatMap(change -> change.edges().stream()
                        .map(edge -> new EdgeRef(change.line().piece().name(), edge)))
                .toList();
        SewnTogether.requireBothSides(
                draft,
                edges,
                isLonger ? Message.of("alter.sewn-together.lengthen") : Message.of("alter.sewn-together.shorten"));
        Draft changed = draft;
        List<Step> steps = new ArrayList<>();
        List<Law> laws = new ArrayList<>();
        for (LengthChange change : changes) {
            Paper paper = change.paper();
            changed = changed.with(paper.piece());
            steps.addAll(paper.steps());
            laws.addAll(change.laws());
        }
        laws.addAll(SewnTogether.keepDifference(draft, edges, SEAMS));
        List<String> names = edges.stream().map(EdgeRef::piece).toList();
        laws.addAll(Law.keepsOthers(draft, names));
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("by", amount);
        amounts.put(options.has("above") ? "above" : "at", place(options));
        options.text("piece").ifPresent(piece -> amounts.put("piece", piece));
        return openings(new Altered(changed, amounts, steps, laws, List.of()), changes);
    }

    /** A zip that the line crosses ends at its notch still, and is longer or shorter. */
    private static Altered openings(Altered altered, List<LengthChange> changes) {
        List<Opening> openings = new ArrayList<>(altered.draft().openings());
        Altered told = altered;
        for (LengthChange change : changes) {
            for (int i = 0; i < openings.size(); i++) {
                Opening now = change.opening(openings.get(i));
                if (!now.equals(openings.get(i))) {
                    told = told.withNote("the opening in " + now.edge() + " is " + now.length() + " long now");
                    openings.set(i, now);
                }
            }
        }
        return told.withDraft(
                altered.draft().with(altered.draft().construction().withOpenings(openings)));
    }

    private static String place(Options options) {
        return options.text("above").or(() -> options.text("at")).orElse(LINE);
    }

    private static Message told(Options options) {
        String place = place(options);
        if (options.has("above")) {
            return Message.of("alter.length.above-level", place);
        }
        return place.equals(LINE)
                ? Message.of("alter.length.at-line", place)
                : Message.of("alter.length.at-level", place);
    }

    private List<LengthLine> lines(Draft draft, Options options) {
        if (options.has("at") && options.has("above")) {
            throw options.refuse("alter.length.at-or-above");
        }
        String place = place(options);
        List<Piece> candidates =
                options.text("piece").map(draft::piece).map(List::of).orElseGet(draft::pieces);
        List<Piece> levelled =
                candidates.stream().filter(piece -> piece.hasLevel(place)).toList();
        if (options.has("above")) {
            double half = least(required(levelled, draft, options), piece -> LengthLine.toLevelAbove(piece, place)) / 2;
            return levelled.stream()
                    .map(piece -> LengthLine.atLevel(piece, place).higher(half))
                    .toList();
        }
        if (!levelled.isEmpty()) {
            return levelled.stream()
                    .map(piece -> LengthLine.atLevel(piece, place))
                    .toList();
        }
        List<Piece> drawn = candidates.stream()
                .filter(piece -> piece.find(DrawnLine.class, place).isPresent())
                .filter(piece -> options.has("piece") || piece.centre().isPresent() || piece.hasEdge(Names.SIDE_SEAM))
                .toList();
        return required(drawn, draft, options).stream()
                .map(piece -> LengthLine.atDrawn(piece, theLine(piece, place)))
                .toList();
    }

    private static List<Piece> required(List<Piece> pieces, Draft draft, Options options) {
        if (pieces.isEmpty()) {
            Message why = options.text("piece")
                    .map(name -> Message.of("alter.length.not-drawn-on-piece", name, place(options)))
                    .orElseGet(() -> Message.of("alter.length.not-drawn", place(options)));
            throw new Refusal(new Reason.Missing(why, Where.UNKNOWN.size(draft.size())));
        }
        return pieces;
    }

    private static DrawnLine theLine(Piece piece, String name) {
        List<DrawnLine> lines = piece.marks(DrawnLine.class)
                .filter(line -> line.name().equals(name))
                .toList();
        if (lines.size() > 1) {
            throw new Refusal(new Reason.Unsound(
                    Message.of("alter.length.several-lines", lines.size()),
                    piece.where().mark(name)));
        }
        return lines.get(0);
    }

    private static <T> double least(List<T> all, ToDoubleFunction<T> value) {
        return all.stream().mapToDouble(value).min().orElseThrow();
    }

    /** On all pieces alike: seams that are sewn together are drawn anew over the same lengths. */
    private static List<LengthChange> changes(List<LengthLine> lines, double by, Options options) {
        lines.forEach(LengthLine::requireClearOfDarts);
        double amount = Math.abs(by);
        double sign = Math.signum(by);
        double room = by > 0 ? Double.POSITIVE_INFINITY : room(lines, options);
        DoublePredicate runsFair = more -> more <= room
                && inPlace(lines, sign * more, options).stream().allMatch(change -> change.jog() <= MOST_JOG);
        if (!runsFair.test(amount)) {
            LengthLine tight = lines.stream()
                    .min(Comparator.comparingDouble(LengthLine::roomAbove))
                    .orElseThrow();
            throw new Refusal(Reason.BeyondLimit.of(
                    by > 0
                            ? Message.of("alter.length.cannot-let-in", told(options))
                            : Message.of("alter.length.cannot-fold-out", told(options)),
                    tight.piece().where(),
                    amount,
                    Bisection.largest(0, Math.min(amount, Math.max(0, room)), runsFair)));
        }
        return inPlace(lines, by, options);
    }

    /** How much paper in mm can be folded out without a level, a corner or half a dart. */
    private static double room(List<LengthLine> lines, Options options) {
        double above = least(lines, LengthLine::roomAbove);
        return options.has("above")
                ? 2 * (Math.min(above, least(lines, LengthLine::roomBelow)) - LEAST_REACH)
                : above - LEAST_REACH;
    }

    private static List<LengthChange> inPlace(List<LengthLine> lines, double by, Options options) {
        double removed = Math.max(0, -by);
        double part = options.has("above") ? removed / 2 : 0;
        double reach = Math.max(REACH, Math.abs(by));
        double above = Math.min(reach, least(lines, LengthLine::seamAbove) - removed + part);
        double below = Math.min(reach, least(lines, LengthLine::seamBelow) - part);
        return lines.stream()
                .map(line -> new LengthChange(
                        part > 0 ? line.higher(-part) : line,
                        by,
                        above,
                        below,
                        told(options).text()))
                .toList();
    }
}
