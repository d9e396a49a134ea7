package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.DoublePointedDart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.LevelFrame;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What lengthening and shortening promise, measured on random dresses; closed forms on straight paper. */
class LengthenOrShortenTest {
    private static final List<Map<String, Object>> PLACES = List.of(
            Map.of("at", "waist"), Map.of("at", "hip"), Map.of("above", "waist"), Map.of("above", "hip"), Map.of());

    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AlterationRequest request(String name, double by, Map<String, Object> place) {
        Map<String, Object> options = new LinkedHashMap<>(place);
        options.put("by", by + " mm");
        return new AlterationRequest(name, options);
    }

    /** With the line drawn 100 mm below the hip, over part of the width only. */
    private static Draft dress(Shape shape) {
        Draft draft = TestPatterns.dress(shape).in("40");
        return draft.with(draft.pieces().stream()
                .map(piece -> {
                    LevelFrame hip = piece.levelFrame("hip");
                    Point start = hip.origin()
                            .plus(hip.downwards().times(100))
                            .plus(hip.outwards().times(30));
                    return piece.withMark(new DrawnLine(
                            "lengthen or shorten",
                            Path.through(start, start.plus(hip.outwards().times(80)))));
                })
                .toList());
    }

    @Property(seed = "401", tries = 100)
    void allAboveStaysAndAllBelowMovesByTheAmount(
            @ForAll("shapes") Shape shape,
            @ForAll @DoubleRange(min = 2, max = 60) double amount,
            @ForAll boolean isLonger,
            @ForAll @IntRange(min = 0, max = 4) int place) {
        Draft before = dress(shape);
        double most = mostThatCanBeFolded(before, place);
        double by = isLonger ? amount : -Math.min(amount, most);
        Draft after = Catalogue.alter(
                        before, request(isLonger ? "lengthen" : "shorten", Math.abs(by), PLACES.get(place)))
                .draft();
        for (Piece old : before.pieces()) {
            Piece now = after.piece(old.name());
            Vector shift = old.levelFrame("hip").downwards().times(by);
            for (Edge edge : old.edges()) {
                Path path = now.edge(edge.name()).path();
                switch (edge.name()) {
                    case "neckline", "shoulder", "armhole" -> assertEquals(edge.path(), path);
                    case "hem" ->
                        assertEquals(
                                0,
                                Measured.apart(edge.path().moved(dev.hingepoint.curve.Motion.shift(shift)), path),
                                1e-6);
                    default -> {
                        Vector was = old.downwards(edge.name())
                                .end()
                                .minus(old.downwards(edge.name()).start());
                        Vector is = now.downwards(edge.name())
                                .end()
                                .minus(now.downwards(edge.name()).start());
                        assertEquals(0, is.minus(was).minus(shift).length(), 1e-6);
                    }
                }
            }
            String centre = old.hasEdge("centre front") ? "centre front" : "centre back";
            assertEquals(Measured.sewn(old, centre) + by, Measured.sewn(now, centre), 1e-6);
            // congruent: outside the stretch that was drawn anew the seam is its old self, above in its place and below
            // shifted
            Path seam = now.edge("side seam").path();
            double line = lineDepth(before, old, place);
            for (Point point : old.edge("side seam").path().flatten(0.01)) {
                double above = line - depth(old, point);
                if (above > 60 + Math.abs(by)) {
                    assertEquals(0, seam.distanceTo(point), 1e-6);
                } else if (above < -60 - Math.abs(by)) {
                    assertEquals(0, seam.distanceTo(point.plus(shift)), 1e-6);
                }
            }
            assertEquals(old.isClockwise(), now.isClockwise());
        }
    }

    private static double depth(Piece piece, Point point) {
        return point.minus(piece.levelFrame("waist").origin())
                .dot(piece.levelFrame("hip").downwards());
    }

