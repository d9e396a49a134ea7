package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import java.util.List;

/**
 * A tinted area, under all lines.
 *
 * @param ring the line round it; its end is joined to its start
 */
public record Area(Tint tint, List<Point> ring) {
    public Area {
        ring = List.copyOf(ring);
        if (ring.size() < 3) {
            throw new IllegalArgumentException("an area needs three points");
        }
    }

    public Area moved(Motion motion) {
        return new Area(tint, motion.of(ring));
    }

    public Box bounds() {
        return Box.around(ring);
    }
}
