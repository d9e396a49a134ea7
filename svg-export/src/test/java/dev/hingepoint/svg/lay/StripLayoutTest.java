package dev.hingepoint.svg.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.pattern.Lays;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

class StripLayoutTest {
    private static final double APART = 5;

    @Provide
    Arbitrary<List<Shape>> manyShapes() {
        return Grounds.shapes(40, 700).list().ofMinSize(1).ofMaxSize(10);
    }

    /** Source: derived, JTS's polygons of the laid shapes. */
    @Property(seed = "511", tries = 60)
    void shapesKeepApartAndWithinTheStrip(@ForAll("manyShapes") List<Shape> shapes) {
        Laid laid = StripLayout.laid(shapes, 1400, APART);
        Grounds.assertApart(shapes, laid, APART);
        Grounds.assertTurnedOnlyAsAllowed(shapes, laid);
        assertEquals(1400, laid.width());
        for (int i = 0; i < shapes.size(); i++) {
            Envelope box = Grounds.bounds(shapes.get(i), laid.places().get(i));
            assertTrue(box.getMinX() >= APART - 1e-5 && box.getMaxX() <= 1400 - APART + 1e-5);
            assertTrue(box.getMinY() >= APART - 1e-5 && box.getMaxY() <= laid.height() - APART + 1e-5);
        }
    }

    /** Source: derived: never longer than one below the other, never shorter than the longest that cannot be turned, nor than the ground asks for. */
    @Property(seed = "512", tries = 40)
    void noLongerThanOneBelowTheOther(@ForAll("manyShapes") List<Shape> shapes) {
        double length = StripLayout.laid(shapes, 1400, APART).height();
        double stacked = shapes.stream()
                .mapToDouble(shape -> Turned.of(shape).get(0).height() + APART + 4)
                .sum();
        assertTrue(length <= stacked + 2 * APART);
        double area = shapes.stream()
                .mapToDouble(shape ->
                        Grounds.ground(shape, dev.hingepoint.curve.Motion.STAY).getArea())
                .sum();
        assertTrue(length * 1400 >= area);
    }

    /** Source: derived: three boxes of 400 mm with 5 mm round them are 1220 mm wide. */
    @Test
    void boxesLieBesideOneAnotherWhereTheStripIsWideEnough() {
        Shape box = Grounds.shape(Lays.Way.ONE_WAY, Grounds.box(0, 0, 400, 300));
        assertEquals(310, StripLayout.laid(List.of(box, box, box), 1230, APART).height(), 1e-9);
    }

    /** Source: derived: two right-angled triangles of 1000 x 1000 mm, one of them turned upside down, lie in little more than one square. */
    @Test
    void whatMayBeTurnedLiesInTheOthersHollow() {
        List<dev.hingepoint.curve.Point> triangle =
                Grounds.box(0, 0, 1000, 1000).subList(0, 3);
        List<Shape> oneWay =
                List.of(Grounds.shape(Lays.Way.ONE_WAY, triangle), Grounds.shape(Lays.Way.ONE_WAY, triangle));
        List<Shape> twoWays =
                List.of(Grounds.shape(Lays.Way.TWO_WAYS, triangle), Grounds.shape(Lays.Way.TWO_WAYS, triangle));
        assertTrue(StripLayout.laid(twoWays, 1100, APART).height() < 1100);
        assertTrue(StripLayout.laid(oneWay, 1100, APART).height() > 1500);
    }

    /** Source: derived. */
    @Test
    void aStripThatIsTooNarrowIsToldHowWideItMustBe() {
        List<Shape> wide = List.of(
                Grounds.shape(Lays.Way.TWO_WAYS, Grounds.box(0, 0, 900, 100)),
                Grounds.shape(Lays.Way.ANY_WAY, Grounds.box(0, 0, 2000, 300)));
        assertEquals(910, StripLayout.narrowest(wide, APART), 1e-9);
        assertEquals(2, StripLayout.laid(wide, 910, APART).places().size());
        assertThrows(IllegalArgumentException.class, () -> StripLayout.laid(wide, 909, APART));
    }

    /** Source: derived. */
    @Property(seed = "513", tries = 10)
    void theSameShapesLieTheSameWay(@ForAll("manyShapes") List<Shape> shapes) {
        assertEquals(StripLayout.laid(shapes, 1400, APART), StripLayout.laid(shapes, 1400, APART));
    }
}
