package dev.hingepoint.svg.page;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as cloth is measured. */
final class Centimetres {
    private Centimetres() {}

    /** "140 cm", "91.4 cm": at most one decimal. */
    static String of(double mm) {
        BigDecimal rounded = BigDecimal.valueOf(mm / 10).setScale(1, RoundingMode.HALF_EVEN);
        return rounded.stripTrailingZeros().toPlainString() + " cm";
    }
}
