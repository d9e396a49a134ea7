package dev.hingepoint.curve;

import java.util.List;
import java.util.function.Consumer;

/** One piece of a path: a straight line or a cubic Bézier, run through by a parameter t from 0 to 1. */
public sealed interface Segment permits Line, Cubic {
    Point start();

    Point end();

    /** The point at {@code t}; exactly {@link #start()} at 0 and {@link #end()} at 1. */
    Point at(double t);

    /** The unit direction of travel at {@code t}; where handles coincide with their ends, the limit. */
    Vector tangent(double t);

    /** The signed curvature at {@code t} in 1/mm; positive where the path bends clockwise as one looks at the paper. */
    double curvature(double t);

    /** The arc length in mm up to {@code t}, within {@link Tolerance#LENGTH}. */
    double lengthTo(double t);

    /** The arc length in mm, within {@link Tolerance#LENGTH}. */
    default double length() {
        return lengthTo(1);
    }

    /** The parameter at {@code distance} mm of arc from the start, within {@link Tolerance#LENGTH} of arc. */
    double parameterAt(double distance);

    /** The stretch between two parameters, {@code from <= to}: exact (de Casteljau); the ends are {@code at} of each. */
    Segment part(double from, double to);

    Segment reversed();

    Segment moved(Motion motion);

    /** The parameter of the point nearest to {@code point}: the smallest where several are equally near. */
    double nearest(Point point);

    /**
     * Where the segment crosses or touches the endless straight line through {@code origin} along {@code direction}, as
     * ascending parameters. Empty for a segment that lies along the line.
     */
    List<Double> crossings(Point origin, Vector direction);

    /** The parameter, the smallest where several are equal, of the point that lies farthest along {@code direction}. */
    double farthest(Vector direction);

    /** The smallest upright box that holds the segment. */
    Box bounds();

    /** An upright box that holds the segment, with room to spare but quickly had: that of its control points. */
    Box hull();

    /** Sends points after the start, the end last, whose polyline leaves the segment by at most {@code tolerance} mm. */
    void flatten(double tolerance, Consumer<Point> points);
}
