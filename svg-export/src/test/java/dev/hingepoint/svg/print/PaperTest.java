package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.svg.page.Paper;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PaperTest {
    /** ISO 216 and ANSI/ASME Y14.1 sizes; Legal as US offices use it, common practice. */
    @ParameterizedTest
    @CsvSource({
        "a4, 210, 297",
        "A3, 297, 420",
        "a2, 420, 594",
        "a1, 594, 841",
        "a0, 841, 1189",
        "letter, 215.9, 279.4",
        "Legal, 215.9, 355.6",
        "Tabloid, 279.4, 431.8"
    })
    void papersHaveTheirStandardSizes(String name, double width, double height) {
        Paper paper = Paper.named(name);
        assertEquals(width, paper.width(), 1e-9);
        assertEquals(height, paper.height(), 1e-9);
        assertEquals(Paper.Kind.SHEET, paper.kind());
        assertEquals(width, paper.turned().height(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "320x450, 320, 450",
        "320 x 450 mm, 320, 450",
        "32x45cm, 320, 450",
        "12x18in, 304.8, 457.2",
        "8 1/2 x 14 in, 215.9, 355.6",
        "12inx450mm, 304.8, 450",
        "330\u00d7480, 330, 480"
    })
    void aPaperIsNamedByItsSides(String name, double width, double height) {
        assertEquals(width, Paper.named(name).width(), 1e-9);
        assertEquals(height, Paper.named(name).height(), 1e-9);
    }

    @Test
    void aRollHasAWidthAndAsMuchLengthAsOnePageOfAPdfHolds() {
        assertEquals(914.4, Paper.named("roll 36 in").width(), 1e-9);
        assertEquals(Paper.Kind.ROLL, Paper.named("Roll 914mm").kind());
        // ISO 32000-1, annex C: no page is larger than 14 400 units of 1/72 in
        assertTrue(Paper.named("roll 610").height() <= 14400 / 72.0 * 25.4);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "foolscap",
                "",
                "0x0",
                "-3x5",
                "10x20",
                "99999x3",
                "roll",
                "roll wide",
                "3x",
                "1e9x1e9",
                "300x400 furlongs"
            })
    void whatIsNoPaperIsRefusedInOneLine(String name) {
        Refusal refusal = assertThrows(Refusal.class, () -> Paper.named(name));
        assertEquals(1, refusal.getMessage().lines().count());
    }

    @ParameterizedTest
    @CsvSource({"98.5x99.0mm, 98.5, 99", "98.5 x 99, 98.5, 99", "9.9x10.1cm, 99, 101", "3.9 x 4 in, 99.06, 101.6"})
    void aMeasuredSquareIsReadAsPeopleWriteIt(String text, double across, double down) {
        assertEquals(across, Calibration.parse(text).across(), 1e-9);
        assertEquals(down, Calibration.parse(text).down(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"94.9x100", "100x105.1", "97x3", "10x10", "210x297"})
    void aSquareMoreThanFivePerCentOffIsRefusedWithTheLikelyCause(String text) {
        Refusal refusal = assertThrows(Refusal.class, () -> Calibration.parse(text));
        assertTrue(refusal.getMessage().contains("fit to page"), refusal.getMessage());
        assertEquals(1, refusal.getMessage().lines().count());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "98.5", "98.5x", "wide x high", "98.5x99x100"})
    void whatIsNoMeasuredSquareIsRefused(String text) {
        assertThrows(Refusal.class, () -> Calibration.parse(text));
    }

    /** Derived: a printer that makes 98.5 of 100 mm makes 100 of 100 / 0.985. The page's own corner stays. */
    @Property(tries = 200, seed = "1")
    void aPageIsScaledByTheInverseOfWhatWasMeasuredEachWayByItsOwn(
            @ForAll @DoubleRange(min = 95, max = 105) double across,
            @ForAll @DoubleRange(min = 95, max = 105) double down) {
        PrintOptions options = PrintOptions.of(Paper.A4).with(new Calibration(across, down));
        Motion toPaper = options.toPaper(0, 0);
        Point one = toPaper.of(new Point(20, 30));
        Point other = toPaper.of(new Point(120, 130));
        assertEquals(100, (other.x() - one.x()) * across / 100, 1e-9);
        assertEquals(100, (other.y() - one.y()) * down / 100, 1e-9);
        assertEquals(10, toPaper.of(new Point(0, 0)).x(), 1e-9);
        assertEquals(200, toPaper.of(new Point(options.printableWidth(), 0)).x(), 1e-9);
        assertEquals(287, toPaper.of(new Point(0, options.printableHeight())).y(), 1e-9);
    }

    @Test
    void scalesAreReadAndOthersRefused() {
        assertEquals(0.5, Scale.parse("1:2").factor(), 0);
        assertEquals(0.25, Scale.parse("1 : 4").factor(), 0);
        assertThrows(Refusal.class, () -> Scale.parse("1:3"));
    }
}
