package dev.hingepoint.svg.page;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.Numbers;
import dev.hingepoint.svg.file.Sides;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is printed on, in mm: a sheet of an ISO 216 or a North American size, or of any other; a roll; or no paper at all, but a light that is thrown on the cloth.
 *
 * @param width as it goes through the printer; of a roll, its width
 * @param height of a roll or a projection the most that one file can hold, of which only so much is used as is drawn on
 */
public record Paper(String name, double width, double height, Kind kind) {
    /** How much of it is used. */
    public enum Kind {
        /** Each page whole. */
        SHEET,
        /** As long as is needed. */
        ROLL,
        /** As wide and as long as is needed, on one page. */
        PROJECTION
    }

    private static final double INCH = Unit.INCH.inMillimetres();

    /** No page of a PDF is larger than 200 in (ISO 32000-1, annex C: 14 400 units of 1/72 in). */
    private static final double LONGEST = 5000;

    private static final double SMALLEST = 100;

    public static final Paper A4 = sheet("A4", 210, 297);
    public static final Paper A3 = sheet("A3", 297, 420);
    public static final Paper LETTER = sheet("Letter", 8.5 * INCH, 11 * INCH);

    private static final List<Paper> KNOWN = List.of(
            A4,
            A3,
            sheet("A2", 420, 594),
            sheet("A1", 594, 841),
            sheet("A0", 841, 1189),
            LETTER,
            sheet("Legal", 8.5 * INCH, 14 * INCH),
            sheet("Tabloid", 11 * INCH, 17 * INCH),
            new Paper("projector", LONGEST, LONGEST, Kind.PROJECTION));
    private static final Pattern ROLL = Pattern.compile("(?i)roll\\s+(.+)");

    private static Paper sheet(String name, double width, double height) {
        return new Paper(name, width, height, Kind.SHEET);
    }

    /**
     * A paper by name ({@code a4}, {@code letter}, {@code projector}), by its sides ({@code 320x450}, {@code 12x18 in}), or a roll by its width ({@code roll 914 mm}); a
     * bare number is in mm.
     *
     * @throws Refusal where it names no paper
     */
    public static Paper named(String name) {
        String wanted = name.strip();
        for (Paper paper : KNOWN) {
            if (paper.name.toLowerCase(Locale.ROOT).equals(wanted.toLowerCase(Locale.ROOT))) {
                return paper;
            }
        }
        Matcher roll = ROLL.matcher(wanted);
        if (roll.matches()) {
            double width = side(name, Length.parse(roll.group(1), Unit.MILLIMETRE));
            return new Paper("roll " + Reason.millimetres(width), width, LONGEST, Kind.ROLL);
        }
        return Sides.parse(wanted)
                .map(sides -> sheet(side(name, sides.width()), side(name, sides.height())))
                .orElseThrow(() -> new Refusal(new Reason.Unreadable(
                        Message.of(
                                "page.paper.none",
                                name,
                                KNOWN.stream().map(Paper::name).toList()),
                        Where.UNKNOWN)));
    }

    private static Paper sheet(double width, double height) {
        return sheet(Numbers.of(width, 2) + " \u00d7 " + Reason.millimetres(height), width, height);
    }

    private static double side(String name, Length length) {
        if (!(length.mm() >= SMALLEST && length.mm() <= LONGEST)) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of(
                            "page.paper.side-range",
                            name,
                            Quantity.millimetres(length.mm()),
                            Quantity.millimetres(SMALLEST),
                            Quantity.millimetres(LONGEST)),
                    Where.UNKNOWN));
        }
        return length.mm();
    }

    /** The same sheet turned by a quarter. */
    public Paper turned() {
        return new Paper(name, height, width, kind);
    }

    /** The same paper, cut off to what is used of it. */
    public Paper cutTo(double usedWidth, double usedHeight) {
        return new Paper(name, usedWidth, usedHeight, kind);
    }
}
