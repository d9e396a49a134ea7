package dev.hingepoint.pattern;

import dev.hingepoint.curve.Path;

/**
 * One named edge of a piece's stitching line.
 *
 * @param name in the trade's words; unique in its piece
 * @param path in the direction in which the piece was drawn
 */
public record Edge(String name, Kind kind, Path path) {
    /** What happens at the edge. */
    public enum Kind {
        SEAM,
        FOLD,
        HEM,
        /** Bound, banded or rolled: no allowance. */
        BOUND;

        public boolean takesAllowance() {
            return this == SEAM || this == HEM;
        }
    }

    public static Edge seam(String name, Path path) {
        return new Edge(name, Kind.SEAM, path);
    }

    public static Edge fold(String name, Path path) {
        return new Edge(name, Kind.FOLD, path);
    }

    public static Edge hem(String name, Path path) {
        return new Edge(name, Kind.HEM, path);
    }

    public Edge with(Path changed) {
        return new Edge(name, kind, changed);
    }

    public Edge reversed() {
        return with(path.reversed());
    }
}