    /** How far below the waist the place lies. */
    private static double lineDepth(Draft draft, Piece piece, int place) {
        double hip = depth(piece, piece.levelFrame("hip").origin());
        double bust = draft.pieces().stream()
                .mapToDouble(other -> depth(other, other.levelFrame("bust").origin()))
                .max()
                .orElseThrow();
        return List.of(0.0, hip, bust / 2, hip / 2, hip + 100).get(place);
    }

    private static double mostThatCanBeFolded(Draft draft, int place) {
        Refusal tooMuch =
                assertThrows(Refusal.class, () -> Catalogue.alter(draft, request("shorten", 700, PLACES.get(place))));
        return tooMuch.reason().limit().orElseThrow();
    }

    @Property(seed = "402", tries = 100)
    void girthsDartsAndSeamsStay(
            @ForAll("shapes") Shape shape,
            @ForAll @DoubleRange(min = 2, max = 60) double amount,
            @ForAll boolean isLonger,
            @ForAll @IntRange(min = 0, max = 4) int place) {
        Draft before = dress(shape);
        double by = isLonger ? amount : Math.min(amount, mostThatCanBeFolded(before, place));
        Draft after = Catalogue.alter(before, request(isLonger ? "lengthen" : "shorten", by, PLACES.get(place)))
                .draft();
        for (Piece old : before.pieces()) {
            Piece now = after.piece(old.name());
            for (Level level : old.marks(Level.class).toList()) {
                Path is = now.levelFrame(level.name()).path();
                assertEquals(
                        level.path().start().distanceTo(level.path().end()),
                        is.start().distanceTo(is.end()),
                        1e-4);
                assertEquals(0, now.outline().distanceTo(is.end()), 1e-6);
            }
            for (DoublePointedDart dart : old.marks(DoublePointedDart.class).toList()) {
                DoublePointedDart is =
                        now.find(DoublePointedDart.class, dart.name()).orElseThrow();
                assertEquals(widest(dart), widest(is), 1e-6);
                assertEquals(4, is.closed().segments().size(), "each leg straight from tip to widest");
                assertEquals(is.first().length(), is.second().length(), 1e-6);
            }
        }
        // front and back are sewn together still
        assertEquals(
                Measured.sewn(before.piece("front"), "side seam") - Measured.sewn(before.piece("back"), "side seam"),
                Measured.sewn(after.piece("front"), "side seam") - Measured.sewn(after.piece("back"), "side seam"),
                0.5);
    }

    /** From joint to joint across, where the dart is widest. */
    private static double widest(DoublePointedDart dart) {
        return dart.first()
                .segments()
                .get(0)
                .end()
                .distanceTo(dart.second().segments().get(0).end());
    }

    /** A full seat tilts the hip of a back on the fold, a sway back turns the bodice of one with a seam: the centre back still gets longer along itself. */
    @Property(seed = "404", tries = 60)
    void onPaperThatHasTurnedTheCentreBackStaysStraight(
            @ForAll("shapes") Shape shape,
            @ForAll @DoubleRange(min = 2, max = 60) double by,
            @ForAll @IntRange(min = 0, max = 3) int place) {
        AlterationRequest first =
                new AlterationRequest(shape.foldedBack() ? "full seat" : "sway back", Map.of("wedge", "15 mm"));
        Draft before = Catalogue.alter(dress(shape), first).draft();
        Piece old = before.piece("back");
        Piece now = Catalogue.alter(before, request("lengthen", by, PLACES.get(place)))
                .draft()
                .piece("back");
        assertEquals(Measured.sewn(old, "centre back") + by, Measured.sewn(now, "centre back"), 0.01);
        assertEquals(
                old.edge("centre back")
                                .path()
                                .start()
                                .distanceTo(old.edge("centre back").path().end())
                        + by,
                now.edge("centre back")
                        .path()
                        .start()
                        .distanceTo(now.edge("centre back").path().end()),
                shape.foldedBack() ? 1e-6 : 0.1);
        if (shape.foldedBack()) {
            Vector was = old.edge("centre back").path().startTangent();
            assertEquals(0, was.angleTo(now.edge("centre back").path().startTangent()), 1e-9);
        }
    }

