package dev.hingepoint.svg.lay;

import dev.hingepoint.curve.Motion;
import java.util.List;

/**
 * Where shapes lie. The upper left corner of what they lie on is (0, 0).
 *
 * @param places how each shape moves, in the order in which the shapes were given: a turn by whole quarters, then a shift
 * @param width in mm of what they take, with what they keep from its edges
 * @param height in mm of what they take, with what they keep from its edges
 */
public record Laid(List<Motion> places, double width, double height) {
    public Laid {
        places = List.copyOf(places);
    }
}
