package dev.hingepoint.svg.figure;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import java.util.List;
import java.util.Optional;

/**
 * A body in a plain dress, as lines: seven and a half heads high (figure drawing's common canon), without a face. All in heads, from the crown down; x to the right of
 * the plumb line of the body.
 */
interface Figure {
    /** Where the waist of the average figure is, and the hem of its dress. */
    double WAIST = 2.75;

    double KNEE = 5.45;

    /** How far in radians an arm swings, so that it hangs clear of the side that is looked at. */
    double ARM_FORWARD = 0.27;

    double ARM_BACK = -0.2;

    /** The outline of the body and its dress. */
    List<Path> outline();

    /** The dress's edges and seams. */
    List<Path> seams();

    /** An arm that hangs before the rest; none where both hang beside it. */
    Optional<Arm> arm();

    /** The ring round all that wrinkles can show on; empty where they all lie within the outline. */
    Optional<Path> cloth();

    /** @param ring the line round it: what lies behind it does not show */
    record Arm(List<Path> outline, List<Path> seams, Path ring) {}

    /**
     * Where a label points to.
     *
     * @throws IllegalArgumentException where this view does not show the place
     */
    Point at(Place place);

    static Figure of(View view, Differences differences) {
        return view.isSide()
                ? new SideFigure(differences, view == View.SIDE_BACK ? ARM_FORWARD : ARM_BACK)
                : new FrontFigure(view, differences);
    }

    static Point point(double x, double y) {
        return new Point(x, y);
    }

    /** Round the end of a hand, from one line to another that runs the same way. */
    static Path tip(Path from, Path to) {
        return Smooth.through(
                from.endTangent(),
                List.of(from.end(), to.end()),
                to.endTangent().negated());
    }

    /** On the other side of the plumb line. */
    static Path mirrored(Path path) {
        return path.moved(Motion.stretch(new Point(0, 0), new Vector(1, 0), -1));
    }
}
