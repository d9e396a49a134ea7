package dev.hingepoint.svg.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Lays;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

class SheetLayoutTest {
    /** A4 less 10 mm on every side (ISO 216), sharing 10 mm. */
    private static final Pages A4 = new Pages(190, 277, 10);

    private static final double APART = 3;

    @Provide
    Arbitrary<List<Shape>> manyShapes() {
        return Grounds.shapes(30, 500).list().ofMinSize(1).ofMaxSize(8);
    }

    @Provide
    Arbitrary<List<Shape>> largeShapes() {
        return Grounds.shapes(280, 560).list().ofMinSize(1).ofMaxSize(5);
    }

    @Provide
    Arbitrary<Double> distances() {
        return Arbitraries.of(0.5, 3.0, 12.0);
    }

    /** Source: derived, JTS's polygons of the laid shapes. */
    @Property(seed = "501", tries = 60)
    void shapesKeepApartAndInside(@ForAll("manyShapes") List<Shape> shapes, @ForAll("distances") double apart) {
        Laid laid = SheetLayout.laid(shapes, A4, apart);
        Grounds.assertApart(shapes, laid, apart);
        Grounds.assertTurnedOnlyAsAllowed(shapes, laid);
        for (int i = 0; i < shapes.size(); i++) {
            Envelope box = Grounds.bounds(shapes.get(i), laid.places().get(i));
            // what has no room to keep off the edges of a page lies in its middle
            double aside = Math.min(apart, Math.max(0, A4.width() - box.getWidth()) / 2);
            double above = Math.min(apart, Math.max(0, A4.height() - box.getHeight()) / 2);
            assertTrue(box.getMinX() >= (box.getWidth() > A4.width() ? apart : aside) - 1e-5);
            assertTrue(box.getMinY() >= (box.getHeight() > A4.height() ? apart : above) - 1e-5);
            assertTrue(box.getMaxX() <= laid.width() + 1e-9);
            assertTrue(box.getMaxY() <= laid.height() + 1e-9);
        }
    }

    /** Source: derived, from where each page begins and ends. */
    @Property(seed = "502", tries = 60)
    void whatFitsOnOnePageLiesWholeOnOne(@ForAll("manyShapes") List<Shape> shapes) {
        Laid laid = SheetLayout.laid(shapes, A4, APART);
        for (int i = 0; i < shapes.size(); i++) {
            Envelope box = Grounds.bounds(shapes.get(i), laid.places().get(i));
            if (box.getWidth() <= A4.width() && box.getHeight() <= A4.height()) {
                assertTrue(isWithin(box.getMinX(), box.getMaxX(), A4.stepAcross(), A4.width()));
                assertTrue(isWithin(box.getMinY(), box.getMaxY(), A4.stepDown(), A4.height()));
            }
        }
    }

    private static boolean isWithin(double from, double to, double step, double size) {
        double begun = Math.floor((from + 1e-5) / step) * step;
        return to <= begun + size + 1e-5;
    }

    /** Source: derived, JTS's lines in what each page shows beyond the strips shared with those before it. */
    @Property(seed = "503", tries = 40)
    void neededPagesAreThoseThatSomethingIsDrawnOn(@ForAll("manyShapes") List<Shape> shapes) {
        Laid laid = SheetLayout.laid(shapes, A4, APART);
        assertEquals(needed(shapes, laid, A4), A4.needed(shapes, laid));
    }

    /** Source: derived: the shapes beside one another, tops in line; and each page holds no more ground than its area. */
    @Property(seed = "504", tries = 40)
    void neverMorePagesThanForARowNorFewerThanTheAreaAsksFor(@ForAll("largeShapes") List<Shape> shapes) {
        Laid laid = SheetLayout.laid(shapes, A4, APART);
        int pages = needed(shapes, laid, A4);
        Laid row = row(shapes);
        assertTrue(pages <= needed(shapes, row, A4), pages + " pages, " + needed(shapes, row, A4) + " in a row");
        double area = shapes.stream()
                .mapToDouble(shape -> Grounds.ground(shape, Motion.STAY).getArea())
                .sum();
        assertTrue(pages >= Math.ceil(area / (A4.width() * A4.height())));
    }

