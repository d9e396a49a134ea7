package dev.hingepoint.svg.figure;

import dev.hingepoint.curve.Cubic;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Segment;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The smooth curve that a hand would draw through points: one cubic between every two, with a common tangent, and nearly the same bend, where they meet.
 *
 * @see <a href="https://doi.org/10.1007/BF02187690">Hobby, Smooth, easy to compute interpolating splines, 1986</a>, all tensions 1
 */
final class Smooth {
    private final List<Point> points;
    private final int last;
    private final double[] chords;

    /** How much the chords turn at each point; 0 at the ends. */
    private final double[] turns;

    private Smooth(List<Point> points) {
        this.points = points;
        last = points.size() - 1;
        chords = new double[last];
        turns = new double[last + 1];
        for (int i = 0; i < last; i++) {
            chords[i] = chord(i).length();
        }
        for (int i = 1; i < last; i++) {
            turns[i] = chord(i - 1).angleTo(chord(i));
        }
    }

    /** @param points three at least: between two a hand draws a line */
    static Path through(List<Point> points) {
        return new Smooth(points).curve(Optional.empty(), Optional.empty());
    }

    static Path through(Point... points) {
        return through(List.of(points));
    }

    /** The same with directions of travel at its ends. */
    static Path through(Vector from, List<Point> points, Vector to) {
        return new Smooth(points).curve(Optional.of(from), Optional.of(to));
    }

    private Vector chord(int i) {
        return points.get(i + 1).minus(points.get(i));
    }

    private Path curve(Optional<Vector> from, Optional<Vector> to) {
        double[] leaving = leaving(from, to);
        List<Segment> segments = new ArrayList<>();
        for (int i = 0; i < last; i++) {
            double theta = leaving[i];
            double phi = -turns[i + 1] - leaving[i + 1];
            Vector chord = chord(i);
            segments.add(new Cubic(
                    points.get(i),
                    points.get(i).plus(chord.turned(theta).times(reach(theta, phi))),
                    points.get(i + 1).minus(chord.turned(-phi).times(reach(phi, theta))),
                    points.get(i + 1)));
        }
        return Path.of(segments);
    }

    /** The angle at each point from its chord to the curve: rows of three unknowns, solved from the first to the last and back. */
    private double[] leaving(Optional<Vector> from, Optional<Vector> to) {
        double[] after = new double[last + 1];
        double[] right = new double[last + 1];
        if (from.isPresent()) {
            right[0] = chord(0).angleTo(from.get());
        } else {
            after[0] = 1;
            right[0] = -turns[1];
        }
        for (int i = 1; i < last; i++) {
            double pivot = (2 - after[i - 1]) / chords[i - 1] + 2 / chords[i];
            after[i] = 1 / chords[i] / pivot;
            right[i] = ((-2 * turns[i] - right[i - 1]) / chords[i - 1] - turns[i + 1] / chords[i]) / pivot;
        }
        double[] leaving = new double[last + 1];
        if (to.isPresent()) {
            leaving[last] = chord(last - 1).angleTo(to.get());
        } else {
            // the curl of the last stretch is that of the one before: leaving[last - 1] + leaving[last] = 0
            leaving[last] = right[last - 1] / (after[last - 1] - 1);
        }
        for (int i = last - 1; i >= 0; i--) {
            leaving[i] = right[i] - after[i] * leaving[i + 1];
        }
        return leaving;
    }

    /** How long a handle is, as a part of the chord. */
    private static double reach(double theta, double phi) {
        double sinTheta = StrictMath.sin(theta);
        double sinPhi = StrictMath.sin(phi);
        double cosTheta = StrictMath.cos(theta);
        double cosPhi = StrictMath.cos(phi);
        double root = Math.sqrt(5);
        double above = 2 + Math.sqrt(2) * (sinTheta - sinPhi / 16) * (sinPhi - sinTheta / 16) * (cosTheta - cosPhi);
        return above / (3 * (1 + (root - 1) / 2 * cosTheta + (3 - root) / 2 * cosPhi));
    }
}
