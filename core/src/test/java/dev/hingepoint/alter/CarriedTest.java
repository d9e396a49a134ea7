package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;

/** Every alteration of the catalogue by a part of its amount: it keeps its own laws, and goes the way that the whole of it goes. */
class CarriedTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    @Provide
    Arbitrary<Alteration> alterations() {
        return Arbitraries.of(Catalogue.all());
    }

    private static Options options(Alteration alteration) {
        return Options.of(new AlterationRequest(alteration.name(), alteration.example()));
    }

    /** How far any outline of one size lies from that of the other, in mm, by JTS. */
    private static double apart(Draft one, Draft other) {
        return one.pieces().stream()
                .mapToDouble(piece ->
                        DiscreteHausdorffDistance.distance(outline(piece), outline(other.piece(piece.name())), 0.2))
                .max()
                .orElse(0);
    }

    private static org.locationtech.jts.geom.Geometry outline(Piece piece) {
        return JtsBridge.polygon(piece.outline().flatten(0.05)).getExteriorRing();
    }

    /** A dress that the whole of it cannot be done on is no sample; where most are none, the property fails. */
    private static Altered whole(Draft before, Alteration alteration) {
        try {
            return Catalogue.checked(before, alteration, options(alteration));
        } catch (Refusal notOnThisDress) {
            Assume.that(false);
            throw notOnThisDress;
        }
    }

    /**
     * The way from nothing to all has no jump: a part of an amount moves no line by more than twice that part of what the whole of it does. A size blend leaves at once its own
     * size's line for the other's, which may bend a little otherwise.
     */
    @Property(seed = "611", tries = 80)
    void aPartGoesNoFartherThanItsPart(
            @ForAll("shapes") Shape shape,
            @ForAll("alterations") Alteration alteration,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double fraction) {
        Draft before = TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40");
        Altered whole = whole(before, alteration);
        Altered part = Catalogue.checked(before, alteration, options(alteration).carriedTo(fraction));
        double all = apart(before, whole.draft());
        double some = apart(before, part.draft());
        assertTrue(
                some <= 2 * fraction * all + 1,
                alteration.name() + " by " + fraction + " moves a line by " + some + ", the whole by " + all);
        assertTrue(all < 1 || apart(part.draft(), whole.draft()) < all + 1);
    }

    @Property(seed = "612", tries = 22)
    void allOfItIsAllOfIt(@ForAll("shapes") Shape shape, @ForAll("alterations") Alteration alteration) {
        Draft before = TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40");
        Altered whole = whole(before, alteration);
        assertEquals(
                whole.draft(),
                Catalogue.checked(before, alteration, options(alteration).carriedTo(1))
                        .draft());
    }

    @Test
    void anAmountIsCarriedAndAChoiceIsNot() {
        Options options = Options.of(
                new AlterationRequest("sway back", Map.of("wedge", "12 mm", "above", "20 mm", "at", "waist")));
        Options third = options.carriedTo(1.0 / 3);
        assertEquals(4, third.amount("wedge").orElseThrow().mm(), 1e-12);
        assertEquals(20, third.length("above").orElseThrow().mm());
        assertEquals("waist", third.text("at").orElseThrow());
        assertEquals(10, third.carried(30), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> options.carriedTo(0));
        assertThrows(IllegalArgumentException.class, () -> options.carriedTo(1.01));
    }
}
