package dev.hingepoint.svg.page;

import java.util.List;
import java.util.stream.Stream;

/** How a line is drawn: told apart without colour, by width and dashes (common practice; widths after ISO 128: wide and narrow lines). */
public enum Style {
    CUTTING(Layer.CUTTING, 0.5, ""),
    STITCHING(Layer.STITCHING, 0.3, "4 2"),
    /** The stitching line where it lies on a fold. */
    ON_FOLD(Layer.STITCHING, 0.3, "12 2 2 2"),
    /** The stitching line as it is now, over the original one. */
    NOW(Layer.STITCHING, 0.6, ""),
    FOLD(Layer.CUTTING, 0.5, "12 2 2 2"),
    /** The middle of a piece that is drawn whole. */
    CENTRE(Layer.MARKS, 0.2, "12 2 2 2"),
    LEVEL(Layer.MARKS, 0.2, "8 1.5 1 1.5"),
    DART(Layer.MARKS, 0.3, "4 2"),
    MARK(Layer.MARKS, 0.3, ""),
    LEADER(Layer.LABELS, 0.18, ""),
    BEFORE(Layer.ORIGINAL, 0.4, "0.5 1.3"),
    AFTER(Layer.CUTTING, 0.7, ""),
    /** A line to cut along. */
    SLASH(Layer.STEP, 0.5, "3 1"),
    HINGE(Layer.STEP, 0.4, ""),
    /** The way that a part goes, and where it lay. */
    WAY(Layer.STEP, 0.5, ""),
    LEFT(Layer.STEP, 0.25, "0.5 1.3"),
    /** A line that a step drew. */
    DRAWN(Layer.STEP, 0.7, ""),
    /** The outline of a body and its dress, the dress's seams and edges, and a wrinkle, which is several strokes side by side, so that it tapers. */
    FIGURE(Layer.FIGURE, 0.35, ""),
    SEAM(Layer.FIGURE, 0.18, ""),
    WRINKLE(Layer.FIGURE, 0.2, ""),
    SQUARE(Layer.PAGE, 0.2, ""),
    /** A rule, a box to tick, the outline of a page on the map. */
    RULE(Layer.PAGE, 0.2, ""),
    /** Where a page is cut off before it is laid on its neighbour. */
    TRIM(Layer.PAGE, 0.25, ""),
    /** How far a neighbour lies on a page. */
    GLUE(Layer.PAGE, 0.2, "3 1.5"),
    JOIN(Layer.PAGE, 0.25, ""),
    GRID(Layer.GRID, 0.08, ""),
    GRID_WIDE(Layer.GRID, 0.2, ""),
    NEST_1(Layer.CUTTING, 0.4, ""),
    NEST_2(Layer.CUTTING, 0.4, "8 2"),
    NEST_3(Layer.CUTTING, 0.4, "2.5 1.5"),
    NEST_4(Layer.CUTTING, 0.6, "0.8 1.6"),
    NEST_5(Layer.CUTTING, 0.4, "9 1.2 2.5 1.2 2.5 1.2"),
    NEST_6(Layer.CUTTING, 0.4, "5 1.2 0.8 1.2 0.8 1.2"),
    NEST_7(Layer.CUTTING, 0.8, ""),
    NEST_8(Layer.CUTTING, 0.8, "8 2.5"),
    NEST_9(Layer.CUTTING, 0.8, "2.5 2"),
    NEST_10(Layer.CUTTING, 0.8, "9 1.5 2.5 1.5");

    private static final List<Style> NEST =
            Stream.of(values()).filter(style -> style.name().startsWith("NEST")).toList();

    private final Layer layer;
    private final double width;
    private final List<Double> dashes;

    Style(Layer layer, double width, String dashes) {
        this.layer = layer;
        this.width = width;
        this.dashes = dashes.isEmpty()
                ? List.of()
                : Stream.of(dashes.split(" ")).map(Double::valueOf).toList();
    }

    /** The cutting lines of sizes that lie in one another, each told from the others: as many as there are. */
    public static List<Style> nest() {
        return NEST;
    }

    public Layer layer() {
        return layer;
    }

    /** Stroke width in mm. */
    public double width() {
        return width;
    }

    /** Lengths of dashes and gaps in mm, in turn; none for an unbroken line. */
    public List<Double> dashes() {
        return dashes;
    }

    /** After how many mm the dashes begin anew; 0 for an unbroken line. */
    public double dashLength() {
        return dashes.stream().mapToDouble(length -> length).sum();
    }
}
