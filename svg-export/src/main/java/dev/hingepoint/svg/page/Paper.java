package dev.hingepoint.svg.page;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import java.util.List;
import java.util.Locale;

/**
 * A sheet of paper, upright, in mm: ISO 216 sizes, and the North American ones.
 */
public record Paper(String name, double width, double height) {
    private static final double INCH = 25.4;
    private static final List<Paper> KNOWN = List.of(
            new Paper("A4", 210, 297),
            new Paper("A3", 297, 420),
            new Paper("A2", 420, 594),
            new Paper("A1", 594, 841),
            new Paper("A0", 841, 1189),
            new Paper("Letter", 8.5 * INCH, 11 * INCH),
            new Paper("Legal", 8.5 * INCH, 14 * INCH),
            new Paper("Tabloid", 11 * INCH, 17 * INCH));

    /** @throws Refusal where no paper has that name */
    public static Paper named(String name) {
        return KNOWN.stream()
                .filter(paper -> paper.name.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new Refusal(new Reason.Unreadable(
                        "there is no paper '" + name + "'; there are "
                                + String.join(
                                        ", ", KNOWN.stream().map(Paper::name).toList()),
                        Where.UNKNOWN)));
    }
}
