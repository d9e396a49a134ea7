package dev.hingepoint.svg.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class NumbersTest {
    @Property(seed = "211")
    void readsBackWithinHalfATenThousandth(@ForAll @DoubleRange(min = -1e6, max = 1e6) double number) {
        assertEquals(number, Double.parseDouble(Numbers.of(number)), 0.5001e-4);
    }

    @Test
    void isPlainAndTheSameInAnyLocale() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : new String[] {"de", "ar-EG", "tr-TR", "hi-IN-u-nu-deva"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertEquals("1234.5678", Numbers.of(1234.56781));
                assertEquals("-0.5", Numbers.of(-0.5));
                assertEquals("0", Numbers.of(-0.00001));
                assertEquals("12000000", Numbers.of(1.2e7));
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void onlyFiniteNumbersAreWritten() {
        assertThrows(IllegalArgumentException.class, () -> Numbers.of(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Numbers.of(Double.POSITIVE_INFINITY));
    }
}
