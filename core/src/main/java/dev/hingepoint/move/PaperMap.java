package dev.hingepoint.move;

import dev.hingepoint.curve.Point;

/** Where each point of the old paper lies on the new, both in mm: the same answer to the same point, whoever asks. */
@FunctionalInterface
public interface PaperMap {
    /** Paper that stays where it is. */
    PaperMap STAY = point -> point;

    Point of(Point point);

    /** This map followed by {@code next}. */
    default PaperMap then(PaperMap next) {
        return point -> next.of(of(point));
    }
}
