package dev.hingepoint.curve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.CubicCurve2D;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

class CubicTest {
    private static final Cubic ARCH =
            new Cubic(new Point(0, 0), new Point(40, 80), new Point(120, 80), new Point(160, 0));

    @Provide
    Arbitrary<Cubic> cubics() {
        return Curves.cubics();
    }

    @Provide
    Arbitrary<Cubic> smooth() {
        return Curves.smooth();
    }

    @Provide
    Arbitrary<Point> points() {
        return Curves.points();
    }

    /** Apache Commons Math 3.6.1 integrates the speed; Simpson's rule on 200,000 steps gives the same to 12 digits. */
    @Test
    void arcLengthIsThatOfAMathsLibrary() {
        assertEquals(210.73462172074, ARCH.length(), Tolerance.LENGTH);
        assertEquals(integrated(ARCH), ARCH.length(), Tolerance.LENGTH);
    }

    @Property(seed = "1", tries = 100)
    void arcLengthAgreesWithNumericalIntegration(@ForAll("smooth") Cubic cubic) {
        assertEquals(integrated(cubic), cubic.length(), 1e-8);
    }

    private static double integrated(Cubic cubic) {
        return new IterativeLegendreGaussIntegrator(16, 1e-13, 1e-11)
                .integrate(1_000_000, t -> cubic.derivative(t).length(), 0, 1);
    }

    @Property(seed = "2")
    void theParameterAtALengthHasThatLength(@ForAll("cubics") Cubic cubic, @ForAll @DoubleRange(max = 1) double part) {
        double distance = part * cubic.length();
        assertEquals(distance, cubic.lengthTo(cubic.parameterAt(distance)), 2 * Tolerance.LENGTH);
    }

    @Property(seed = "3")
    void halvesAreThoseOfAwt(@ForAll("cubics") Cubic cubic) {
        CubicCurve2D.Double left = new CubicCurve2D.Double();
        CubicCurve2D.Double right = new CubicCurve2D.Double();
        new CubicCurve2D.Double(
                        cubic.start().x(),
                        cubic.start().y(),
                        cubic.startHandle().x(),
                        cubic.startHandle().y(),
                        cubic.endHandle().x(),
                        cubic.endHandle().y(),
                        cubic.end().x(),
                        cubic.end().y())
                .subdivide(left, right);
        Cubic first = cubic.part(0, 0.5);
        Cubic second = cubic.part(0.5, 1);
        assertEquals(0, first.endHandle().distanceTo(new Point(left.ctrlx2, left.ctrly2)), 1e-10);
        assertEquals(0, first.end().distanceTo(new Point(left.x2, left.y2)), 1e-10);
        assertEquals(0, second.startHandle().distanceTo(new Point(right.ctrlx1, right.ctrly1)), 1e-10);
        assertEquals(first.end(), second.start());
    }

    @Property(seed = "4")
    void partsAddUpToTheWhole(@ForAll("cubics") Cubic cubic, @ForAll @DoubleRange(min = 0.01, max = 0.99) double t) {
        assertEquals(
                cubic.length(), cubic.part(0, t).length() + cubic.part(t, 1).length(), 1e-8);
        assertEquals(cubic.at(t), cubic.part(0, t).end());
        assertEquals(cubic.at(t), cubic.part(t, 1).start());
    }

    @Property(seed = "5")
    void noSampledPointIsNearerThanTheNearest(@ForAll("cubics") Cubic cubic, @ForAll("points") Point point) {
        double nearest = cubic.at(cubic.nearest(point)).distanceTo(point);
        for (int i = 0; i <= 500; i++) {
            assertTrue(cubic.at(i / 500.0).distanceTo(point) >= nearest - 1e-9);
        }
    }

    @Property(seed = "6")
    void everySampledChangeOfSideIsACrossing(
            @ForAll("cubics") Cubic cubic,
            @ForAll("points") Point origin,
            @ForAll @DoubleRange(min = -3, max = 3) double angle) {
        Vector direction = Vector.ofAngle(angle);
        List<Double> crossings = cubic.crossings(origin, direction);
        crossings.forEach(t -> assertEquals(0, direction.cross(cubic.at(t).minus(origin)), 1e-7));
        for (int i = 0; i < 300; i++) {
            double from = i / 300.0;
            double to = (i + 1) / 300.0;
            double a = direction.cross(cubic.at(from).minus(origin));
            double b = direction.cross(cubic.at(to).minus(origin));
            if (a * b < 0 && Math.min(Math.abs(a), Math.abs(b)) > 1e-6) {
                assertTrue(crossings.stream().anyMatch(t -> t >= from && t <= to), "between " + from + " and " + to);
            }
        }
    }

    @Property(seed = "7", tries = 60)
    void flatteningKeepsItsToleranceOverDecades(@ForAll("smooth") Cubic cubic) {
        for (double tolerance = 1; tolerance >= 1e-3; tolerance /= 10) {
            Path polyline = Path.through(flattened(cubic, tolerance));
            for (int i = 0; i <= 400; i++) {
                assertTrue(polyline.distanceTo(cubic.at(i / 400.0)) <= tolerance);
            }
        }
    }

    private static List<Point> flattened(Cubic cubic, double tolerance) {
        List<Point> points = new ArrayList<>(List.of(cubic.start()));
        cubic.flatten(tolerance, points::add);
        return points;
    }

    @Property(seed = "8")
    void noSampledPointIsOutsideTheBounds(@ForAll("cubics") Cubic cubic) {
        Box bounds = cubic.bounds();
        for (int i = 0; i <= 200; i++) {
            assertEquals(0, bounds.distanceTo(cubic.at(i / 200.0)), 1e-9);
        }
    }

    @Test
    void anInflectionIsWhereTheCurvatureChangesSign() {
        Cubic s = new Cubic(new Point(0, 0), new Point(50, 60), new Point(50, -60), new Point(100, 0));
        assertEquals(1, s.inflections().size());
        assertEquals(0.5, s.inflections().get(0), 1e-9);
        assertTrue(s.curvature(0.4) * s.curvature(0.6) < 0);
        assertTrue(ARCH.inflections().isEmpty());
    }

    /** A quarter circle drawn with the usual handle, 4/3 tan(pi/8): its radius is within 2.8e-4 of the true one (closed form). */
    @Test
    void curvatureOfAQuarterCircleIsOneOverItsRadius() {
        double k = 100 * 4 / 3.0 * StrictMath.tan(StrictMath.PI / 8);
        Cubic quarter = new Cubic(new Point(100, 0), new Point(100, k), new Point(k, 100), new Point(0, 100));
        assertEquals(1 / 100.0, quarter.curvature(0.5), 1e-4);
        assertEquals(50 * StrictMath.PI, quarter.length(), 0.05);
    }

    @Property(seed = "9")
    void theTangentAtACollapsedHandlePointsAlongTheCurve(
            @ForAll("points") Point a, @ForAll("points") Point c, @ForAll("points") Point d) {
        if (a.distanceTo(c) > 1e-3 && a.distanceTo(d) > 1e-3) {
            Cubic cubic = new Cubic(a, a, c, d);
            Vector chord = cubic.at(1e-5).minus(cubic.at(0)).unit();
            assertEquals(1, cubic.tangent(0).dot(chord), 1e-3);
        }
    }
}
