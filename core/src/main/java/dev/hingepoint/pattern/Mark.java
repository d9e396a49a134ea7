package dev.hingepoint.pattern;

import dev.hingepoint.curve.Motion;

/** Anything drawn on the paper besides the stitching line. It moves with the paper that it lies on. */
public sealed interface Mark permits Level, Grain, Dart, Notch, DrawnLine, MarkedPoint {
    /** In the trade's words. */
    String name();

    Mark moved(Motion motion);
}
