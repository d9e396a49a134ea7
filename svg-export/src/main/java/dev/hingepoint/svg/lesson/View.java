package dev.hingepoint.svg.lesson;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Vector;

/**
 * Which part of the pattern a picture shows, and how large.
 *
 * @param scale mm of the picture for one mm of the pattern
 * @param place from the pattern, laid upright, to the picture
 * @param box of the picture
 */
record View(double scale, Motion place, Box box) {
    /** The room in mm that a picture has on a handout, on A4 as on letter paper. */
    static final double WIDTH = 180;

    static final double HEIGHT = 190;

    /**
     * 1:1, 1:2, 1:3, ...: as large as there is room for.
     *
     * @param region of the pattern, in mm
     * @param beside room for words on either side of it, in mm of the picture
     */
    static View of(Box region, double beside) {
        return of(region, beside, WIDTH, HEIGHT);
    }

    /** The same, no wider and no higher than that in mm. */
    static View of(Box region, double beside, double width, double height) {
        double times =
                Math.max(1, Math.ceil(Math.max(region.width() / (width - 2 * beside), region.height() / height)));
        double scale = 1 / times;
        Motion place = Motion.shift(new Vector(beside * times - region.left(), -region.top()))
                .then(Motion.enlargement(scale));
        return new View(scale, place, new Box(0, 0, region.width() * scale + 2 * beside, region.height() * scale));
    }
}
