package dev.hingepoint.svg.page;

/**
 * One page to print: everything on it in mm from the paper's upper left corner, lines cut off at the printable area. This is the one page model that every writer writes from.
 *
 * @param row of the page in the sheet, from 1
 * @param column of the page in the sheet, from 1
 */
public record Page(int row, int column, Paper paper, double margin, Drawn drawn) {
    /** "2.3": row and column. */
    public String name() {
        return row + "." + column;
    }
}