    /** Central Washington University costume text, ch. 17: lengthening spreads all of the amount, shortening folds half of it. */
    @Test
    void onStraightPaperTheAreaChangesByAmountTimesWidth() {
        Piece back = TestPatterns.straightBack(225, 1000, 400);
        Draft draft = TestPatterns.of(back).in("40");
        Altered longer = Catalogue.alter(draft, request("lengthen", 30, Map.of("at", "waist")));
        assertEquals(back.area() + 30 * 225, longer.draft().piece("back").area(), 1e-6);
        Altered shorter = Catalogue.alter(draft, request("shorten", 30, Map.of("above", "hip")));
        assertEquals(back.area() - 30 * 225, shorter.draft().piece("back").area(), 1e-6);
        assertTrue(
                shorter.steps().get(0).caption().contains("a tuck 15 mm deep"),
                shorter.steps().toString());
    }

    /** The waist goes down with the skirt: the length to the waist changes, from waist to hip and hem nothing does. */
    @Test
    void aLevelRidesOnThePaperBelow() {
        Draft draft = TestPatterns.of(TestPatterns.straightBack(225, 1000, 400)).in("40");
        Piece at = Catalogue.alter(draft, request("lengthen", 30, Map.of("at", "waist")))
                .draft()
                .piece("back");
        assertEquals(430, at.levelFrame("waist").origin().y(), 1e-9);
        assertEquals(630, at.levelFrame("hip").origin().y(), 1e-9);
        Piece above = Catalogue.alter(draft, request("lengthen", 30, Map.of("above", "hip")))
                .draft()
                .piece("back");
        assertEquals(400, above.levelFrame("waist").origin().y(), 1e-9);
        assertEquals(630, above.levelFrame("hip").origin().y(), 1e-9);
    }

    @Test
    void shortenedAgainByAsMuchItIsAsItWas() {
        Piece back = TestPatterns.straightBack(225, 1000, 400);
        Draft draft = TestPatterns.of(back).in("40");
        for (Map<String, Object> place : PLACES.subList(0, 2)) {
            Draft longer =
                    Catalogue.alter(draft, request("lengthen", 40, place)).draft();
            Piece again = Catalogue.alter(longer, request("shorten", 40, place))
                    .draft()
                    .piece("back");
            assertTrue(again.outline().isCloseTo(back.outline(), 1e-9));
            assertEquals(back.marks().size(), again.marks().size());
            assertEquals(400, again.levelFrame("waist").origin().y(), 1e-9);
        }
    }

