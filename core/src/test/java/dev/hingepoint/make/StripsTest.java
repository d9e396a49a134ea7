package dev.hingepoint.make;

import static dev.hingepoint.make.Dresses.dress;
import static dev.hingepoint.make.Dresses.length;
import static dev.hingepoint.make.Dresses.sleeveless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.check.Walked;
import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bands and bindings: their length against the edge's, measured with JTS. */
class StripsTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static Draft make(Draft draft, String choice, Map<String, Object> options) {
        return Choices.make(draft, new AlterationRequest(choice, options)).draft();
    }

    /** Common practice, no source; what lies between is reckoned by line. */
    @ParameterizedTest
    @CsvSource({
        "0, 1, 1",
        "0.125, 0.95, 0.95",
        "0.25, 0.9, 0.95",
        "0.375, 0.875, 0.925",
        "0.5, 0.85, 0.9",
        "0.75, 0.8, 0.85",
        "1, 0.75, 0.8",
        "1.5, 0.75, 0.8"
    })
    void aBandIsAsMuchShorterAsItsClothStretches(double stretch, double usual, double wide) {
        assertEquals(usual, Band.ratio(stretch, false), 1e-12);
        assertEquals(wide, Band.ratio(stretch, true), 1e-12);
        assertTrue(Band.ratio(stretch, false) * (1 + stretch) >= 1);
    }

    @Property(seed = "711", tries = 60)
    void aBandIsItsShareOfTheEdgeAndReachesRoundIt(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 0.05, max = 1.5) double stretch) {
        Draft before = dress(shape);
        String percent = Math.round(100 * stretch) + " %";
        double written = Math.round(100 * stretch) / 100.0;
        Draft after = make(before, "band", Map.of("edge", "neckline", "stretch", percent));
        double edge = length(before, "front", "neckline") + length(before, "back", "neckline");
        double band = length(after, "neckline band", "joined edge");
        assertEquals(edge * Band.ratio(written, false), band, 0.02);
        assertTrue(band * (1 + written) >= edge - 0.02);
        for (String piece : List.of("front", "back")) {
            Edge bound = after.piece(piece).edge("neckline");
            assertEquals(Edge.Kind.BOUND, bound.kind());
            assertEquals(before.piece(piece).edge("neckline").path(), bound.path());
            assertEquals(Length.ZERO, after.allowances().of(after.piece(piece), bound));
        }
        assertEquals(
                Cutting.How.ON_FOLD,
                after.piece("neckline band").cuttings().get(0).how());
    }

    @Property(seed = "712", tries = 60)
    void theQuartersMeet(@ForAll("shapes") Shape shape) {
        Draft after = make(dress(shape), "band", Map.of("edge", "neckline", "stretch", "50 %"));
        Walked walked = SeamWalk.all(after).stream()
                .filter(seam -> seam.seam().to().get(0).piece().equals("neckline band"))
                .findFirst()
                .orElseThrow();
        assertTrue(walked.lengthMatches());
        assertEquals(1, walked.notches().size());
        assertEquals(walked.joinLength() / 2, walked.notches().get(0).onJoin(), 1e-6);
        assertEquals(walked.toLength() / 2, walked.notches().get(0).onTo(), 1e-6);
    }

    @Property(seed = "713", tries = 40)
    void aBindingGoesRoundAnArmholeInQuarters(@ForAll("shapes") Shape shape) {
        Draft before = sleeveless(shape);
        Draft after = make(before, "binding", Map.of("edge", "armhole", "on", "knit"));
        double edge = length(before, "front", "armhole") + length(before, "back", "armhole");
        Piece strip = after.piece("armhole binding");
        assertEquals(0.95 * edge, strip.edge("joined edge").path().length(), 0.02);
        assertEquals(3, strip.marks(Notch.class).count());
        assertEquals(Cutting.How.PAIR, strip.cuttings().get(0).how());
        assertTrue(SeamWalk.all(after).stream().allMatch(seam -> seam.lengthMatches()));
    }

    /** Derived: half of this path is curved. */
    @Test
    void onTheBiasACurveTakesTwoPerCentAndAStraightNothing() {
        double handle = 100 * 4 / 3.0 * StrictMath.tan(Math.PI / 8);
        Path round = Path.of(
                new Cubic(new Point(100, 0), new Point(100, -handle), new Point(handle, -100), new Point(0, -100)));
        assertEquals(1, Binding.curvedShare(round), 1e-9);
        assertEquals(0, Binding.curvedShare(Path.through(new Point(0, 0), new Point(10, 0))), 1e-9);
        double long0 = round.length();
        Path both = round.then(Path.through(new Point(0, -100), new Point(-long0, -100)));
        assertEquals(0.5, Binding.curvedShare(both), 1e-9);
        Draft draft = dress(Dresses.SHAPE);
        Draft bound = make(draft, "binding", Map.of("edge", "sleeve/hem"));
        assertEquals(length(draft, "sleeve", "hem"), length(bound, "sleeve hem binding", "joined edge"), 1e-6);
    }

    @Test
    void whatCannotBeBoundIsRefused() {
        Draft draft = dress(Dresses.SHAPE);
        Refusal which = assertThrows(Refusal.class, () -> make(draft, "binding", Map.of("edge", "hem")));
        assertTrue(which.getMessage().contains("sleeve/hem"), which.getMessage());
        assertThrows(Refusal.class, () -> make(draft, "binding", Map.of("edge", "armhole")));
        assertThrows(Refusal.class, () -> make(draft, "band", Map.of("edge", "neckline", "stretch", "much")));
        assertThrows(Refusal.class, () -> make(draft, "band", Map.of("edge", "neckline", "width", "400 mm")));
        Draft bound = make(draft, "binding", Map.of("edge", "neckline"));
        assertThrows(Refusal.class, () -> make(bound, "binding", Map.of("edge", "neckline")));
        assertThrows(Refusal.class, () -> make(bound, "facing", Map.of("edge", "neckline")));
    }
}
