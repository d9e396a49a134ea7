package dev.hingepoint.svg.file;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they are written in files: at most four decimals, the same in any locale. */
public final class Numbers {
    private static final int DECIMALS = 4;

    private Numbers() {}

    /** Rounded half to even to a ten-thousandth; no exponent, no trailing zeros, no minus zero. */
    public static String of(double number) {
        return of(number, DECIMALS);
    }

    /** Rounded half to even to so many decimals. */
    public static String of(double number, int decimals) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("only finite numbers are written, not " + number);
        }
        BigDecimal rounded = new BigDecimal(number).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
