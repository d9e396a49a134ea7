package dev.hingepoint.svg.print;

import dev.hingepoint.svg.page.Paper;
import java.util.List;

/**
 * How large words and signs are on the sheet, in mm, whatever the scale of the piece that they stand on.
 *
 * @param label types that are tried for a label, the largest first
 * @param tight types for a label, or a name alone, where there is less room
 * @param heading how many times as large as the rest of its label a piece's name is set
 * @param along types for names along lines and beside points, the larger first
 * @param beside type of what stands beside a piece
 * @param clear how far words keep from lines and from one another
 * @param signs how many times as large as usual arrow heads and crosses are
 */
record TypeSizes(
        List<Double> label,
        List<Double> tight,
        double heading,
        List<Double> along,
        double beside,
        double clear,
        double signs) {
    /** To be read on paper in the hand; none is smaller than 2.5 mm, 7 point. */
    static final TypeSizes USUAL =
            new TypeSizes(List.of(5.5, 4.8, 4.2, 3.6), List.of(3.0, 2.5), 1, List.of(3.5, 2.5), 3.6, 1, 1);

    /** To be read on a table, thrown by a light from above: three to four times as large (common practice, no source). */
    static final TypeSizes PROJECTED =
            new TypeSizes(List.of(14.0, 12.0, 10.0), List.of(8.0), 1.5, List.of(12.0, 8.0), 12, 3, 3);

    TypeSizes {
        label = List.copyOf(label);
        tight = List.copyOf(tight);
        along = List.copyOf(along);
    }

    static TypeSizes of(PrintOptions options) {
        return options.paper().kind() == Paper.Kind.PROJECTION ? PROJECTED : USUAL;
    }

    /** The smallest type along a line or alone. */
    double smallest() {
        return along.get(along.size() - 1);
    }

    /** How far in mm words keep from the line they stand beside. */
    double keptOff() {
        return 1.3 * clear;
    }
}
