package dev.hingepoint.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Altered;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.curve.Path;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class DrawbacksTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static List<String> of(Draft before, String alteration, Object... options) {
        Map<String, Object> named = new LinkedHashMap<>();
        for (int i = 0; i < options.length; i += 2) {
            named.put(options[i].toString(), options[i + 1]);
        }
        Altered altered = Catalogue.alter(before, new AlterationRequest(alteration, named));
        return Drawbacks.of(before, altered.draft(), altered.steps());
    }

    /** Derived: the part below turns by 2 atan(w / 2r), and what hangs above it is off grain by the tangent of that over 500 mm. */
    @Test
    void aSwayBackWedgePutsTheBackAboveItOffGrain() {
        Draft before =
                TestPatterns.of(TestPatterns.straightBack(225, 1000, 400)).in("40");
        double off = 500 * StrictMath.tan(2 * StrictMath.atan(20 / (2 * 225.0)));
        assertTrue(
                of(before, "sway back", "wedge", "20 mm")
                        .get(0)
                        .startsWith("the part of the back with the neckline is off grain now, by " + Math.round(off)
                                + " mm"),
                of(before, "sway back", "wedge", "20 mm").toString());
    }

    /** Derived: a straight line bent by t in its middle leaves its chord by about half its half length times t. */
    @Test
    void aCentreBackThatIsBentIsTold() {
        Draft before =
                TestPatterns.of(TestPatterns.straightBack(225, 1000, 400)).in("40");
        List<String> told = of(before, "sway back", "wedge", "20 mm");
        double turn = 2 * StrictMath.atan(20 / (2 * 225.0));
        double above = 390;
        double below = 590;
        double off = above * below * StrictMath.sin(turn) / (above + below);
        String sentence = told.stream()
                .filter(one -> one.startsWith("centre back is no longer straight"))
                .findFirst()
                .orElseThrow();
        double said = Double.parseDouble(sentence.replaceAll("[^:]*: ([0-9.]+) mm.*", "$1"));
        assertEquals(off, said, 1.5);
    }

    /** A shift of paper along the grain turns nothing, and what is let in all round stays alike on front and back. */
    @Property(seed = "621", tries = 40)
    void lengtheningCostsNothing(@ForAll("shapes") Shape shape) {
        Draft before = TestPatterns.dress(shape).in("40");
        assertEquals(
                List.of(),
                of(before, "lengthen", "by", "20 mm", "above", "waist").stream()
                        .filter(told -> told.contains("grain") || told.contains("straight"))
                        .toList());
    }

    /** Closing a dart by a turn about its tip: both parts of the seam keep their lengths and meet; nothing is left of the mouth. */
    @Property(seed = "622", tries = 60)
    void aSewnEdgeClosedIsAsLongAsItIsSewn(@ForAll("shapes") Shape shape) {
        for (Piece piece : TestPatterns.dress(shape).in("40").pieces()) {
            Path closed = piece.sewn("side seam").closed();
            assertEquals(piece.sewnLength("side seam"), closed.length(), 1e-6);
            boolean hasDart = piece.marks(EdgeDart.class).findAny().isPresent();
            assertEquals(hasDart ? 1 : 0, closed.equals(piece.edge("side seam").path()) ? 0 : 1);
        }
    }
}
