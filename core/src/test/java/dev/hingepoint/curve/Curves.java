package dev.hingepoint.curve;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Random curves for properties: smooth ones, and nasty ones (near-collinear, handles on ends, a few ulps apart). */
public final class Curves {
    private Curves() {}

    public static Arbitrary<Point> points() {
        Arbitrary<Double> coordinate = Arbitraries.doubles().between(-500, 500);
        return Combinators.combine(coordinate, coordinate).as(Point::new);
    }

    /** Any four points that are not one, some of them repeated or nearly so. */
    public static Arbitrary<Cubic> cubics() {
        Arbitrary<Integer> nastiness = Arbitraries.integers().between(0, 9);
        Arbitrary<List<Point>> four = points().list().ofSize(4).uniqueElements();
        return Combinators.combine(four, nastiness)
                .as((p, nasty) -> nasty(p.get(0), p.get(1), p.get(2), p.get(3), nasty))
                .filter(cubic -> cubic.start().distanceTo(cubic.end()) > 1e-6);
    }

    private static Cubic nasty(Point a, Point b, Point c, Point d, int nasty) {
        return switch (nasty) {
            case 0 -> new Cubic(a, a, c, d);
            case 1 -> new Cubic(a, b, d, d);
            case 2 -> new Cubic(a, a.towards(d, 0.3), a.towards(d, 0.7), d);
            case 3 -> new Cubic(a, a.towards(d, 0.3), new Point(Math.nextUp(d.x()), Math.nextDown(d.y())), d);
            case 4 -> new Cubic(a, new Point(Math.nextUp(a.x()), a.y()), c, d);
            default -> new Cubic(a, b, c, d);
        };
    }

    /** Gently bent, as edges of pieces are: handles about a third of the way, up to 40 degrees off the chord. */
    public static Arbitrary<Cubic> smooth() {
        Arbitrary<Double> angle = Arbitraries.doubles().between(-0.7, 0.7);
        Arbitrary<Double> length = Arbitraries.doubles().between(60, 400);
        Arbitrary<Double> handle = Arbitraries.doubles().between(0.25, 0.42);
        return Combinators.combine(points(), length, angle, angle, angle, handle, handle)
                .as((start, chord, direction, out, in, first, second) -> {
                    Vector along = Vector.ofAngle(direction * 4);
                    Point end = start.plus(along.times(chord));
                    return new Cubic(
                            start,
                            start.plus(along.turned(out).times(chord * first)),
                            end.minus(along.turned(in).times(chord * second)),
                            end);
                });
    }

    /** Two curves and two lines, joined, with corners. */
    public static Arbitrary<Path> paths() {
        return points().list().ofSize(9).uniqueElements().map(points -> {
            Cubic first = new Cubic(points.get(0), points.get(1), points.get(2), points.get(3));
            Line second = new Line(points.get(3), points.get(4));
            Cubic third = new Cubic(points.get(4), points.get(5), points.get(6), points.get(7));
            return Path.of(List.of(first, second, third, new Line(points.get(7), points.get(8))));
        });
    }

    public static Arbitrary<Motion> rigidMotions() {
        return Combinators.combine(points(), Arbitraries.doubles().between(-3, 3), points())
                .as((hinge, angle, shift) ->
                        Motion.turn(hinge, angle).then(Motion.shift(shift.minus(new Point(0, 0)))));
    }
}
