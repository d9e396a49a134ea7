package dev.hingepoint.curve;

/** Every tolerance of the library, in millimetres unless said, each with its reason. */
public final class Tolerance {
    /** Gaps between neighbouring edges up to this are closed by the reader: drawings are often rounded to 0.1 mm. */
    public static final double JOINING = 0.1;

    /** A flattened curve leaves the true one by at most this: a tenth of the width of a pencil line. */
    public static final double FLATTENING = 0.01;

    /** Two sewn edges match within this: 1/16 in, the trade's usual limit. */
    public static final double SEAM_MATCH = 25.4 / 16;

    /** Arc lengths, and places found by arc length, are computed to this. */
    public static final double LENGTH = 1e-9;

    /** Two computed points nearer than this are one: far below a drawing's last decimal, far above rounding. */
    public static final double COINCIDENT = 1e-6;

    /** A drawing's last decimal: what differs by less is meant to be one place. */
    public static final double LAST_DECIMAL = 1e-4;

    /** A curve refitted by one cubic may leave the curve it stands for by this. */
    public static final double REFIT = 0.1;

    /** Levels are extended or clipped to the outline by up to this. */
    public static final double LEVEL_REACH = 5;

    /** A bend below this many radians (0.1 degree) is no corner. */
    public static final double CORNER = StrictMath.toRadians(0.1);

    /** Two lines whose directions have a smaller sine than this are parallel: they meet kilometres away, if at all. */
    public static final double PARALLEL = 1e-6;

    private Tolerance() {}
}
