package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Path;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Every "afterwards" of the hip blend on random dresses. */
class HipBlendTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    @Provide
    Arbitrary<String> sizes() {
        return Arbitraries.of(TestPatterns.SIZES);
    }

    private static AlterationRequest request(Object... options) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < options.length; i += 2) {
            map.put((String) options[i], options[i + 1]);
        }
        return new AlterationRequest("hip blend", map);
    }

    @Property(seed = "121", tries = 120)
    void widthsComeFromTheNamedSizeAndAllElseStays(
            @ForAll("shapes") Shape shape, @ForAll("sizes") String waist, @ForAll("sizes") String hip) {
        Draft before = TestPatterns.dress(shape).in("40");
        Draft after =
                Catalogue.alter(before, request("waist", waist, "hip", hip)).draft();
        for (String name : List.of("front", "back")) {
            Piece old = before.piece(name);
            Piece piece = after.piece(name);
            Piece atWaist = before.pattern().in(waist).piece(name);
            Piece atHip = before.pattern().in(hip).piece(name);
            assertEquals(atWaist.width("waist"), piece.width("waist"), 0.1);
            assertEquals(atHip.width("hip"), piece.width("hip"), 0.1);
            assertEquals(old.width("bust"), piece.width("bust"), 1e-6);
            for (String edge : List.of("neckline", "shoulder", "armhole")) {
                assertEquals(old.edge(edge), piece.edge(edge));
            }
            assertEquals(0, newCorner(piece, List.of(old, atWaist, atHip)), StrictMath.toRadians(0.1));
            assertEquals(hemWidth(atHip), hemWidth(piece), 0.1);
        }
        assertEquals(
                Measured.sewn(before.piece("front"), "side seam") - Measured.sewn(before.piece("back"), "side seam"),
                Measured.sewn(after.piece("front"), "side seam") - Measured.sewn(after.piece("back"), "side seam"),
                0.5);
    }

    private static double newCorner(Piece piece, List<Piece> parents) {
        double had = parents.stream().mapToDouble(HipBlendTest::sharpest).max().orElseThrow();
        return Math.max(0, sharpest(piece) - had);
    }

    private static double sharpest(Piece piece) {
        Path side = piece.edge("side seam").path();
        double sharpest = 0;
        for (int i = 1; i < side.segments().size(); i++) {
            sharpest = Math.max(
                    sharpest,
                    Math.abs(side.segments()
                            .get(i - 1)
                            .tangent(1)
                            .angleTo(side.segments().get(i).tangent(0))));
        }
        return sharpest;
    }

    /** The distance of the side corner of the hem from the centre line. */
    private static double hemWidth(Piece piece) {
        Path centre = piece.centre().orElseThrow().path();
        Path side = piece.downwards("side seam");
        return Math.abs(centre.startTangent().cross(side.end().minus(centre.start())));
    }

    @Property(seed = "122", tries = 100)
    void byAmountEachOfFourEdgesTakesAQuarter(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = -40, max = 60) double amount) {
        String text = (amount < 0 ? "" : "+") + amount + " mm";
        Draft before = TestPatterns.dress(shape).in("40");
        Draft after = Catalogue.alter(before, request("hip", text)).draft();
        assertEquals(before.girth("hip") + amount, after.girth("hip"), 0.4);
        assertEquals(before.girth("waist"), after.girth("waist"), 0.4);
        for (String name : List.of("front", "back")) {
            assertEquals(
                    before.piece(name).width("hip") + amount / 4,
                    after.piece(name).width("hip"),
                    0.1);
        }
    }

    /** For a constant gap the blend is A + gap smoothstep, so it lies between both lines (derived). */
    @Property(seed = "123", tries = 80)
    void theBlendLiesBetweenBothLines(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 5, max = 60) double amount) {
        Draft before = TestPatterns.dress(shape).in("40");
        Piece old = before.piece("back");
        Piece back = Catalogue.alter(before, request("hip", "+" + amount + " mm"))
                .draft()
                .piece("back");
        double gap = amount / 4;
        Path now = back.downwards("side seam");
        Path was = old.downwards("side seam");
        double from = now.distanceAlong(now.nearest(back.levelFrame("waist").outerEnd()));
        double to = now.distanceAlong(now.nearest(back.levelFrame("hip").outerEnd()));
        var outwards = old.levelFrame("hip").outwards();
        for (double part = 0; part <= 1; part += 0.05) {
            var point = now.at(from + part * (to - from));
            double out = was.crossings(point, outwards).stream()
                    .mapToDouble(position -> point.minus(was.at(position)).dot(outwards))
                    .filter(distance -> Math.abs(distance) <= gap + 1)
                    .findFirst()
                    .orElseThrow();
            assertTrue(out >= -0.11 && out <= gap + 0.11, out + " is not between 0 and " + gap);
        }
    }

    @Property(seed = "124", tries = 60)
    void atMostOneInflectionMoreThanTheParents(@ForAll("shapes") Shape shape) {
        Draft before = TestPatterns.dress(shape).in("40");
        Piece back = Catalogue.alter(before, request("hip", "44")).draft().piece("back");
        int parents = Math.max(
                inflections(before.piece("back")),
                inflections(before.pattern().in("44").piece("back")));
        assertTrue(inflections(back) <= parents + 1);
    }

    private static int inflections(Piece piece) {
        return piece.edge("side seam").path().segments().stream()
                .filter(Cubic.class::isInstance)
                .mapToInt(segment -> ((Cubic) segment).inflections().size())
                .sum();
    }

    @Property(seed = "125", tries = 80)
    void allThreeOnOneDressInEitherOrder(@ForAll("shapes") Shape shape) {
        AlterationRequest bust = new AlterationRequest("full bust", Map.of("spread", "15 mm"));
        AlterationRequest sway = new AlterationRequest("sway back", Map.of("wedge", "12 mm"));
        AlterationRequest blend = request("hip", "44");
        Draft drawn = TestPatterns.dress(shape).in("40");
        for (List<AlterationRequest> order :
                List.of(List.of(bust, blend, sway), List.of(bust, sway, blend), List.of(sway, blend, bust))) {
            Draft draft = drawn;
            for (AlterationRequest request : order) {
                draft = Catalogue.alter(draft, request).draft();
            }
            assertEquals(drawn.girth("bust") + 30, draft.girth("bust"), 1);
            double hip = drawn.pattern().in("44").girth("hip");
            boolean bustLast = order.get(2) == bust;
            assertEquals(hip + (bustLast ? 30 : 0), draft.girth("hip"), 1);
            Piece back = draft.piece("back");
            assertEquals(
                    Measured.sewn(drawn.piece("back"), "centre back") - 12, Measured.sewn(back, "centre back"), 0.5);
        }
    }

    @Test
    void aBareNumberIsRefusedWithBothReadings() {
        Draft draft = TestPatterns.dress(new Shape(200, 250, 20, 95, 262, 5, false, false, true, true, 0))
                .in("40");
        Refusal refusal = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request("hip", 44)));
        assertTrue(
                refusal.getMessage().contains("\"44\"") && refusal.getMessage().contains("+44 mm"),
                refusal.getMessage());
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request("hip", "45")));
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request("bust", "44")));
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request("high hip", "44")));
    }
}
