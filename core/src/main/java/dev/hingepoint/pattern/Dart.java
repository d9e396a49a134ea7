package dev.hingepoint.pattern;

import dev.hingepoint.curve.Path;
import java.util.List;

/** A fold of cloth that is sewn away, running to nothing at a tip. */
public sealed interface Dart extends Mark permits EdgeDart, DoublePointedDart {
    /** The two lines that are sewn together. */
    List<Path> legs();

    /** The two lines as they run from one tip: places at equal distances along them are sewn together. */
    List<Path> legsFromTip();
}
