package dev.hingepoint.move;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Place;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class MovesTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    /** A slash straight across the piece, through the side seam and the centre, below the waist. */
    private static Path across(Piece piece) {
        var line = piece.levelFrame("waist").across(piece.centre().orElseThrow().name(), "side seam", -60);
        return Path.of(line);
    }

    /** A cut that shifts the part below down by so much opens a gap: every line on the part keeps its length, and the lost lengths are the gap's. */
    @Property(seed = "301", tries = 80)
    void shiftingThePartBelowLengthensWhatTheCutCrosses(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 5, max = 60) double by) {
        Piece piece = TestPatterns.dress(shape).in("40").piece("back");
        Vector down = piece.grain().down().times(by);
        Place below = Place.corner("side seam", "hem");
        Move.Moved moved = Cut.along("lengthen", across(piece))
                .moving(below, Motion.shift(down))
                .on(piece);
        Piece longer = moved.piece();
        assertEquals(piece.sewnLength("centre back") + by, longer.sewnLength("centre back"), 1e-6);
        assertEquals(piece.sewnLength("hem"), longer.sewnLength("hem"), 1e-6);
        for (Level level : piece.marks(Level.class).toList()) {
            assertEquals(piece.width(level.name()), longer.width(level.name()), 1e-6);
        }
        double gap =
                JtsBridge.polygon(longer).getArea() - JtsBridge.polygon(piece).getArea();
        assertEquals(
                by
                        * piece.levelFrame("waist")
                                .across("centre back", "side seam", -60)
                                .length(),
                gap,
                0.02 * gap + 1);
        Point hip = piece.levelFrame("hip").origin();
        assertEquals(0, moved.map().of(hip).distanceTo(hip.plus(down)), 1e-9);
    }

    /** Cut, moved and moved back along the same cut, untrued, it is the same outline within 1e-9 mm. */
    @Property(seed = "302", tries = 80)
    void movedAndMovedBackItIsTheSameOutline(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 5, max = 60) double by) {
        Piece piece = TestPatterns.dress(shape).in("40").piece("back");
        Motion there = Motion.shift(piece.grain().down().times(by));
        Place below = Place.corner("side seam", "hem");
        Path slash = across(piece);
        Piece opened = Cut.along("open", slash).moving(below, there).on(piece).piece();
        Piece closed = Cut.along("close", slash.moved(there))
                .moving(below, there.inverse())
                .on(opened)
                .piece();
        for (Edge edge : piece.edges()) {
            for (Point point : closed.edge(edge.name()).path().flatten(0.01)) {
                assertEquals(0, edge.path().distanceTo(point), 1e-9, edge.name());
            }
            for (Point point : edge.path().flatten(0.01)) {
                assertEquals(0, closed.edge(edge.name()).path().distanceTo(point), 1e-9, edge.name());
            }
        }
    }

    @Test
    void aNotchOnThePartThatTurnedIsAtTheSamePointOfTheCloth() {
        Piece back = TestPatterns.straightBack(225, 1000, 400);
        Path slash = Path.through(new Point(0, 400), new Point(225, 400));
        Motion turn = Motion.turn(new Point(225, 400), 0.1);
        Piece turned = Cut.along("open", slash)
                .moving(Place.corner("side seam", "hem"), turn)
                .on(back)
                .piece();
        Notch notch = turned.marks(Notch.class).findFirst().orElseThrow();
        Path side = turned.downwards("side seam");
        assertEquals(330, side.distanceAlong(side.nearest(notch.at())), 1e-6);
        assertEquals(0, notch.at().distanceTo(turn.of(new Point(225, 480))), 1e-9);
    }

    @Property(seed = "303", tries = 80)
    void dividedPiecesAreSewnTogetherAgain(@ForAll("shapes") Shape shape) {
        Assume.that(!shape.waistDart());
        Piece piece = TestPatterns.dress(shape).in("40").piece("back");
        Divide.Divided divided = new Divide(
                        "Divide off the skirt",
                        across(piece),
                        Place.corner("side seam", "hem"),
                        "skirt",
                        "bodice",
                        "join")
                .on(piece);
        Piece skirt = divided.first();
        Piece bodice = divided.second();
        assertEquals(skirt.sewnLength("join"), bodice.sewnLength("join"), 1e-9);
        assertEquals(
                JtsBridge.polygon(piece).getArea(),
                JtsBridge.polygon(skirt).getArea() + JtsBridge.polygon(bodice).getArea(),
                1);
        assertEquals(
                piece.sewnLength("side seam"), skirt.sewnLength("side seam") + bodice.sewnLength("side seam"), 1e-6);
        assertEquals(piece.edge("hem"), skirt.edge("hem"));
        assertEquals(piece.edge("armhole"), bodice.edge("armhole"));
        assertEquals(piece.width("hip"), skirt.width("hip"), 1e-6);
        assertEquals(piece.width("waist"), bodice.width("waist"), 1e-6);
        assertTrue(!skirt.hasLevel("waist") && !bodice.hasLevel("hip"));
        assertEquals(piece.isClockwise(), skirt.isClockwise());
        assertEquals(1, skirt.marks(dev.hingepoint.pattern.Grain.class).count());
        assertEquals(
                piece.cuttings().get(0).how() == Cutting.How.ON_FOLD,
                skirt.cuttings().get(0).how() == Cutting.How.ON_FOLD);
        assertEquals(
                List.of("hip", "knee"),
                skirt.marks(Notch.class).map(Notch::name).toList());
    }
}
