package dev.hingepoint;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * A number in a message, of a known kind, so that an app can write it in its own unit. In a bundle the words for a length may name
 * {@code {0}} for mm, {@code {1}} for cm and {@code {2}} for inches.
 *
 * @param value in mm, in radians, or as a share of 1
 */
public record Quantity(double value, Kind kind) {
    /** What is counted. */
    public enum Kind {
        /** In mm. */
        LENGTH,
        /** In mm, told with its sign. */
        CHANGE,
        /** In mm, told in cm, as cloth is measured. */
        CLOTH,
        /** In radians. */
        ANGLE,
        /** 0.5 is half. */
        SHARE
    }

    public Quantity {
        Objects.requireNonNull(kind);
    }

    public static Quantity millimetres(double mm) {
        return new Quantity(mm, Kind.LENGTH);
    }

    /** How much longer or wider, in mm; less than 0 is shorter. */
    public static Quantity change(double mm) {
        return new Quantity(mm, Kind.CHANGE);
    }

    /** A width of cloth, in mm. */
    public static Quantity clothWidth(double mm) {
        return new Quantity(mm, Kind.CLOTH);
    }

    public static Quantity radians(double radians) {
        return new Quantity(radians, Kind.ANGLE);
    }

    /** A share of 1, told in per cent. */
    public static Quantity share(double share) {
        return new Quantity(share, Kind.SHARE);
    }

    Message message() {
        return switch (kind) {
            case LENGTH -> length("quantity.length", 3);
            case CHANGE -> length(value > 0 ? "quantity.more" : "quantity.length", 3);
            case CLOTH -> length("quantity.cloth", 1);
            case ANGLE -> Message.of("quantity.angle", rounded(StrictMath.toDegrees(value), 2));
            case SHARE -> Message.of("quantity.share", rounded(100 * value, 1));
        };
    }

    /** @param decimals at most, in cm and in inches */
    private Message length(String key, int decimals) {
        return Message.of(key, rounded(value, 2), rounded(value / 10, decimals), rounded(value / 25.4, decimals));
    }

    /** At most so many decimals, none that says nothing. */
    private static BigDecimal rounded(double number, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(number)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    /** In English: "12 mm", "0.35 mm", "3.4 degrees", "50 %". */
    @Override
    public String toString() {
        return message().text();
    }
}
