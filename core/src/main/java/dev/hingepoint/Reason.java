package dev.hingepoint;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/** Why something was refused. Amounts and limits are in mm. */
public sealed interface Reason {
    /** What is wrong, in plain words, with what would work. */
    String what();

    Where where();

    Reason at(Where where);

    /** The amount that was asked for, where there is one. */
    default OptionalDouble amount() {
        return OptionalDouble.empty();
    }

    /** The largest amount that would work, where one can be computed. */
    default OptionalDouble limit() {
        return OptionalDouble.empty();
    }

    /** One line: place, then reason. */
    default String sentence() {
        String place = where().toString();
        String line = (place.isEmpty() ? what() : place + ": " + what()).replaceAll("\\s+", " ");
        return limit().isPresent()
                ? line + "; the largest that would work is " + millimetres(limit().getAsDouble())
                : line;
    }

    /** "12 mm", "0.35 mm": at most two decimals, none that says nothing. */
    static String millimetres(double mm) {
        return rounded(mm) + " mm";
    }

    /** Radians as people read them: "3.4 degrees". */
    static String degrees(double radians) {
        return rounded(StrictMath.toDegrees(radians)) + " degrees";
    }

    private static String rounded(double number) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** A file, or a call, that cannot be understood. */
    record Unreadable(String what, Where where) implements Reason {
        @Override
        public Unreadable at(Where place) {
            return new Unreadable(what, place);
        }
    }

    /** A drawing that is understood but is no sound pattern piece: a gap, a crossing outline, a dart that hangs in the air. */
    record Unsound(String what, Where where) implements Reason {
        @Override
        public Unsound at(Where place) {
            return new Unsound(what, place);
        }
    }

    /** Something that the job needs and the pattern, card or order does not have. */
    record Missing(String what, Where where) implements Reason {
        @Override
        public Missing at(Where place) {
            return new Missing(what, place);
        }
    }

    /** An amount or choice that the piece, the cloth or the alteration does not allow. */
    record BeyondLimit(String what, Where where, OptionalDouble amount, OptionalDouble limit) implements Reason {
        public static BeyondLimit of(String what, Where where) {
            return new BeyondLimit(what, where, OptionalDouble.empty(), OptionalDouble.empty());
        }

        public static BeyondLimit of(String what, Where where, double amount, double limit) {
            return new BeyondLimit(what, where, OptionalDouble.of(amount), OptionalDouble.of(limit));
        }

        @Override
        public BeyondLimit at(Where place) {
            return new BeyondLimit(what, place, amount, limit);
        }
    }

    /** A law of an alteration that its result would break. */
    record BrokenLaw(String what, Where where, double expected, double actual, double tolerance) implements Reason {
        @Override
        public BrokenLaw at(Where place) {
            return new BrokenLaw(what, place, expected, actual, tolerance);
        }
    }
}
