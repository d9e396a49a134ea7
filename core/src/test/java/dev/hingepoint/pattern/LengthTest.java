package dev.hingepoint.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.hingepoint.Refusal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lengths as the pattern file says people write them; an inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
class LengthTest {
    @ParameterizedTest
    @CsvSource({
        "12 mm, 12",
        "1.2 cm, 12",
        "3/8 in, 9.525",
        "1 1/2 in, 38.1",
        "'0.5\"', 12.7",
        "+40 mm, 40",
        "-2.5cm, -25",
        "7, 7",
        ".5 in, 12.7",
        "'-1 1/4\"', -31.75"
    })
    void isReadAsItIsWritten(String text, double mm) {
        assertEquals(mm, Length.parse(text, Unit.MILLIMETRE).mm(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "mm",
                "twelve",
                "12 furlongs",
                "1/0 in",
                "1.2.3 mm",
                "12 mm or so",
                "NaN",
                "Infinity mm",
                "1e5 mm",
                "1/2/3 in",
                "--3 mm"
            })
    void anythingElseIsRefused(String text) {
        assertThrows(Refusal.class, () -> Length.parse(text, Unit.MILLIMETRE));
    }

    @ParameterizedTest
    @CsvSource({
        "38.1, 1 1/2 in",
        "9.525, 3/8 in",
        "0, 0 in",
        "25.4, 1 in",
        "-12.7, -1/2 in",
        "26, 1 in",
        "26.3, 1 1/16 in",
        "25.3, 1 in"
    })
    void isToldInSixteenthsOfAnInch(double mm, String inches) {
        assertEquals(inches, Length.ofMillimetres(mm).inInches());
    }

    @Property(seed = "501")
    void inchesToldAreWithinAThirtySecond(@ForAll @DoubleRange(min = -2000, max = 2000) double mm) {
        double told = Length.parse(Length.ofMillimetres(mm).inInches(), Unit.MILLIMETRE)
                .mm();
        assertEquals(mm, told, 25.4 / 32 + 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"12.34, 12.3 mm", "12.36, 12.4 mm", "-0.26, -0.3 mm", "0.04, 0 mm", "12, 12 mm"})
    void isRoundedToATenth(double mm, String told) {
        assertEquals(told, new Length(mm).tenths().toString());
    }

    @Test
    void aSentenceIsToldInInchesWithEveryLengthInIt() {
        assertEquals("Fold out 1/2 in at centre back", Length.retold("Fold out 12.7 mm at centre back", Unit.INCH));
        assertEquals("1/4 to 1 in is common", Length.retold("6.35 to 25.4 mm is common", Unit.INCH));
        assertEquals("+1 1/2 in, -1 in, under 1/16 in", Length.retold("+38.1 mm, -25.4 mm, 0.3 mm", Unit.INCH));
        assertEquals("0 in of 3 mmol in size 40", Length.retold("0 mm of 3 mmol in size 40", Unit.INCH));
        assertEquals("12.7 mm", Length.retold("12.7 mm", Unit.MILLIMETRE));
    }
}