    private static Laid row(List<Shape> shapes) {
        List<Motion> places = new ArrayList<>();
        double x = APART;
        double height = 0;
        for (Shape shape : shapes) {
            Envelope box = Grounds.bounds(shape, Motion.STAY);
            places.add(Motion.shift(new Vector(x - box.getMinX(), APART - box.getMinY())));
            x += box.getWidth() + APART;
            height = Math.max(height, box.getHeight() + 2 * APART);
        }
        return new Laid(places, x, height);
    }

    private static int needed(List<Shape> shapes, Laid laid, Pages pages) {
        List<Geometry> lines = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            lines.add(Grounds.lines(shapes.get(i), laid.places().get(i)));
        }
        int needed = 0;
        for (int row = 0; row * pages.stepDown() <= laid.height(); row++) {
            for (int column = 0; column * pages.stepAcross() <= laid.width(); column++) {
                double left = column * pages.stepAcross();
                double top = row * pages.stepDown();
                Geometry own = Grounds.FACTORY.toGeometry(new Envelope(
                        (column == 0 ? -1 : left + pages.overlap()) + 1e-5,
                        left + pages.width() - 1e-5,
                        (row == 0 ? -1 : top + pages.overlap()) + 1e-5,
                        top + pages.height() - 1e-5));
                needed += lines.stream().anyMatch(own::intersects) ? 1 : 0;
            }
        }
        return needed;
    }

    /** Source: derived. */
    @Property(seed = "505", tries = 10)
    void theSameShapesLieTheSameWay(@ForAll("manyShapes") List<Shape> shapes) {
        assertEquals(SheetLayout.laid(shapes, A4, APART), SheetLayout.laid(shapes, A4, APART));
    }

    /** Source: derived: four boxes of 86 x 130 mm with 3 mm round them and between them are 181 x 269 mm, less than a page of 190 x 277 mm. */
    @Test
    void fourBoxesGoOnOnePage() {
        Shape box = Grounds.shape(Lays.Way.ONE_WAY, Grounds.box(0, 0, 86, 130));
        List<Shape> boxes = List.of(box, box, box, box);
        assertEquals(1, A4.needed(boxes, SheetLayout.laid(boxes, A4, APART)));
    }

    /** Source: derived: what is as large as a page lies on one, though it keeps no distance from the page's edge. */
    @Test
    void aShapeAsLargeAsAPageTakesOnePage() {
        List<Shape> whole = List.of(Grounds.shape(Lays.Way.ONE_WAY, Grounds.box(50, -20, 190, 277)));
        Laid laid = SheetLayout.laid(whole, A4, APART);
        assertEquals(1, A4.needed(whole, laid));
        assertEquals(Motion.shift(new Vector(-50, 20)), laid.places().get(0));
    }

    /** Source: derived: turned by a quarter it fits on one page. */
    @Test
    void aShapeThatMayLieAnyWayIsTurnedToFitAPage() {
        List<Shape> lying = List.of(Grounds.shape(Lays.Way.ANY_WAY, Grounds.box(0, 0, 260, 180)));
        assertEquals(1, A4.needed(lying, SheetLayout.laid(lying, A4, APART)));
    }

    /** Source: derived: a strip five times as wide as the widest sheet that is tried of itself, and not half as high as a page. */
    @Test
    void aShapeWiderThanTheUsualSheetIsLaid() {
        List<Shape> wide = List.of(Grounds.shape(Lays.Way.ONE_WAY, Grounds.box(0, 0, 7000, 100)));
        Laid laid = SheetLayout.laid(wide, A4, APART);
        assertEquals((int) Math.ceil((7000 + APART - 10) / 180), A4.needed(wide, laid));
    }

    @Test
    void noShapesTakeNothing() {
        assertEquals(new Laid(List.of(), 0, 0), SheetLayout.laid(List.of(), A4, APART));
    }

    @Test
    void pagesThatAreAllOverlapAreNoPages() {
        assertThrows(IllegalArgumentException.class, () -> new Pages(190, 277, 95));
    }
}
