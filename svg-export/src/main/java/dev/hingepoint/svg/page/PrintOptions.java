package dev.hingepoint.svg.page;

/**
 * How to print. All lengths in mm.
 *
 * @param margin left free on every side: printers cannot reach the last 4 to 7 mm (manuals), 10 is kind
 * @param overlap shared by neighbouring pages, where they are glued
 * @param whoFor printed on every piece; empty for nobody
 * @param date printed on every piece; empty for none
 */
public record PrintOptions(Paper paper, double margin, double overlap, String whoFor, String date) {
    private static final double FIRST_PAGE_WIDTH = 170;
    private static final double FIRST_PAGE_HEIGHT = 250;

    public PrintOptions {
        boolean holdsFirstPage = usable(paper.width(), margin) >= FIRST_PAGE_WIDTH
                && usable(paper.height(), margin) >= FIRST_PAGE_HEIGHT;
        if (!(margin >= 0 && overlap > 2 * Tiling.ARM && holdsFirstPage)) {
            throw new IllegalArgumentException(
                    "the margins must leave room for the first page's squares, and the overlap for the crosses in it");
        }
    }

    public static PrintOptions of(Paper paper) {
        return new PrintOptions(paper, 10, 10, "", "");
    }

    public PrintOptions forWhom(String name, String when) {
        return new PrintOptions(paper, margin, overlap, name, when);
    }

    private static double usable(double side, double margin) {
        return side - 2 * margin;
    }

    double printableWidth() {
        return usable(paper.width(), margin);
    }

    double printableHeight() {
        return usable(paper.height(), margin);
    }

    double stepAcross() {
        return printableWidth() - overlap;
    }

    double stepDown() {
        return printableHeight() - overlap;
    }
}
