package dev.hingepoint.pattern;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;

/** Any other line drawn on the paper: "lengthen or shorten", a style line, a pocket's place. */
public record DrawnLine(String name, Path path) implements Mark {
    @Override
    public DrawnLine moved(Motion motion) {
        return new DrawnLine(name, path.moved(motion));
    }
}
