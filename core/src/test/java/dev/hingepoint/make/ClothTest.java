package dev.hingepoint.make;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Derived: pieces of widths w that stretch by s reach the sum of w (1 + s) round. */
class ClothTest {
    private static Draft make(Draft draft, String piece, String as, String stretch) {
        Map<String, Object> options = new LinkedHashMap<>(Map.of("piece", piece, "as", as));
        if (!stretch.isEmpty()) {
            options.put("stretch", stretch);
        }
        return Choices.make(draft, new AlterationRequest("cloth", options)).draft();
    }

    @Test
    void outerClothIsChangedAndInnerIsAdded() {
        Draft draft = Dresses.sleeved(Dresses.SHAPE);
        Draft contrast = make(draft, "front", "contrast", "");
        assertEquals(
                List.of(new Cutting(1, Cutting.How.ON_FOLD, Optional.of("contrast"))),
                contrast.piece("front").cuttings());
        assertEquals(draft.girth("hip"), contrast.girth("hip"), 1e-9);
        Draft lined = make(contrast, "front", "lining", "");
        assertEquals(
                List.of(
                        new Cutting(1, Cutting.How.ON_FOLD, Optional.of("contrast")),
                        new Cutting(1, Cutting.How.ON_FOLD, Optional.of("lining"))),
                lined.piece("front").cuttings());
        assertEquals(draft.girth("hip"), lined.girth("hip"), 1e-9);
        assertEquals(
                List.of(
                        new Cutting(1, Cutting.How.ON_FOLD, Optional.empty()),
                        new Cutting(1, Cutting.How.ON_FOLD, Optional.of("lining"))),
                make(lined, "front", "main", "").piece("front").cuttings());
    }

    /** A knit that stretches 40 %, and a body that needs it. */
    @Test
    void aFirmPieceMustStillReachRoundTheBody() {
        Draft all = Dresses.knit(Dresses.SHAPE, 0.4, 900, 900);
        double front = 2 * all.piece("front").width("bust");
        double back = 2 * all.piece("back").width("bust");
        // half way between what it reaches with a firm front and with none
        double body = Math.rint(front * 1.2 + back * 1.4);
        Draft draft = Dresses.knit(Dresses.SHAPE, 0.4, body, 900);
        Refusal refusal = assertThrows(Refusal.class, () -> make(draft, "front", "contrast", "0 %"));
        String says = refusal.getMessage();
        assertTrue(says.contains("bust") && says.contains("body is " + (long) body + " mm"), says);
        assertTrue(says.contains("reaches " + Math.round(front + back * 1.4) + " mm"), says);
        long would = (long) Math.ceil(100 * (body - front - 1.4 * back) / front);
        assertTrue(says.contains("stretches " + would + " % would do"), says);
        assertThrows(Refusal.class, () -> make(draft, "front", "contrast", (would - 1) + " %"));
        Draft made = make(draft, "front", "contrast", would + " %");
        assertEquals("contrast", made.piece("front").cuttings().get(0).cloth().orElseThrow());
    }

    @Test
    void aFirmYokeAcrossNoLevelIsAllowedAndOneMustSayHowFarAClothStretches() {
        Draft knit = Dresses.knit(Dresses.SHAPE, 0.4, 1100, 900);
        Draft yoked = Choices.make(
                        knit,
                        new AlterationRequest(
                                "yoke", Map.of("piece", "front", "from", "armhole 50 mm", "to", "centre 40 mm")))
                .draft();
        assertThrows(Refusal.class, () -> make(yoked, "front yoke", "contrast", ""));
        Draft made = make(yoked, "front yoke", "contrast", "0 %");
        assertEquals(
                "contrast", made.piece("front yoke").cuttings().get(0).cloth().orElseThrow());
    }

    /** Where the waist is all that keeps one out, the numbers say so. */
    @Test
    void oneMustStillGetIn() {
        Draft knit = Dresses.knit(Dresses.SHAPE, 0.4, 900, 1100);
        double front = 2 * knit.piece("front").width("waist");
        double back = 2 * knit.piece("back").width("waist");
        double passing = front * 1.2 + back * 1.4;
        Draft draft = Dresses.knit(Dresses.SHAPE, 0.4, passing, 1.4 * passing / 1.35);
        Refusal refusal = assertThrows(Refusal.class, () -> make(draft, "front", "contrast", "10 %"));
        String opens = "the waist opens to " + Math.round(front * 1.1 + back * 1.4) + " mm";
        assertTrue(refusal.getMessage().contains("no longer get in: " + opens), refusal.getMessage());
        make(draft, "front", "contrast", "21 %");
    }
}
