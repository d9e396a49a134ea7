package dev.hingepoint.svg.page;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Tolerance;

/**
 * How to print. All lengths in mm.
 *
 * @param margin left free on every side: printers cannot reach the last 4 to 7 mm (manuals), 10 is kind
 * @param overlap shared by neighbouring pages, where they are glued
 * @param whoFor printed on every piece; empty for nobody
 * @param date printed on every piece; empty for none
 */
public record PrintOptions(Paper paper, double margin, double overlap, String whoFor, String date) {
    /** What the first page's squares and words take; they keep off the overlap, which is on the next pages too. */
    private static final double FIRST_PAGE_WIDTH = 170;

    private static final double FIRST_PAGE_HEIGHT = 248;
    private static final double NARROWEST_OVERLAP = 2 * Tiling.ARM;

    /** @throws Refusal for margins that leave no room for the first page's squares, or an overlap that cannot hold the crosses */
    public PrintOptions {
        double room = Math.min(paper.width() - FIRST_PAGE_WIDTH, paper.height() - FIRST_PAGE_HEIGHT);
        if (!(overlap > NARROWEST_OVERLAP && overlap <= room)) {
            throw new Refusal(Reason.BeyondLimit.of(
                    "the overlap of the pages must be more than " + Reason.millimetres(NARROWEST_OVERLAP)
                            + ", so that the crosses in it have room, and at most " + Reason.millimetres(room) + " on "
                            + paper.name(),
                    Where.UNKNOWN));
        }
        double widest = (room - overlap) / 2;
        if (!(margin >= 0 && margin <= widest + Tolerance.COINCIDENT)) {
            throw new Refusal(Reason.BeyondLimit.of(
                    "a margin must be between 0 and " + Reason.millimetres(widest) + " on " + paper.name()
                            + ", so that the first page's squares have room",
                    Where.UNKNOWN));
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
