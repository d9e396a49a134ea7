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
    public PrintOptions {
        if (!(margin >= 0 && overlap >= 0) || usable(paper.width(), margin) <= overlap + 100) {
            throw new IllegalArgumentException("the margins and the overlap leave nothing of the paper");
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
