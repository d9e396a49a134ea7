package dev.hingepoint.svg.page;

import java.util.stream.Stream;

/** How a line is drawn: told apart without colour, by width and dashes (common practice; widths after ISO 128: wide and narrow lines). */
public enum Style {
    CUTTING(0.5, ""),
    STITCHING(0.3, "4 2"),
    FOLD(0.5, "12 2 2 2"),
    LEVEL(0.2, "1 1.5"),
    DART(0.3, "4 2"),
    MARK(0.3, ""),
    LEADER(0.18, ""),
    BEFORE(0.3, "1.5 1.5"),
    AFTER(0.7, ""),
    SQUARE(0.2, ""),
    FRAME(0.15, "0.5 2"),
    JOIN(0.25, "");

    private final double width;
    private final String dashes;

    Style(double width, String dashes) {
        this.width = width;
        this.dashes = dashes;
    }

    /** Stroke width in mm. */
    public double width() {
        return width;
    }

    /** Lengths of dashes and gaps in mm; empty for an unbroken line. */
    public String dashes() {
        return dashes;
    }

    /** After how many mm the dashes begin anew; 0 for an unbroken line. */
    double dashLength() {
        return dashes.isEmpty()
                ? 0
                : Stream.of(dashes.split(" ")).mapToDouble(Double::parseDouble).sum();
    }
}
