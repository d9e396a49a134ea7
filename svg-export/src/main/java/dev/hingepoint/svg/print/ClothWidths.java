package dev.hingepoint.svg.print;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.pattern.Length;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How the cloths lie that the pieces are cut from.
 *
 * @param byCloth width of a cloth by its name
 * @param nap whether every piece must lie the same way up
 */
public record ClothWidths(Map<String, Length> byCloth, Nap nap) {
    /** Whether a cloth looks different upside down, so that every piece must lie the same way up. */
    public enum Nap {
        /** As the pattern's card says. */
        AS_CARD,
        ONE_WAY
    }

    /** The cloth that a piece is cut from where nothing else is said. */
    public static final String MAIN = "main";

    /** What is stuck on or sewn in to stiffen, which is sold narrower than cloth. */
    public static final String INTERFACING = "interfacing";

    /** Usual widths: dress cloth 140 cm, interfacing 90 cm (common practice, no source). */
    public static final ClothWidths USUAL = new ClothWidths(Map.of(), Nap.AS_CARD);

    /** Wider cloth is not woven (common practice, no source). */
    private static final double WIDEST = 5000;

    private static final Length DRESS_CLOTH = new Length(1400);
    private static final Length NARROW = new Length(900);

    /** @throws Refusal for a width that no cloth has */
    public ClothWidths {
        byCloth.forEach((cloth, width) -> {
            if (!(width.mm() > 0 && width.mm() <= WIDEST)) {
                throw new Refusal(Reason.BeyondLimit.of(
                        Message.of(
                                "print.cloth.width-range",
                                cloth,
                                Quantity.millimetres(width.mm()),
                                Quantity.millimetres(WIDEST)),
                        Where.UNKNOWN));
            }
        });
        byCloth = Collections.unmodifiableMap(new LinkedHashMap<>(byCloth));
    }

    /** The width of a cloth: as given; else as the main cloth was given; else the usual one. */
    public Length of(String cloth) {
        Length usual = cloth.equals(INTERFACING) ? NARROW : byCloth.getOrDefault(MAIN, DRESS_CLOTH);
        return byCloth.getOrDefault(cloth, usual);
    }

    public ClothWidths with(String cloth, Length width) {
        Map<String, Length> more = new LinkedHashMap<>(byCloth);
        more.put(cloth, width);
        return new ClothWidths(more, nap);
    }

    public ClothWidths with(Nap other) {
        return new ClothWidths(byCloth, other);
    }
}
