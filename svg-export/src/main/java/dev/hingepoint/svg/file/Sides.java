package dev.hingepoint.svg.file;

import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A width and a height as people write them: {@code 320x450}, {@code 12 x 18 in}, {@code 98.5x99.0mm}. */
public record Sides(Length width, Length height) {
    private static final Pattern WRITTEN =
            Pattern.compile("(?i)([0-9. /]+?)([a-z\"]*)\\s*[x\u00d7]\\s*([0-9. /]+?)([a-z\"]*)");

    /**
     * Reads them; the unit of the height is that of a bare width as well, and a bare height is in mm. Empty for what is not written so.
     *
     * @throws dev.hingepoint.Refusal for a number or a unit that is none
     */
    public static Optional<Sides> parse(String text) {
        Matcher sides = WRITTEN.matcher(text.strip());
        if (!sides.matches()) {
            return Optional.empty();
        }
        Unit unit = unit(sides.group(4), Unit.MILLIMETRE);
        return Optional.of(new Sides(
                Length.parse(sides.group(1), unit(sides.group(2), unit)), Length.parse(sides.group(3), unit)));
    }

    private static Unit unit(String written, Unit usual) {
        return written.isEmpty() ? usual : Unit.parse(written);
    }
}
