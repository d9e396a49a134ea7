package dev.hingepoint.svg.page;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.fit.Body;
import java.util.Optional;

/**
 * How to print. All lengths in mm. Begin with {@link #of} and change what is to be different.
 *
 * @param margin left free on every side: printers cannot reach the last 4 to 7 mm (manuals), 10 is kind
 * @param overlap shared by neighbouring pages, where they are glued
 * @param whoFor printed on every piece; empty for nobody
 * @param date printed on every piece; empty for none
 * @param body of the person that it is for; where it is not known, the body that the card says the size fits
 */
public record PrintOptions(
        Paper paper,
        double margin,
        double overlap,
        Calibration calibration,
        Scale scale,
        Pieces pieces,
        Original original,
        ClothWidths cloths,
        String whoFor,
        String date,
        Optional<Body> body) {
    /** How pieces are drawn that are cut more than once. */
    public enum Pieces {
        /** As the paper is: half of what lies on a fold, one of a pair. */
        AS_DRAWN,
        /** As they lie on a single layer of cloth: what lies on a fold whole, both of a pair. */
        UNFOLDED
    }

    /** Whether the lines of the pattern are drawn as they were before it was altered. */
    public enum Original {
        LEFT_OUT,
        SHOWN
    }

    /** What the first page's squares and words take; they keep off the overlap, which is on the next pages too. */
    private static final double FIRST_PAGE_SHORT = 170;

    private static final double FIRST_PAGE_LONG = 242;
    private static final double NARROWEST_OVERLAP = 2 * Tiling.ARM;

    /** @throws Refusal for margins that leave no room for the first page's squares, or an overlap that cannot hold the crosses */
    public PrintOptions {
        double shorter = Math.min(paper.width(), paper.height());
        double longer = Math.max(paper.width(), paper.height());
        double room = Math.min(shorter - FIRST_PAGE_SHORT, longer - FIRST_PAGE_LONG);
        if (room <= NARROWEST_OVERLAP) {
            throw new Refusal(Reason.BeyondLimit.of(
                    paper.name() + " is too small for the first page's squares; paper of at least "
                            + Reason.millimetres(Math.ceil(FIRST_PAGE_SHORT + NARROWEST_OVERLAP + 1)) + " x "
                            + Reason.millimetres(Math.ceil(FIRST_PAGE_LONG + NARROWEST_OVERLAP + 1)) + " would work",
                    Where.UNKNOWN));
        }
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

    /** On a printer that is true to scale, at full scale, for nobody in particular. */
    public static PrintOptions of(Paper paper) {
        return new PrintOptions(
                paper,
                10,
                10,
                Calibration.TRUE,
                Scale.FULL,
                Pieces.AS_DRAWN,
                Original.LEFT_OUT,
                ClothWidths.USUAL,
                "",
                "",
                Optional.empty());
    }

    public PrintOptions on(Paper other) {
        return new PrintOptions(
                other, margin, overlap, calibration, scale, pieces, original, cloths, whoFor, date, body);
    }

    public PrintOptions withMargin(double mm) {
        return new PrintOptions(paper, mm, overlap, calibration, scale, pieces, original, cloths, whoFor, date, body);
    }

    public PrintOptions withOverlap(double mm) {
        return new PrintOptions(paper, margin, mm, calibration, scale, pieces, original, cloths, whoFor, date, body);
    }

    public PrintOptions with(Calibration measured) {
        return new PrintOptions(paper, margin, overlap, measured, scale, pieces, original, cloths, whoFor, date, body);
    }

    public PrintOptions with(Scale other) {
        return new PrintOptions(
                paper, margin, overlap, calibration, other, pieces, original, cloths, whoFor, date, body);
    }

    public PrintOptions with(Pieces other) {
        return new PrintOptions(
                paper, margin, overlap, calibration, scale, other, original, cloths, whoFor, date, body);
    }

    public PrintOptions with(Original other) {
        return new PrintOptions(paper, margin, overlap, calibration, scale, pieces, other, cloths, whoFor, date, body);
    }

    public PrintOptions with(ClothWidths other) {
        return new PrintOptions(
                paper, margin, overlap, calibration, scale, pieces, original, other, whoFor, date, body);
    }

    public PrintOptions forWhom(String name, String when) {
        return new PrintOptions(paper, margin, overlap, calibration, scale, pieces, original, cloths, name, when, body);
    }

    public PrintOptions forBody(Body of) {
        return new PrintOptions(
                paper, margin, overlap, calibration, scale, pieces, original, cloths, whoFor, date, Optional.of(of));
    }

    /** Width of what a page shows of the sheet, in mm as it comes out of the printer. */
    double printableWidth() {
        return (paper.width() - 2 * margin) * calibration.perMillimetreAcross();
    }

    double printableHeight() {
        return (paper.height() - 2 * margin) * calibration.perMillimetreDown();
    }

    double stepAcross() {
        return printableWidth() - overlap;
    }

    double stepDown() {
        return printableHeight() - overlap;
    }
}
