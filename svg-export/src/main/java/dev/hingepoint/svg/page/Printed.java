package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import java.util.List;

/**
 * What is printed: the sheet, and the pages it is cut into.
 *
 * @param title the pattern's name, and the size
 * @param sheet everything in mm from the sheet's upper left corner
 * @param pieces where each lies on the sheet
 * @param pages row by row; those with nothing to cut on are left out
 * @param notes what a person must do by hand
 */
public record Printed(
        String title, Drawn sheet, List<Page> pages, List<Placed> pieces, List<String> notes, PrintOptions options) {
    /** Where a piece lies on the sheet. */
    public record Placed(String piece, Box box) {}

    public Printed {
        pages = List.copyOf(pages);
        pieces = List.copyOf(pieces);
        notes = List.copyOf(notes);
    }
}
