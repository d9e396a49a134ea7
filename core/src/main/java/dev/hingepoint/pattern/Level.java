package dev.hingepoint.pattern;

import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;

/**
 * A body level drawn across the piece from outline to outline: bust, waist, high hip, hip.
 *
 * @param path straight parts only; which end is on the centre line is the piece's to say
 */
public record Level(String name, Path path) implements Mark {
    public Level {
        if (!path.segments().stream().allMatch(Line.class::isInstance)) {
            throw new IllegalArgumentException("the level " + name + " must be of straight parts");
        }
    }

    @Override
    public Level moved(Motion motion) {
        return new Level(name, path.moved(motion));
    }
}
