package dev.hingepoint.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.pattern.Length;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths that no body has are refused, with a guess at the cause. The ranges are common practice, no source. */
class BodyTest {
    private static Map<String, Length> lengths(double scale) {
        Map<String, Length> lengths = new LinkedHashMap<>();
        lengths.put("upper bust", new Length(870 * scale));
        lengths.put("full bust", new Length(960 * scale));
        lengths.put("waist", new Length(760 * scale));
        lengths.put("hip", new Length(1060 * scale));
        return lengths;
    }

    @ParameterizedTest
    @CsvSource({
        "0.3937, inches written as cm",
        "0.1, cm written as mm",
        "0.03937, inches written as mm",
        "2.54, cm written as inches"
    })
    void aBodyInTheWrongUnitIsRefusedWithTheRightOne(double scale, String guess) {
        Refusal refusal = assertThrows(Refusal.class, () -> Body.of(lengths(scale)));
        assertTrue(refusal.getMessage().contains(guess), refusal.getMessage());
    }

    @Test
    void oneWrongLengthIsNamed() {
        Map<String, Length> lengths = lengths(1);
        lengths.put("hip", new Length(100));
        Refusal refusal = assertThrows(Refusal.class, () -> Body.of(lengths));
        assertTrue(refusal.getMessage().contains("hip 100 mm"), refusal.getMessage());
    }

    @Test
    void negativeLengthsAndSwappedBustsAreRefused() {
        Map<String, Length> negative = lengths(1);
        negative.put("waist", new Length(-760));
        assertThrows(Refusal.class, () -> Body.of(negative));
        Map<String, Length> swapped = lengths(1);
        swapped.put("upper bust", new Length(1000));
        Refusal refusal = assertThrows(Refusal.class, () -> Body.of(swapped));
        assertTrue(refusal.getMessage().contains("swapped"), refusal.getMessage());
    }

    @Test
    void whatWasNotMeasuredIsEmpty() {
        Body body = Body.of(lengths(1));
        assertEquals(1060, body.mm(Measure.HIP).orElseThrow(), 0);
        assertTrue(body.mm(Measure.HIGH_HIP).isEmpty());
    }

    /** Derived: a garment of girth G in cloth of stretch p reaches G (1 + p). 4 in to 5 in is 25 %, 10 to 14 is 40 %, three sources agree. */
    @ParameterizedTest
    @CsvSource({"4, 5", "10, 14", "4, 10"})
    void aGarmentStretchedAsFarAsItsClothReachesTheBody(double rest, double stretched) {
        Cloth cloth = new Cloth((stretched - rest) / rest, 0);
        assertEquals(rest, cloth.leastGirth(stretched), 1e-12);
    }
}
