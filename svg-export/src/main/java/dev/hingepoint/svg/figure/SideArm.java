package dev.hingepoint.svg.figure;

import static dev.hingepoint.svg.figure.Figure.point;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.List;
import java.util.stream.Stream;

/**
 * The arm of a figure from the side, in its sleeve.
 *
 * @param swing how far it swings forward from the shoulder, in radians
 */
record SideArm(Differences differences, double swing) {
    Figure.Arm arm() {
        double thick = differences.at(Part.UPPER_ARM);
        double cuff = 2.5 + differences.at(Part.SLEEVE_LENGTH);
        Vector move = new Vector(-differences.at(Part.SHOULDER_FORWARD), 0);
        Point top = point(0.05, 1.46).plus(move);
        Motion swung = Motion.turn(point(0.05, 1.6), swing).then(Motion.shift(move));
        Contour armBack = swung(
                swung,
                point(0.235 + thick, 1.98),
                point(0.23 + thick, 2.25),
                point(0.19, 2.7),
                point(0.135, 3.1),
                point(0.02, 3.6),
                point(0.0, 3.88),
                point(-0.1, 4.17));
        Contour armFront = swung(
                swung,
                point(-0.13 - thick, 1.98),
                point(-0.115 - thick, 2.25),
                point(-0.09, 2.7),
                point(-0.13, 3.1),
                point(-0.15, 3.58),
                point(-0.22, 3.85),
                point(-0.18, 4.17));
        Path sleeveBack = Smooth.through(armBack.clothed(armBack.path().start().y(), cuff, 0.03));
        Path sleeveFront =
                Smooth.through(armFront.clothed(armFront.path().start().y(), cuff, -0.03));
        Path bare = armBack.below(cuff)
                .then(Figure.tip(armBack.path(), armFront.path()))
                .then(armFront.below(cuff).reversed());
        Path cap = Smooth.through(
                new Vector(0, -1),
                List.of(
                        sleeveFront.start(),
                        top.plus(new Vector(-0.17, 0.2)),
                        top,
                        top.plus(new Vector(0.19, 0.2)),
                        sleeveBack.start()),
                new Vector(0, 1));
        Path hem = SideFigure.bowed(sleeveBack.end(), sleeveFront.end(), 0.035);
        Path ring = cap.then(sleeveBack)
                .then(Path.through(sleeveBack.end(), bare.start()))
                .then(bare)
                .then(Path.through(bare.end(), sleeveFront.end()))
                .then(sleeveFront.reversed());
        return new Figure.Arm(List.of(sleeveBack, sleeveFront, bare), List.of(cap, hem), ring);
    }

    private static Contour swung(Motion swung, Point... points) {
        return Contour.through(Stream.of(points).map(swung::of).toArray(Point[]::new));
    }
}
