package dev.hingepoint.pattern;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length: millimetres inside, whatever people write at the door.
 *
 * @param mm millimetres; negative where a change takes away
 */
public record Length(double mm) implements Comparable<Length> {
    private static final String NUMBER = "([+-]?[0-9]+(?:\\.[0-9]+)?)";

    /** "12 mm", "6 to 25 mm". */
    private static final Pattern MILLIMETRES = Pattern.compile("(?:" + NUMBER + " to )?" + NUMBER + " mm\\b");

    public static final Length ZERO = new Length(0);

    private static final Pattern WRITTEN = Pattern.compile("\\s*([+-]?)\\s*"
            + "(?:(\\d+)\\s+(\\d+)\\s*/\\s*(\\d+)|(\\d+)\\s*/\\s*(\\d+)|(\\d+(?:\\.\\d*)?|\\.\\d+))"
            + "\\s*([a-zA-Z\"\u2033]*)\\s*");

    public Length {
        if (!Double.isFinite(mm)) {
            throw new IllegalArgumentException("a length must be finite, not " + mm);
        }
    }

    public static Length ofMillimetres(double mm) {
        return new Length(mm);
    }

    public static Length of(double amount, Unit unit) {
        return new Length(amount * unit.inMillimetres());
    }

    /**
     * Reads a length as people write it: {@code 12 mm}, {@code 1.2 cm}, {@code 3/8 in}, {@code 1 1/2 in}, {@code 0.5"},
     * {@code -2 mm}; a bare number takes {@code bareUnit}.
     *
     * @throws Refusal for anything else
     */
    public static Length parse(String text, Unit bareUnit) {
        Matcher written = WRITTEN.matcher(text);
        if (!written.matches()) {
            throw unreadable(text);
        }
        double amount;
        if (written.group(2) != null) {
            amount = number(written.group(2)) + fraction(text, written.group(3), written.group(4));
        } else if (written.group(5) != null) {
            amount = fraction(text, written.group(5), written.group(6));
        } else {
            amount = number(written.group(7));
        }
        Unit unit = written.group(8).isEmpty() ? bareUnit : Unit.parse(written.group(8));
        double signed = written.group(1).equals("-") ? -amount : amount;
        double mm = signed * unit.inMillimetres();
        if (!Double.isFinite(mm)) {
            throw unreadable(text);
        }
        return new Length(mm);
    }

    private static double number(String digits) {
        return new BigDecimal(digits).doubleValue();
    }

    private static double fraction(String text, String above, String below) {
        double divisor = number(below);
        if (divisor == 0) {
            throw unreadable(text);
        }
        return number(above) / divisor;
    }

    private static Refusal unreadable(String text) {
        return new Refusal(new Reason.Unreadable(Message.of("pattern.length.unreadable", text), Where.UNKNOWN));
    }

    public double in(Unit unit) {
        return mm / unit.inMillimetres();
    }

    public Length negated() {
        return new Length(-mm);
    }

    /** To the nearest 1/16 inch, as on a ruler: {@code 1 1/2 in}, {@code 3/8 in}, {@code -2 in}, {@code 0 in}. */
    public String inInches() {
        long sixteenths = Math.round(Math.abs(in(Unit.INCH)) * 16);
        long whole = sixteenths / 16;
        long above = sixteenths % 16;
        long below = 16;
        while (above != 0 && above % 2 == 0) {
            above /= 2;
            below /= 2;
        }
        String sign = mm < 0 && sixteenths != 0 ? "-" : "";
        String part = above == 0 ? "" : above + "/" + below;
        String gap = whole != 0 && above != 0 ? " " : "";
        return sign + (whole == 0 && above != 0 ? "" : whole) + gap + part + " in";
    }

    /** Words that tell lengths as {@code 12 mm}, with each told {@linkplain #inInches in inches} where that is the unit. */
    public static String retold(String words, Unit unit) {
        return unit == Unit.INCH
                ? MILLIMETRES
                        .matcher(words)
                        .replaceAll(told -> (told.group(1) == null
                                        ? ""
                                        : retold(told.group(1)).replace(" in", "") + " to ")
                                + retold(told.group(2)))
                : words;
    }

    /** A length that a ruler does not show is not nothing; a change keeps its sign. */
    private static String retold(String number) {
        Length length = new Length(Double.parseDouble(number));
        String inches = length.inInches();
        if (inches.equals("0 in") && length.mm() != 0) {
            return "under 1/16 in";
        }
        return (number.startsWith("+") ? "+" : "") + inches;
    }

    /** To the nearest tenth of a mm, as closely as a hand draws. */
    public Length tenths() {
        return new Length(Math.rint(mm * 10) / 10);
    }

    /** As read off a tape: to the millimetre, in cm to one decimal, in inches to 1/16. */
    public String shownIn(Unit unit) {
        BigDecimal whole = BigDecimal.valueOf(mm).setScale(0, RoundingMode.HALF_EVEN);
        return switch (unit) {
            case MILLIMETRE -> whole.toPlainString() + " mm";
            case CENTIMETRE -> whole.movePointLeft(1).setScale(1).toPlainString() + " cm";
            case INCH -> inInches();
        };
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(mm, other.mm);
    }

    /** {@code 12 mm}, {@code 0.35 mm}: at most two decimals. */
    @Override
    public String toString() {
        return Reason.millimetres(mm);
    }
}
