package dev.hingepoint.svg.print;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.svg.file.Sides;

/**
 * What a printer makes of the 100 mm square. Pages are scaled by the inverse before they are printed, each direction by its own, so that they come out true.
 *
 * @param across the width in mm that was measured
 * @param down the height in mm that was measured
 */
public record Calibration(double across, double down) {
    /** The side in mm of the square that is measured. */
    public static final double SIDE = 100;

    /** A printer that prints true to scale. */
    public static final Calibration TRUE = new Calibration(SIDE, SIDE);

    /** A square that is off by more, as a part of its side, was not printed at 100 %. */
    private static final double MOST = 0.05;

    /** @throws Refusal for a square that is more than 5 % off, with the likely cause */
    public Calibration {
        if (!isPlausible(across) || !isPlausible(down)) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of(
                            "print.calibration.too-far-off", Quantity.millimetres(across), Quantity.millimetres(down)),
                    Where.UNKNOWN));
        }
    }

    private static boolean isPlausible(double side) {
        return Math.abs(side - SIDE) <= MOST * SIDE + Tolerance.COINCIDENT;
    }

    /**
     * Reads {@code 98.5x99.0mm}: the width first, then the height; a bare number is in mm.
     *
     * @throws Refusal for anything else
     */
    public static Calibration parse(String text) {
        return Sides.parse(text)
                .map(sides -> new Calibration(sides.width().mm(), sides.height().mm()))
                .orElseThrow(() -> new Refusal(
                        new Reason.Unreadable(Message.of("print.calibration.unreadable", text), Where.UNKNOWN)));
    }

    /** The mm on paper that the printer makes of one mm of the page. */
    double perMillimetreAcross() {
        return across / SIDE;
    }

    double perMillimetreDown() {
        return down / SIDE;
    }

    boolean isTrue() {
        return equals(TRUE);
    }

    /** "98.5 mm x 99 mm". */
    @Override
    public String toString() {
        return Reason.millimetres(across) + " x " + Reason.millimetres(down);
    }
}
