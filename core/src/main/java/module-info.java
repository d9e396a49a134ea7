/** Curves, pattern pieces, the moves of the paper, the alterations, and what must hold of them. */
module dev.hingepoint.core {
    requires transitive org.locationtech.jts;

    exports dev.hingepoint;
    exports dev.hingepoint.curve;
    exports dev.hingepoint.pattern;
    exports dev.hingepoint.move;
    exports dev.hingepoint.check;
    exports dev.hingepoint.alter;
    exports dev.hingepoint.allowance;
    exports dev.hingepoint.fit;
    exports dev.hingepoint.make;
}
