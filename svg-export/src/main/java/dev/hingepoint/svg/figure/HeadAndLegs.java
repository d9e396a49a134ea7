package dev.hingepoint.svg.figure;

import static dev.hingepoint.svg.figure.Figure.point;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.List;
import java.util.stream.Stream;

/** What is the same of every body here. Legs begin above the hem, which cuts them off. */
final class HeadAndLegs {
    private static final Vector RIGHT = new Vector(1, 0);

    static final Contour OUTER_LEG = Contour.through(
            point(0.5, 4.9),
            point(0.425, 5.4),
            point(0.45, 5.9),
            point(0.375, 6.5),
            point(0.285, 7.02),
            point(0.325, 7.22),
            point(0.375, 7.42),
            point(0.29, 7.5),
            point(0.19, 7.42));
    static final Contour INNER_LEG = Contour.through(
            point(0.06, 4.9),
            point(0.115, 5.4),
            point(0.1, 5.85),
            point(0.14, 6.4),
            point(0.165, 7.0),
            point(0.155, 7.22),
            point(0.19, 7.42));

    static final Contour SHIN = Contour.through(
            point(-0.24, 4.9),
            point(-0.2, 5.4),
            point(-0.15, 5.9),
            point(-0.115, 6.5),
            point(-0.105, 7.0),
            point(-0.25, 7.25),
            point(-0.47, 7.37),
            point(-0.51, 7.46),
            point(-0.42, 7.5),
            point(-0.2, 7.49),
            point(0.05, 7.5));
    static final Contour CALF = Contour.through(
            point(0.22, 4.9),
            point(0.15, 5.4),
            point(0.21, 5.85),
            point(0.15, 6.4),
            point(0.075, 6.95),
            point(0.125, 7.25),
            point(0.13, 7.42),
            point(0.05, 7.5));

    private HeadAndLegs() {}

    /** The right half, from the front or the back. */
    static Path halfHead() {
        return Smooth.through(
                RIGHT,
                List.of(point(0, 0), point(0.29, 0.17), point(0.355, 0.45), point(0.27, 0.8), point(0, 1)),
                RIGHT.negated());
    }

    /** From the left side, moved by so much. */
    static Path head(Vector poke) {
        Stream<Point> points = Stream.of(
                point(-0.02, 0),
                point(0.29, 0.13),
                point(0.385, 0.43),
                point(0.3, 0.7),
                point(0.1, 0.85),
                point(-0.22, 0.995),
                point(-0.325, 0.94),
                point(-0.36, 0.7),
                point(-0.375, 0.42),
                point(-0.28, 0.13),
                point(-0.02, 0));
        return Smooth.through(RIGHT, points.map(point -> point.plus(poke)).toList(), RIGHT);
    }
}
