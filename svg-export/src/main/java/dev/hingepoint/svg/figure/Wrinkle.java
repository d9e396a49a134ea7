package dev.hingepoint.svg.figure;

import static dev.hingepoint.svg.figure.Fold.all;
import static dev.hingepoint.svg.figure.Fold.beside;
import static dev.hingepoint.svg.figure.Fold.from;
import static dev.hingepoint.svg.figure.Fold.onBothSides;

import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.List;

/**
 * Wrinkles in the places where cloth shows them. What pools lies in sagging folds across; what is too tight pulls straight at the place that is short of cloth; what is too
 * wide hangs in upright folds. In heads, on the average figure: from the front or the back, or from the side with the back to the right.
 */
enum Wrinkle {
    STRAIN_OVER_RIBS(onBothSides(beside(3, Fold.of(0.12, 2.33, 0.55, 2.3, -0.015), step(0, 0.085)))),
    FOLD_UNDER_NECK(beside(3, Fold.of(-0.34, 1.5, 0.34, 1.5, 0.05), step(0, 0.085))),
    DRAGS_FROM_SHOULDER_TIPS(onBothSides(from(at(0.72, 1.42), 0.14, at(0.16, 1.76), at(0.44, 2.14), 3, 0.03))),
    NECK_TO_UNDERARM(onBothSides(beside(4, Fold.of(0.41, 1.46, 0.62, 1.95, 0.035), step(-0.06, 0.045)))),
    CREASES_AT_UNDERARM(onBothSides(from(at(0.66, 2.02), 0.06, at(0.42, 1.86), at(0.46, 2.32), 5, 0.01))),
    STRAIN_BETWEEN_ARMHOLES(onBothSides(beside(4, Fold.of(0.5, 1.64, 0.1, 1.66, 0.012), step(0, 0.09)))),
    STRAIN_OVER_CAP(onBothSides(beside(3, Fold.of(0.6, 1.6, 0.86, 1.68, -0.02), step(0.01, 0.09)))),
    PUCKERS_IN_CAP(onBothSides(all(
            beside(3, Fold.of(0.71, 1.52, 0.8, 1.55, -0.01), step(-0.02, 0.07)),
            beside(4, Fold.of(0.655, 1.73, 0.75, 1.75, -0.01), step(-0.002, 0.07))))),
    UPRIGHT_BESIDE_ARMHOLE(onBothSides(beside(3, Fold.of(0.6, 1.58, 0.54, 2.08, 0.03), step(-0.08, 0.01)))),
    STRAIN_ACROSS_BUST(onBothSides(all(
            beside(3, Fold.of(0.42, 2.03, 0.63, 2.0, 0.01), step(0, 0.09)),
            beside(3, Fold.of(0.24, 2.05, 0.02, 2.06, 0.01), step(0, 0.09))))),
    EMPTY_AT_DART_TIP(onBothSides(beside(3, Fold.of(0.36, 2.05, 0.36, 2.25, 0.05), step(-0.06, 0)))),
    DRAGS_FROM_LOW_BUST(onBothSides(from(at(0.32, 2.3), 0.08, at(0.6, 2.36), at(0.3, 2.72), 4, 0.02))),
    PEAK_AT_DART_TIP(onBothSides(from(at(0.33, 2.15), 0.05, at(0.17, 1.94), at(0.17, 2.36), 5, 0))),
    DARTLESS_BUST(onBothSides(all(
            beside(4, Fold.of(0.42, 2.14, 0.53, 2.66, 0.03), step(-0.065, 0.03)),
            beside(2, Fold.of(0.58, 1.72, 0.42, 1.98, 0.04), step(0.02, 0.1))))),
    STRAIN_ACROSS_HIP(onBothSides(beside(4, Fold.of(0.72, 3.38, 0.14, 3.45, -0.025), step(0.005, 0.13)))),
    POOLS_ABOVE_WAIST(beside(4, Fold.of(-0.42, 2.66, 0.42, 2.66, 0.05), step(0, -0.09))),
    UNDER_HIP_EARS(onBothSides(beside(3, Fold.of(0.73, 3.72, 0.68, 4.2, 0.03), step(-0.09, -0.02)))),
    DRAGS_FROM_LOW_UNDERARM(onBothSides(from(at(0.62, 2.33), 0.08, at(0.2, 2.26), at(0.34, 2.72), 4, 0.03))),
    DRAGS_FROM_LOWER_UNDERARM(onBothSides(from(at(0.56, 2.52), 0.09, at(0.08, 2.28), at(0.26, 3.1), 5, 0.04))),
    SLEEVE_HELD_DOWN(onBothSides(beside(3, Fold.of(0.7, 2.17, 0.9, 1.99, 0.03), step(0.01, 0.09)))),
    STRAIN_ROUND_UPPER_ARM(onBothSides(beside(4, Fold.of(0.73, 1.98, 1.0, 1.93, 0.03), step(0.012, 0.115)))),
    UPRIGHT_IN_SLEEVE(onBothSides(beside(3, Fold.of(0.79, 1.74, 0.84, 2.43, 0.015), step(0.07, 0.01)))),
    FOLDS_ABOVE_WRIST(onBothSides(beside(5, Fold.of(0.9, 3.1, 1.11, 3.06, 0.035), step(0.022, 0.11)))),
    FOLDS_AT_ELBOW(onBothSides(beside(3, Fold.of(0.83, 2.63, 1.03, 2.57, 0.03), step(0.012, 0.1)))),
    CREASES_UNDER_THROAT(beside(3, Fold.of(-0.33, 1.5, 0.33, 1.5, 0.09), step(0, 0.085))),
    NECKLINE_GAPES(beside(3, Fold.of(-0.34, 1.78, 0.34, 1.78, 0.13), step(0, 0.1))),
    CREASES_AT_KNEE(onBothSides(beside(4, Fold.of(0.62, 5.15, 0.12, 5.3, -0.04), step(0, 0.16)))),

