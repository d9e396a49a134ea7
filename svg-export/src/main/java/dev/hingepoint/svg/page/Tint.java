package dev.hingepoint.svg.page;

import java.util.List;

/** Light fills, told apart by hue on a screen and, most of them, by lightness on a black-and-white print; whatever is tinted is named as well. */
public enum Tint {
    STAYS(0xF3, 0xF0, 0xE6),
    FIRST(0xBF, 0xDD, 0xF2),
    SECOND(0xF7, 0xCF, 0x9B),
    THIRD(0xCB, 0xE8, 0xBE),
    FOURTH(0xE3, 0xC6, 0xEA),
    /** Paper that is folded away, cut off or let in. */
    CHANGED(0xD8, 0xD8, 0xD8);

    private static final List<Tint> PARTS = List.of(FIRST, SECOND, THIRD, FOURTH);

    private final int red;
    private final int green;
    private final int blue;

    Tint(int red, int green, int blue) {
        this.red = red;
        this.green = green;
        this.blue = blue;
    }

    /** Red, green and blue in sRGB, each from 0 to 255. */
    public int[] colour() {
        return new int[] {red, green, blue};
    }

    /** The tint of the part of a number, from 0: they come again after the fourth. */
    public static Tint ofPart(int number) {
        return PARTS.get(number % PARTS.size());
    }
}
