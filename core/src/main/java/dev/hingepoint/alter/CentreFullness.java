package dev.hingepoint.alter;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.alter.SideSeamBlend.Joint;
import dev.hingepoint.check.Law;
import dev.hingepoint.move.Paper;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Gives a full seat, takes from a flat one, or gives a large abdomen, the length at the centre line and the width across that it needs:
 * {@code full seat: {wedge: 20 mm, width: 10 mm}}, {@code flat seat}, {@code large abdomen}.
 *
 * <p>Kept: neckline, shoulder and armhole in their places, the side seam's sewn length and its notches, every girth down to the waist,
 * every other piece. The centre line is longer, or shorter, by the wedge; from the level of the wedge down the piece is wider, or
 * narrower, by the width.
 *
 * <p>The wedge lies along the hip, for an abdomen along the high hip where one is drawn, and runs to nothing at the side seam ({@link
 * CentreWedge}). The width, for each half piece, goes where the body is: all to this piece, at its side seam, from nothing at the waist
 * and straight on to the hem; by default half of the wedge, so that the hip grows by as much round the body as the centre grows down it
 * (common practice, no source). The seam is as long as it was, so that it still walks with its neighbour, which stays.
 *
 * <p>A centre line on the fold stays one straight line on grain, so the length that the body takes up over its curve is there as a hem
 * that hangs lower at the centre by the wedge, where an unaltered dress would ride up; a seam, which can be curved, fits closer, and a
 * note says so.
 *
 * <p>Amounts: 6 to 30 mm is usual (common practice), outside a note says so; negative ones are refused.
 */
final class CentreFullness implements Alteration {
    private static final double USUAL_LEAST = 6;
    private static final double USUAL_MOST = 30;

    private final String name;
    private final String centre;
    private final boolean opens;
    private final List<String> levels;

    private CentreFullness(String name, String centre, boolean opens, String... levels) {
        this.name = name;
        this.centre = centre;
        this.opens = opens;
        this.levels = List.of(levels);
    }

    static Alteration fullSeat() {
        return new CentreFullness("full seat", Names.CENTRE_BACK, true, Names.HIP);
    }

    static Alteration flatSeat() {
        return new CentreFullness("flat seat", Names.CENTRE_BACK, false, Names.HIP);
    }

