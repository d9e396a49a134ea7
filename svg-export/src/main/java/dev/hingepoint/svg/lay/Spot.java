package dev.hingepoint.svg.lay;

import dev.hingepoint.curve.Motion;

/**
 * Where a shape lies on a sheet.
 *
 * @param x its first column
 * @param y its first row
 * @param fresh how many pages it needed that nothing else had needed
 */
record Spot(Lying lying, int x, int y, int fresh) {
    /** The row below its lowest. */
    int bottom() {
        return y + lying.mask().rows();
    }

    /** The column of its first page. */
    int column() {
        return x / lying.grid().across();
    }

    /** The row of its first page. */
    int row() {
        return y / lying.grid().down();
    }

    long[] pattern() {
        return lying.footprint().pattern(x, y);
    }

    Motion motion() {
        return lying.at(x, y);
    }

    /** Where it ends to the right, with what it keeps from an edge, in mm. */
    double right() {
        return lying.left() * 2 + lying.shape().width() + x * lying.grid().width();
    }

    /** Where it ends below, with what it keeps from an edge, in mm. */
    double lower() {
        return lying.top() * 2 + lying.shape().height() + y * lying.grid().height();
    }
}
