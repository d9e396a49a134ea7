package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Style;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is printed: the pages that are read, and the sheet with the pages that it is cut into.
 *
 * @param title what it is, and in which size
 * @param sheet everything in mm from the sheet's upper left corner, as it comes out of the printer
 * @param leaves the pages to read first, and not to tape in; none where they are on the sheet itself
 * @param pages of the sheet, row by row; those with nothing to cut on are left out
 * @param leastPages fewer pages could not hold the pieces: their area, by that of what a page can show
 * @param pieces where each lies on the sheet
 * @param notes what a person must do by hand
 */
public record Printed(
        String title,
        Drawn sheet,
        List<Page> leaves,
        List<Page> pages,
        int leastPages,
        List<Placed> pieces,
        List<String> notes,
        PrintOptions options) {
    /**
     * Where a piece lies on the sheet.
     *
     * @param number of the piece among all, from 1, as its label has it: both of a pair have one
     * @param rings the lines that it is cut along, in mm from the sheet's upper left corner
     */
    public record Placed(String piece, int number, List<List<Point>> rings) {
        public Placed {
            rings = rings.stream().map(List::copyOf).toList();
        }

        Box box() {
            return rings.stream().map(Box::around).reduce(Box::union).orElseThrow();
        }
    }

    public Printed {
        leaves = List.copyOf(leaves);
        pages = List.copyOf(pages);
        pieces = List.copyOf(pieces);
        notes = List.copyOf(notes);
    }

    /** The same with pages to read first. */
    Printed with(List<Page> toRead) {
        return new Printed(title, sheet, toRead, pages, leastPages, pieces, notes, options);
    }

    /** The page with the squares, which is printed alone first; empty for what is not printed, but projected. */
    public Optional<Page> toMeasure() {
        return all().stream()
                .filter(page -> page.drawn().strokes().stream()
                                .filter(stroke -> stroke.style() == Style.SQUARE)
                                .count()
                        == FirstLeaf.SQUARES)
                .findFirst();
    }

    /** Every page, in the order in which they are printed. */
    public List<Page> all() {
        return Stream.concat(leaves.stream(), pages.stream()).toList();
    }
}
