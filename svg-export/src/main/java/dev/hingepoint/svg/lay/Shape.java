package dev.hingepoint.svg.lay;

import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Lays;
import java.util.List;

/**
 * The ground that something takes.
 *
 * @param grounds closed rings in mm, each filled, in a frame of its own: an outline, the rooms of words beside it. A line takes its ground as a ring that runs there and
 *     back. Rings may lie in one another; all of them are drawn, and need a page to be drawn on.
 * @param way which ways round it may lie
 */
public record Shape(List<List<Point>> grounds, Lays.Way way) {
    public Shape {
        grounds = grounds.stream().map(List::copyOf).toList();
        if (grounds.stream().allMatch(List::isEmpty)) {
            throw new IllegalArgumentException("a shape needs ground");
        }
    }
}
