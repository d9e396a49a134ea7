package dev.hingepoint.pattern;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;

/**
 * A point on the paper, such as the bust apex.
 *
 * @param radius millimetres: how large it is drawn
 */
public record MarkedPoint(String name, Point at, double radius) implements Mark {
    @Override
    public MarkedPoint moved(Motion motion) {
        return new MarkedPoint(name, motion.of(at), radius);
    }
}
