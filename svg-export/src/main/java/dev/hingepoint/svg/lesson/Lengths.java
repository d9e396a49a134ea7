package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Lengths as a lesson tells them: to a tenth of a mm, or in inches to the nearest 1/16; and the squares they are counted in. */
record Lengths(Unit unit) {
    /** So little is no change: a tenth of what is told. */
    static final double UNCHANGED = 0.05;

    /** @param mm not negative */
    String of(double mm) {
        return unit == Unit.INCH ? new Length(mm).inInches() : decimals(mm);
    }

    /** With its sign: "+12.0 mm", "\u22123/8 in". */
    String difference(double mm) {
        String size = of(Math.abs(mm));
        if (unit == Unit.INCH && size.equals(of(0)) && Math.abs(mm) > UNCHANGED) {
            size = " under 1/16 in";
        }
        return (mm < 0 ? "\u2212" : "+") + size;
    }

    private String decimals(double mm) {
        boolean isCentimetres = unit == Unit.CENTIMETRE;
        BigDecimal tenths = new BigDecimal(mm).setScale(1, RoundingMode.HALF_EVEN);
        return (isCentimetres ? tenths.movePointLeft(1) : tenths).toPlainString() + (isCentimetres ? " cm" : " mm");
    }

    /** How lengths are rounded, in words. */
    String rounding() {
        return unit == Unit.INCH ? "to the nearest 1/16 in" : "to a tenth of a millimetre";
    }

    /** How far apart the lines of the grid are in mm of the pattern. */
    private double square() {
        return unit == Unit.INCH ? 25.4 : 10;
    }

    /** After how many squares a line is heavier. */
    private int heavier() {
        return unit == Unit.INCH ? 6 : 5;
    }

    /** What the grid is, in words. */
    String gridWords() {
        return unit == Unit.INCH ? "grid of 1 in, heavier every 6 in" : "grid of 1 cm, heavier every 5 cm";
    }

    /**
     * The grid over a picture.
     *
     * @param scale how many units of the picture a mm of the pattern takes
     */
    Drawn grid(Box box, double scale) {
        List<Stroke> lines = new ArrayList<>();
        double apart = square() * scale;
        for (long i = (long) Math.ceil(box.left() / apart); i * apart <= box.right(); i++) {
            lines.add(Stroke.of(style(i), new Point(i * apart, box.top()), new Point(i * apart, box.bottom())));
        }
        for (long i = (long) Math.ceil(box.top() / apart); i * apart <= box.bottom(); i++) {
            lines.add(Stroke.of(style(i), new Point(box.left(), i * apart), new Point(box.right(), i * apart)));
        }
        return new Drawn(lines, List.of());
    }

    private Style style(long number) {
        return number % heavier() == 0 ? Style.GRID_WIDE : Style.GRID;
    }
}