    DRAGS_FROM_BUST(from(at(-0.68, 2.1), 0.13, at(-0.06, 1.72), at(-0.14, 2.76), 6, -0.04)),
    DRAGS_UNDER_BUST(from(at(-0.66, 2.16), 0.14, at(-0.06, 2.4), at(-0.2, 2.72), 3, -0.03)),
    SLACK_BEFORE_ARM(beside(3, Fold.of(-0.13, 1.54, -0.13, 2.05, 0.02), step(-0.095, 0.05))),
    CREASES_AT_FRONT_OF_ARM(from(at(-0.17, 1.48), 0.1, at(-0.48, 1.7), at(-0.32, 2.16), 3, 0.02)),
    TWIST_IN_SLEEVE(beside(3, Fold.of(-0.1, 1.7, 0.16, 2.2, 0.02), step(0.03, -0.11))),
    DRAGS_FROM_ROUND_BACK(from(at(0.48, 1.76), 0.16, at(0.02, 2.0), at(0.2, 2.8), 4, 0.03)),
    UPRIGHT_BEHIND_ARM(beside(3, Fold.of(0.24, 1.62, 0.2, 2.25, 0.015), step(0.075, 0.03))),
    POOLS_AT_BACK_WAIST(beside(4, Fold.of(0.4, 2.34, -0.14, 2.44, -0.06), step(-0.03, 0.1))),
    STRAIN_OVER_SEAT(from(at(0.62, 3.6), 0.14, at(-0.04, 3.0), at(-0.0, 4.3), 6, 0.06)),
    DROPS_UNDER_SEAT(beside(5, Fold.of(0.44, 3.5, 0.0, 3.85, -0.09), step(0.005, 0.17))),
    STRAIN_OVER_ABDOMEN(from(at(-0.62, 3.25), 0.14, at(-0.02, 2.85), at(0.02, 4.0), 6, -0.06)),
    UPRIGHT_AT_SIDE_SEAM(beside(3, Fold.of(-0.07, 3.65, -0.1, 4.75, 0.02), step(-0.1, 0.05)));

    private final List<Fold> folds;

    Wrinkle(List<Fold> folds) {
        this.folds = folds;
    }

    private static Point at(double x, double y) {
        return new Point(x, y);
    }

    private static Vector step(double x, double y) {
        return new Vector(x, y);
    }

    boolean isOnSleeve() {
        return this == TWIST_IN_SLEEVE;
    }

    List<Fold> folds() {
        return folds;
    }
}
