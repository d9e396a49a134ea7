package dev.hingepoint.pattern;

import dev.hingepoint.curve.Path;
import java.util.List;

/** A fold of cloth that is sewn away, running to nothing at a tip. */
public sealed interface Dart extends Mark permits EdgeDart, DoublePointedDart {
    /** The two lines that are sewn together. */
    List<Path> legs();
}