    static Alteration largeAbdomen() {
        return new CentreFullness("large abdomen", Names.CENTRE_FRONT, true, Names.HIGH_HIP, Names.HIP);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Map<String, Object> example() {
        return Map.of("wedge", "15 mm");
    }

    @Override
    public Altered alter(Draft draft, Options options) {
        options.knowing("wedge", "width", "at", "above");
        double wedge = options.requiredAmount("wedge", "wedge: 15 mm").mm();
        double width = options.amount("width").map(length -> length.mm()).orElse(wedge / 2);
        double above = options.length("above").map(length -> length.mm()).orElse(0.0);
        if (!(wedge > 0) || width < 0) {
            throw centre.equals(Names.CENTRE_BACK)
                    ? options.refuse("alter.centre-fullness.not-positive-seat", opens ? "flat seat" : "full seat")
                    : options.refuse("alter.centre-fullness.not-positive");
        }
        Piece piece = piece(draft);
        String level = options.text("at").orElseGet(() -> level(piece));
        if (!isBelow(piece, level, Names.WAIST)) {
            throw options.refuse("alter.centre-fullness.not-below-waist", level);
        }
        Altered altered = LargestAmount.orRefusal(
                draft,
                wedge,
                amount -> width == 0 || options.has("width")
                        ? altered(draft, piece, amount, width, level, above)
                        : altered(draft, piece, amount, amount / 2, level, above));
        return notes(altered, piece, wedge, width, level);
    }

    private Altered altered(Draft draft, Piece piece, double wedge, double width, String level, double above) {
        Paper wide = width == 0 ? Paper.of(piece) : widened(piece, width, level);
        CentreWedge recipe = new CentreWedge(wide.piece(), centre, wedge, opens, level, above);
        Paper cut = recipe.cut(wide);
        List<Law> laws = laws(draft, piece, recipe.longer(), opens ? width : -width, level);
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("wedge", wedge);
        amounts.put("width", width);
        amounts.put("at", level);
        amounts.put("above", above);
        return Faired.untilLawsHold(draft, recipe.reach(cut), reach -> {
            Paper trued = recipe.trued(cut, reach);
            Piece notched = PairedNotches.whereTheyWere(piece, trued.piece(), Names.SIDE_SEAM);
            return Altered.of(draft, trued.marked(notched), amounts).withLaws(laws);
        });
    }

    /** Drawn out, or in, at the side seam from nothing at the waist, the seam as long as it was. */
    private Paper widened(Piece piece, double width, String level) {
        double out = opens ? width : -width;
        SideSeamBlend blend =
                new SideSeamBlend(piece, List.of(new Joint(Names.WAIST, piece, 0), new Joint(level, piece, out)));
        String caption = "Draw the side seam of the " + piece.name() + (opens ? " out" : " in") + " by "
                + Reason.millimetres(width) + " from the " + level
                + " down, from nothing at the waist; it keeps its length";
        return Paper.of(piece).then(blend.redraw(caption, -blend.growth()));
    }

    private Piece piece(Draft draft) {
        return draft.piecesWithEdges(centre, Names.SIDE_SEAM).stream()
                .findFirst()
                .orElseThrow(() -> new Refusal(new Reason.Missing(
                        Message.of("alter.centre-fullness.needs-edges", name, centre),
                        Where.UNKNOWN.size(draft.size()))));
    }

    private String level(Piece piece) {
        return levels.stream()
                .filter(piece::hasLevel)
                .findFirst()
                .orElseThrow(() -> new Refusal(new Reason.Missing(
                        Message.of("alter.centre-fullness.needs-level", name, levels.get(levels.size() - 1)),
                        piece.where())));
    }

    private static boolean isBelow(Piece piece, String level, String other) {
        return depth(piece, level) > depth(piece, other);
    }

    private static double depth(Piece piece, String level) {
        return piece.levelFrame(level)
                .origin()
                .minus(piece.levelFrame(Names.WAIST).origin())
                .dot(piece.grain().down());
    }

    private List<Law> laws(Draft draft, Piece piece, double longer, double wider, String level) {
        boolean onFold = piece.edge(centre).kind() == Edge.Kind.FOLD;
        double lengths = onFold ? 0.1 : 0.3;
        List<Law> laws = new ArrayList<>();
        Stream.of(Names.NECKLINE, Names.SHOULDER, Names.ARMHOLE)
                .filter(piece::hasEdge)
                .forEach(edge -> laws.add(Law.keepsPlace(piece.name(), edge)));
        laws.add(Law.changesLength(piece.name(), centre, longer, lengths));
        laws.add(Law.keepsLength(piece.name(), Names.SIDE_SEAM, lengths));
        piece.marks(Level.class)
                .map(Level::name)
                .sorted(Comparator.comparingDouble(drawn -> depth(piece, drawn)))
                .forEach(drawn -> {
                    if (!isBelow(piece, level, drawn)) {
                        laws.add(Law.changesWidth(piece.name(), drawn, wider, 0.5));
                    } else if (wider == 0 || !isBelow(piece, drawn, Names.WAIST)) {
                        laws.add(Law.keepsWidth(piece.name(), drawn, 0.5));
                    }
                });
        piece.marks(Dart.class).forEach(dart -> laws.add(Law.keepsLegsEqual(piece.name(), dart.name(), 0.01)));
        laws.addAll(Law.keepsOthers(draft, List.of(piece.name())));
        return laws;
    }

    private Altered notes(Altered altered, Piece piece, double wedge, double width, String level) {
        Altered told = altered.withNote(Reason.millimetres(width) + " each half " + piece.name() + " = "
                + Reason.millimetres(2 * width) + " round the body " + (opens ? "wider" : "narrower") + " from the "
                + level + " down; the side seam is as long as it was");
        if (piece.edge(centre).kind() == Edge.Kind.FOLD) {
            told = told.withNote(centre + " stays a straight fold, so the hem hangs "
                    + Reason.millimetres(wedge) + (opens ? " lower" : " higher")
                    + " there on the table, and level on the body; a seam at " + centre + " would fit closer");
        }
        if (wedge < USUAL_LEAST || wedge > USUAL_MOST) {
            told = told.withNote(
                    "a wedge of " + Reason.millimetres(wedge) + " is unusual: 6 to 30 mm is common; sew a toile first");
        }
        return told;
    }
}
