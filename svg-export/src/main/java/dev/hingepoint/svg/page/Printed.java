package dev.hingepoint.svg.page;

import java.util.List;

/**
 * What is printed: the sheet, and the pages it is cut into.
 *
 * @param sheet everything in mm from the sheet's upper left corner
 * @param pages row by row; those with nothing to cut on are left out
 */
public record Printed(Drawn sheet, List<Page> pages, PrintOptions options) {
    public Printed {
        pages = List.copyOf(pages);
    }
}
