package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.svg.page.Layer;
import dev.hingepoint.svg.page.Style;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An alteration carried from nothing to its full amount: the same recipe by a growing fraction of it.
 *
 * @param box in hundredths of a mm of the pattern, as all its coordinates are
 * @param moves what of it the steps are done in, with some paper round it
 * @param places where each piece lies: from mm of the pattern, by its name
 * @param frames at least 13, from nothing to everything; all have the same lines, in the same order; where a part of
 *     the alteration is refused, the frame before stands in its place
 */
public record Carry(Box box, Box moves, List<Frame> frames, Map<String, Motion> places) {
    /** So many units of its coordinates are a mm of the pattern. */
    static final double UNITS = 100;

    /**
     * The pattern as a fraction of the alteration leaves it.
     *
     * @param told how much of the amount, for people: "3 mm of 12 mm"
     */
    public record Frame(double fraction, String told, List<Line> lines) {
        public Frame {
            lines = List.copyOf(lines);
        }
    }

    /**
     * All lines of one kind.
     *
     * @param data path data of SVG; empty where there is none
     */
    public record Line(Layer layer, Style style, String data) {}

    public Carry {
        frames = List.copyOf(frames);
        places = Collections.unmodifiableMap(new LinkedHashMap<>(places));
    }
}
