package dev.hingepoint.svg.print;

import dev.hingepoint.Message;
import dev.hingepoint.Quantity;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.fit.Body;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.page.Paper;
import java.util.Optional;

/**
 * How to print. All lengths in mm. Begin with {@link #of} and change what is to be different.
 *
 * @param margin left free on every side: printers cannot reach the last 4 to 7 mm (manuals), 10 is kind
 * @param overlap shared by neighbouring pages, where they are glued
 * @param unit that lengths to measure by are written in; the grid of a projection is in inches where it is inches, else in cm
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
        Unit unit,
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

    private static final double NARROWEST_OVERLAP = 2 * PageFrame.ARM;

    /** A strip of which so many would be as wide as the page is more than enough to glue. */
    private static final double WIDEST_OVERLAP = 4;

    /** How large in mm a leaf to read is on a sheet that has room for so many of them. */
    private static final Box LEAF = new Box(0, 0, 280, 262);

    private static final double MANY_LEAVES = 2;

    private static final int LONGEST_NAME = 60;

    /** How far a margin may go where the paper is large, in mm. */
    private static final double WIDEST_MARGIN = 100;

    /** How many times as wide as on paper the lines are on cloth, in the light of a projector. */
    private static final double PROJECTED_WEIGHT = 5;

    /** @throws Refusal for paper or margins that leave no room for the first page's squares, or an overlap that cannot hold the crosses */
    public PrintOptions {
        if (whoFor.length() > LONGEST_NAME || date.length() > LONGEST_NAME) {
            throw new Refusal(Reason.BeyondLimit.of(Message.of("print.names-too-long", LONGEST_NAME), Where.UNKNOWN));
        }
        if (!(margin >= 0 && margin <= WIDEST_MARGIN)) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of("print.margin-range", Quantity.millimetres(WIDEST_MARGIN)), Where.UNKNOWN));
        }
        double width = usable(paper.width(), margin, calibration.perMillimetreAcross());
        double height = usable(paper.height(), margin, calibration.perMillimetreDown());
        if (FirstLeaf.spare(width, height) < 0) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of(
                            "print.margin-too-wide",
                            Quantity.millimetres(margin),
                            paper.name(),
                            Quantity.millimetres(FirstLeaf.SHORT),
                            Quantity.millimetres(FirstLeaf.LONG)),
                    Where.UNKNOWN));
        }
        double widest = Math.floor(Math.min(width, height) / WIDEST_OVERLAP);
        if (!(overlap > NARROWEST_OVERLAP && overlap <= widest)) {
            throw new Refusal(Reason.BeyondLimit.of(
                    Message.of(
                            "print.overlap-range",
                            Quantity.millimetres(NARROWEST_OVERLAP),
                            Quantity.millimetres(widest),
                            paper.name()),
                    Where.UNKNOWN));
        }
    }

    /** A side of the paper within its margins, in mm as it comes out of the printer. */
    private static double usable(double side, double margin, double perMillimetre) {
        return (side - 2 * margin) * perMillimetre;
    }

    /** Height of what is printed on, in mm as it comes out of the printer. */
    private double usableHeight() {
        return usable(paper.height(), margin, calibration.perMillimetreDown());
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
                Unit.MILLIMETRE,
                "",
                "",
                Optional.empty());
    }

    public PrintOptions on(Paper other) {
        return new PrintOptions(
                other, margin, overlap, calibration, scale, pieces, original, cloths, unit, whoFor, date, body);
    }

    public PrintOptions withMargin(double mm) {
        return new PrintOptions(
                paper, mm, overlap, calibration, scale, pieces, original, cloths, unit, whoFor, date, body);
    }

    public PrintOptions withOverlap(double mm) {
        return new PrintOptions(
                paper, margin, mm, calibration, scale, pieces, original, cloths, unit, whoFor, date, body);
    }

    public PrintOptions with(Calibration measured) {
        return new PrintOptions(
                paper, margin, overlap, measured, scale, pieces, original, cloths, unit, whoFor, date, body);
    }

    public PrintOptions with(Scale other) {
        return new PrintOptions(
                paper, margin, overlap, calibration, other, pieces, original, cloths, unit, whoFor, date, body);
    }

    public PrintOptions with(Pieces other) {
        return new PrintOptions(
                paper, margin, overlap, calibration, scale, other, original, cloths, unit, whoFor, date, body);
    }

    public PrintOptions with(Original other) {
        return new PrintOptions(
                paper, margin, overlap, calibration, scale, pieces, other, cloths, unit, whoFor, date, body);
    }

    public PrintOptions with(ClothWidths other) {
        return new PrintOptions(
                paper, margin, overlap, calibration, scale, pieces, original, other, unit, whoFor, date, body);
    }

    public PrintOptions with(Unit other) {
        return new PrintOptions(
                paper, margin, overlap, calibration, scale, pieces, original, cloths, other, whoFor, date, body);
    }

    /** Printed on every piece; empty for nobody, and for no date. */
    public PrintOptions forWhom(String name, String when) {
        return new PrintOptions(
                paper, margin, overlap, calibration, scale, pieces, original, cloths, unit, name, when, body);
    }

    /** For a body that was measured. */
    public PrintOptions forBody(Body of) {
        return new PrintOptions(
                paper,
                margin,
                overlap,
                calibration,
                scale,
                pieces,
                original,
                cloths,
                unit,
                whoFor,
                date,
                Optional.of(of));
    }

    /** Width of what a page shows of the sheet, in mm as it comes out of the printer. */
    double printableWidth() {
        return usable(paper.width(), margin, calibration.perMillimetreAcross());
    }

    /** Height of what a page shows of the sheet, in mm as it comes out of the printer: of a small one less the band that says how small. */
    double printableHeight() {
        double band = scale == Scale.FULL ? 0 : SmallScale.BAND;
        return usableHeight() - band;
    }

    double stepAcross() {
        return printableWidth() - overlap;
    }

    double stepDown() {
        return printableHeight() - overlap;
    }

    /** Whether what is to be read first has room on the sheet itself, beside the pieces, each leaf whole on one page; else it has pages of its own. */
    boolean areLeavesOnSheet() {
        double sheet = (paper.width() - 2 * margin) * (paper.height() - 2 * margin);
        return paper.kind() != Paper.Kind.PROJECTION
                && sheet > MANY_LEAVES * LEAF.width() * LEAF.height()
                && printableWidth() >= ground().width()
                && printableHeight() >= ground().height();
    }

    /** What a leaf on the sheet takes: with as much round it as pages share, so that what is read and measured is never in a strip that is glued. */
    Box ground() {
        return LEAF.grownBy(overlap);
    }

    /** The room of a leaf that is read, in mm as it comes out of the printer. */
    Box leaf() {
        if (areLeavesOnSheet()) {
            return LEAF;
        }
        double height = paper.kind() == Paper.Kind.SHEET ? usableHeight() : LEAF.height();
        return new Box(0, 0, printableWidth(), height);
    }

    /** How many times as wide as usual lines are drawn. */
    double weight() {
        return paper.kind() == Paper.Kind.PROJECTION ? PROJECTED_WEIGHT : 1;
    }

    /** From the sheet, in mm as they come out of the printer, to the page in mm as the printer is told them. */
    Motion toPaper(double left, double top) {
        double across = 1 / calibration.perMillimetreAcross();
        double down = 1 / calibration.perMillimetreDown();
        return new Motion(across, 0, 0, down, margin - left * across, margin - top * down);
    }

    /** On as much of a roll as a sheet needs where one page holds that. */
    PrintOptions cutFor(Box sheet) {
        double needed = sheet.bottom() / calibration.perMillimetreDown() + 2 * margin;
        double least = LEAF.height() + 2 * margin;
        return paper.kind() == Paper.Kind.ROLL && needed <= paper.height()
                ? on(paper.cutTo(paper.width(), Math.max(needed, least)))
                : this;
    }

    /** The paper that is used of a page which shows an area of the sheet, for what is drawn there. */
    Paper used(Box area, Box drawn) {
        Motion toPaper = toPaper(area.left(), area.top());
        double width = toPaper.of(new Point(drawn.right(), 0)).x() + margin;
        double height = toPaper.of(new Point(0, drawn.bottom())).y() + margin;
        return switch (paper.kind()) {
            case SHEET -> paper;
            case ROLL -> paper.cutTo(paper.width(), Math.min(height, paper.height()));
            case PROJECTION -> paper.cutTo(width, height);
        };
    }

    /** A length as a person reads it: "15 mm", or "5/8 in" where inches are asked for. */
    String length(Length length) {
        return unit == Unit.INCH ? length.inInches() : length.toString();
    }

    /** A length to measure by: in mm to a tenth, and in inches where they are asked for. */
    String shown(double mm) {
        Length length = new Length(mm);
        String metric = length.tenths().toString();
        return unit == Unit.INCH ? metric + " (" + length.inInches() + ")" : metric;
    }
}
