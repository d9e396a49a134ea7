package dev.hingepoint.pattern;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import java.util.Locale;

/** A unit that people write lengths in. */
public enum Unit {
    MILLIMETRE(1),
    CENTIMETRE(10),
    INCH(25.4);

    private final double millimetres;

    Unit(double millimetres) {
        this.millimetres = millimetres;
    }

    public double inMillimetres() {
        return millimetres;
    }

    /** "mm", "cm", "in" or the double prime; refused otherwise. */
    public static Unit parse(String text) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "mm" -> MILLIMETRE;
            case "cm" -> CENTIMETRE;
            case "in", "inch", "inches", "\"", "\u2033" -> INCH;
            default ->
                throw new Refusal(new Reason.Unreadable(Message.of("pattern.unit.unreadable", text), Where.UNKNOWN));
        };
    }
}
