package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.fit.Body;
import dev.hingepoint.fit.Ease;
import dev.hingepoint.fit.FitCheck;
import dev.hingepoint.fit.FitRules;
import dev.hingepoint.fit.Plan;
import dev.hingepoint.fit.Planner;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.samples.draft.Larkfield;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fit held against published numbers. */
class WorkedExamplesTest {
    private static final Pattern DRESS = Larkfield.dress();

    private static Body inches(double upper, double full, double waist) {
        Map<String, Length> lengths = new LinkedHashMap<>();
        lengths.put("upper bust", Length.of(upper, Unit.INCH));
        lengths.put("full bust", Length.of(full, Unit.INCH));
        lengths.put("waist", Length.of(waist, Unit.INCH));
        return Body.of(lengths);
    }

    /**
     * ASTM D5585-11e1, misses sizes 2 to 16 (public summary page): the dress is drafted on them, straight waist = curvy + 1 1/2 in, so each of these
     * bodies takes its own size with nothing altered.
     */
    @ParameterizedTest
    @CsvSource({
        "33, 25.375, 34",
        "34.125, 26.125, 36",
        "35.25, 27, 38",
        "36.25, 28, 40",
        "37.25, 29, 42",
        "38.75, 30.75, 44",
        "40.375, 32.5, 46",
        "42.125, 34.5, 48"
    })
    void standardBodiesTakeTheirSize(double bust, double curvyWaist, String size) {
        Plan plan = Planner.plan(DRESS, inches(bust - 50 / 25.4, bust, curvyWaist + 1.5));
        assertEquals(size, plan.size());
        assertEquals(List.of(), plan.alterations());
    }

    /**
     * Cooperative Extension leaflet, "Principles of Pattern Alteration": where the full bust exceeds the upper by 2 in or more beyond what the draft
     * allows, the size goes by the upper bust; sewing schools: each half front gets half of the difference.
     */
    @Test
    void aFullBustIsSizedByTheUpperBust() {
        double upper = 36.25 - 50 / 25.4;
        Plan plan = Planner.plan(DRESS, inches(upper, 38.75, 29.5));
        assertEquals("40", plan.size(), "by the full bust it would be 44");
        assertEquals("full bust", plan.alterations().get(0).name());
        double spread = Length.parse(
                        plan.alterations().get(0).options().get("spread").toString(), Unit.MILLIMETRE)
                .mm();
        assertEquals((38.75 - 36.25) / 2 * 25.4, spread, 0.5);
    }

    /** Central Washington University costume text, ch. 16: bust 1 1/2 to 2 in, waist of a dress 3/4 to 1, hip 2 to 2 3/4 in: floors for wovens. */
    @Test
    void noWovenSizeHasLessThanThePublishedEase() {
        Map<String, Double> floors = Map.of("bust", 1.5, "waist", 0.75, "hip", 2.0);
        for (String size : DRESS.sizes()) {
            Body body = FitCheck.charted(DRESS, size);
            for (Ease ease : FitCheck.ease(DRESS.in(size), body, FitRules.USUAL)) {
                double floor = floors.getOrDefault(ease.level(), 0.75) * 25.4;
                assertTrue(ease.ease() >= floor, size + ": " + ease);
                assertTrue(ease.least() >= floor - 1e-9, size + ": " + ease);
                assertTrue(ease.isRight(), size + ": " + ease);
            }
        }
    }
}
