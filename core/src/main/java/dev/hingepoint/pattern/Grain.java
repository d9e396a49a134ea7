package dev.hingepoint.pattern;

import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Vector;

/** The grainline: one straight line, never bent. */
public record Grain(Line line) implements Mark {
    @Override
    public String name() {
        return "grain";
    }

    /** Unit direction from the line's upper end down. */
    public Vector down() {
        Vector direction = line.tangent(0);
        return direction.y() < 0 || direction.y() == 0 && direction.x() < 0 ? direction.negated() : direction;
    }

    @Override
    public Grain moved(Motion motion) {
        return new Grain(line.moved(motion));
    }
}
