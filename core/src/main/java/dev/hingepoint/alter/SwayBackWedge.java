package dev.hingepoint.alter;

import dev.hingepoint.Reason;
import dev.hingepoint.check.Law;
import dev.hingepoint.move.Paper;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Names;
import dev.hingepoint.pattern.Piece;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The sway-back wedge: folded out along a level from centre back to nothing at the side seam; the part below turns up about its point
 * ({@link CentreWedge}).
 *
 * <p>With r the length of the line, the part below turns by 2 atan(w / 2r) and the paper removed is w r / 2; the level at the line
 * becomes longer by w&sup2;/8r a half. On a fold, asked for with {@code keep fold}, the fold stays one straight line. Derived.
 */
final class SwayBackWedge {
    private static final double LARGE_STEP = 2;

    /** Faired over less than this many mm, a bend is still seen. */
    private static final double FAIR = 5;

    private SwayBackWedge() {}

    static Altered alter(Draft draft, Piece back, double wedge, String level, double above, boolean keepFold) {
        CentreWedge recipe = new CentreWedge(back, Names.CENTRE_BACK, wedge, false, level, above);
        Paper cut = recipe.cut(Paper.of(back));
        double reach = recipe.reach(cut);
        Map<String, Object> amounts = new LinkedHashMap<>();
        amounts.put("wedge", wedge);
        amounts.put("at", level);
        amounts.put("above", above);
        amounts.put("method", "wedge");
        List<Law> laws = laws(draft, back, wedge, keepFold);
        Altered altered = Faired.untilLawsHold(
                draft,
                reach,
                shorter ->
                        Altered.of(draft, recipe.trued(cut, shorter), amounts).withLaws(laws));
        if (recipe.step() > LARGE_STEP) {
            altered = altered.withNote("centre back slants where the wedge is folded out, and steps by "
                    + Reason.millimetres(recipe.step()) + ": faired out");
        }
        if (keepFold) {
            altered = altered.withNote("on a straight fold a wedge mostly lifts the hem at centre back");
        }
        return reach >= FAIR
                ? altered
                : altered.withNote("a corner of the " + back.name() + " lies " + Reason.millimetres(reach)
                        + " from the wedge: the seam is faired over so much only");
    }

    private static List<Law> laws(Draft draft, Piece back, double wedge, boolean keepFold) {
        List<Law> laws = SwayBack.commonLaws(draft, back, 0.5, Names.NECKLINE, Names.SHOULDER, Names.ARMHOLE);
        double lengths = keepFold ? 0.1 : 0.3;
        laws.add(Law.changesLength(back.name(), Names.CENTRE_BACK, -wedge, lengths));
        laws.add(Law.keepsLength(back.name(), Names.SIDE_SEAM, lengths));
        back.marks(Dart.class).forEach(dart -> laws.add(Law.keepsLegsEqual(back.name(), dart.name(), 0.01)));
        return laws;
    }
}