    @Property(seed = "403", tries = 40)
    void theLargestThatWouldWorkWorksAndNoMore(
            @ForAll("shapes") Shape shape, @ForAll @IntRange(min = 0, max = 4) int place) {
        Draft draft = dress(shape);
        double most = mostThatCanBeFolded(draft, place);
        Catalogue.alter(draft, request("shorten", most - 1e-6, PLACES.get(place)));
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request("shorten", most + 0.01, PLACES.get(place))));
    }

    /** Notches drawn on the line, one of them a hair above it and one a hair below, are still sewn together. */
    @Test
    void notchesOnTheLineGoWithThePaperBelow() {
        for (double hair : new double[] {-0.02, 0, 0.02}) {
            Notch drawn = new Notch("tape", 1, new Line(new Point(225, 400 + hair), new Point(219, 400 + hair)));
            Piece back = TestPatterns.straightBack(225, 1000, 400).withMark(drawn);
            Piece longer = Catalogue.alter(
                            TestPatterns.of(back).in("40"), request("lengthen", 20, Map.of("at", "waist")))
                    .draft()
                    .piece("back");
            Point at = longer.marks(Notch.class)
                    .filter(notch -> notch.name().equals("tape"))
                    .findFirst()
                    .orElseThrow()
                    .at();
            assertEquals(420 + hair, at.y(), 1e-9);
        }
    }

    @Test
    void aSleeveIsLengthenedOnlyWhenItIsNamed() {
        Shape shape = new Shape(205, 255, 20, 95, 262, 5, false, false, true, true, 0);
        Draft dress = TestPatterns.withSleeve(TestPatterns.dress(shape)).in("40");
        Piece sleeve = dress.piece("sleeve");
        Vector down = sleeve.grain().down();
        Point middle = sleeve.grain().line().at(0.6);
        DrawnLine line = new DrawnLine(
                "lengthen or shorten",
                Path.through(
                        middle.plus(down.left().times(50)),
                        middle.minus(down.left().times(50))));
        Draft drawn = dress.with(sleeve.withMark(line));
        Piece longer = Catalogue.alter(drawn, request("lengthen", 25, Map.of("piece", "sleeve")))
                .draft()
                .piece("sleeve");
        assertEquals(Measured.sewn(sleeve, "cap"), Measured.sewn(longer, "cap"), 1e-9);
        assertEquals(Measured.sewn(sleeve, "hem"), Measured.sewn(longer, "hem"), 1e-6);
        assertEquals(Measured.sewn(longer, "front underarm seam"), Measured.sewn(longer, "back underarm seam"), 1e-6);
        Refusal unnamed = assertThrows(Refusal.class, () -> Catalogue.alter(drawn, request("lengthen", 25, Map.of())));
        assertTrue(unnamed.getMessage().contains("no piece on the body"), unnamed.getMessage());
    }

    @Test
    void aZipThatTheLineCrossesGrows() {
        Draft draft = TestPatterns.of(TestPatterns.straightBack(225, 1000, 400)).in("40");
        Opening zip = new Opening(new EdgeRef("back", "centre back"), "neckline", Length.ofMillimetres(550));
        Draft zipped = draft.with(draft.construction().withOpenings(List.of(zip)));
        Altered crossed = Catalogue.alter(zipped, request("lengthen", 30, Map.of("at", "waist")));
        assertEquals(580, crossed.draft().openings().get(0).length().mm(), 1e-9);
        assertEquals(List.of("the opening in back/centre back is 580 mm long now"), crossed.notes());
        Altered below = Catalogue.alter(zipped, request("lengthen", 30, Map.of("at", "hip")));
        assertEquals(List.of(zip), below.draft().openings());
    }

    @Test
    void whatCannotBeIsRefused() {
        Shape shape = new Shape(205, 255, 20, 95, 262, 5, false, false, true, true, 0);
        Draft dress = TestPatterns.dress(shape).in("40");
        refused(dress, "must be more than 0", request("lengthen", -5, Map.of("at", "waist")));
        refused(dress, "there is no option", request("lengthen", 5, Map.of("to", "waist")));
        refused(dress, "not both", request("lengthen", 5, Map.of("at", "waist", "above", "hip")));
        refused(dress, "no piece on the body draws", request("lengthen", 5, Map.of("at", "knee")));
        refused(dress, "no level is drawn above the bust", request("lengthen", 5, Map.of("above", "bust")));
        refused(dress, "only one side of the seam", request("lengthen", 5, Map.of("at", "waist", "piece", "front")));
        Piece front = dress.piece("front");
        Point mouth = front.marks(dev.hingepoint.pattern.EdgeDart.class)
                .findFirst()
                .orElseThrow()
                .mouthMiddle();
        Path through = Path.through(mouth.minus(new Vector(100, 0)), mouth.minus(new Vector(20, 0)));
        Draft across = dress.with(front.withMark(new DrawnLine("lengthen or shorten", through)));
        refused(across, "runs through the dart", request("lengthen", 5, Map.of("piece", "front")));
    }

    private static void refused(Draft draft, String why, AlterationRequest request) {
        Refusal refusal = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request));
        assertTrue(refusal.getMessage().contains(why), refusal.getMessage());
    }
}
