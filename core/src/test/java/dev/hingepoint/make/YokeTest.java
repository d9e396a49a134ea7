package dev.hingepoint.make;

import static dev.hingepoint.make.Dresses.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.check.Measurements;
import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.check.Walked;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Yokes on random dresses, measured with JTS. */
class YokeTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static Map<String, Object> options(Object... pairs) {
        Map<String, Object> options = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            options.put((String) pairs[i], pairs[i + 1]);
        }
        return options;
    }

    private static Draft make(Draft draft, Object... pairs) {
        return Choices.make(draft, new AlterationRequest("yoke", options(pairs)))
                .draft();
    }

    private static double area(Piece piece) {
        return JtsBridge.polygon(piece.outline().flatten(0.001)).getArea();
    }

    @Property(seed = "731", tries = 60)
    void noPaperIsLostAndBothSidesAreEqual(
            @ForAll("shapes") Shape shape,
            @ForAll @DoubleRange(min = 20, max = 90) double down,
            @ForAll @DoubleRange(min = 20, max = 100) double centre,
            @ForAll @DoubleRange(min = -10, max = 15) double curve) {
        Draft before = Dresses.sleeved(shape);
        Draft after = make(
                before,
                "piece",
                "both",
                "from",
                "armhole " + down + " mm",
                "to",
                "centre " + centre + " mm",
                "curve",
                curve + " mm");
        for (String name : List.of("front", "back")) {
            String yoke = name + " yoke";
            assertEquals(
                    area(before.piece(name)), area(after.piece(name)) + area(after.piece(yoke)), 0.5, "mm2 of " + name);
            assertEquals(length(after, name, "yoke seam"), length(after, yoke, "yoke seam"), 1e-6);
            String side = name.equals("front") ? "centre front" : "centre back";
            assertEquals(length(before, name, side), length(after, name, side) + length(after, yoke, side), 1e-3);
            assertEquals(centre, length(after, yoke, side), 1e-6);
            String finished = side + " length";
            assertEquals(
                    Measurements.of(before).get(finished),
                    Measurements.of(after).get(finished),
                    1e-6,
                    "divided, the garment is as long as before");
            assertEquals(down, length(after, yoke, "armhole"), 0.02);
            assertEquals(before.piece(name).isClockwise(), after.piece(name).isClockwise());
        }
        for (Walked seam : SeamWalk.all(after)) {
            if (!seam.seam().joins(new EdgeRef("sleeve", "cap"))) {
                assertTrue(seam.lengthMatches(), seam.seam().toString());
            }
        }
    }

    /** The notches of both sides lie at one place of the seam, nearer to one end. */
    @Property(seed = "732", tries = 30)
    void theNotchesOfBothSidesMeet(@ForAll("shapes") Shape shape) {
        Draft after =
                make(Dresses.sleeved(shape), "piece", "front", "from", "armhole 50 mm", "to", "centre front 60 mm");
        Walked seam = SeamWalk.all(after).stream()
                .filter(walked -> walked.seam().joins(new EdgeRef("front yoke", "yoke seam")))
                .findFirst()
                .orElseThrow();
        assertEquals(1, seam.notches().size());
        assertEquals(0, seam.notches().get(0).difference(), 1e-6);
        assertTrue(Math.abs(seam.notches().get(0).onJoin() - seam.joinLength() / 2) > 5);
    }

    /** Unfolded, the line has no point: derived. Its middle lies the curve's depth off the straight line. */
    @Property(seed = "733", tries = 30)
    void aCurvedLineIsSquareToTheFold(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = -10, max = 20) double curve) {
        Draft after = make(
                Dresses.sleeved(shape),
                "piece",
                "front",
                "from",
                "armhole 60 mm",
                "to",
                "centre 80 mm",
                "curve",
                curve + " mm");
        Piece yoke = after.piece("front yoke");
        Path seam = yoke.from("yoke seam", "centre front");
        Vector fold = yoke.from("centre front", "yoke seam").startTangent();
        assertEquals(90, StrictMath.toDegrees(Math.abs(seam.startTangent().angleTo(fold))), 1e-6);
        double off = Math.abs(seam.segments()
                .get(0)
                .at(0.5)
                .minus(seam.start())
                .cross(seam.end().minus(seam.start()).unit()));
        assertEquals(Math.abs(curve), off, 1e-6);
    }

    @Test
    void theSeamsThatMetTheDividedEdgesNameBothParts() {
        Draft after =
                make(Dresses.sleeved(Dresses.SEAMED), "piece", "both", "from", "armhole 60 mm", "to", "centre 60 mm");
        List<String> seams = after.seams().stream().map(seam -> seam.toString()).toList();
        assertTrue(
                seams.contains("sleeve/cap to front/armhole + front yoke/armhole + back yoke/armhole + back/armhole"),
                seams.toString());
        assertTrue(seams.contains("front yoke/shoulder to back yoke/shoulder"), seams.toString());
        assertTrue(seams.contains("front/side seam to back/side seam"), seams.toString());
        assertEquals(
                Cutting.How.PAIR, after.piece("back yoke").cuttings().get(0).how());
        assertEquals(
                Cutting.How.ON_FOLD, after.piece("front yoke").cuttings().get(0).how());
    }

    @Test
    void anOpeningRunsOnBelowTheYokeAndAllowancesGoWithTheirEdges() {
        Draft drawn = Dresses.sleeved(Dresses.SEAMED);
        EdgeRef centre = new EdgeRef("back", "centre back");
        Draft draft = drawn.with(drawn.construction()
                .withOpenings(List.of(new Opening(centre, "neckline", new Length(500))))
                .withAllowance(centre, new Length(22)));
        Draft after = make(draft, "piece", "back", "from", "armhole 60 mm", "to", "centre back 70 mm");
        assertEquals(
                List.of(
                        new Opening(new EdgeRef("back yoke", "centre back"), "neckline", new Length(70)),
                        new Opening(centre, "yoke seam", new Length(430))),
                after.openings().stream()
                        .map(opening -> new Opening(
                                opening.edge(),
                                opening.from(),
                                new Length(Math.rint(opening.length().mm() * 1e6) / 1e6)))
                        .toList());
        Piece yoke = after.piece("back yoke");
        assertEquals(22, after.allowances().of(yoke, yoke.edge("centre back")).mm());
    }

    @Test
    void aBackYokeMayLieOnTheFoldOverASeamedBack() {
        Draft after = make(
                Dresses.sleeved(Dresses.SEAMED),
                "piece",
                "both",
                "from",
                "armhole 60 mm",
                "to",
                "centre 70 mm",
                "fold",
                "yes");
        Piece yoke = after.piece("back yoke");
        assertEquals(Edge.Kind.FOLD, yoke.edge("centre back").kind());
        assertEquals(Cutting.How.ON_FOLD, yoke.cuttings().get(0).how());
        assertEquals(Edge.Kind.SEAM, after.piece("back").edge("centre back").kind());
    }

    /** Derived: the wedge's triangle is gone, the seam keeps its length, the shoulder as it is sewn too. */
    @Test
    void aDartThatEndsInTheLineIsClosedIntoIt() {
        Draft drawn = Dresses.sleeved(Dresses.SEAMED);
        Piece back = drawn.piece("back");
        Path shoulder = back.from("shoulder", "neckline");
        Path line = Path.through(
                back.from("armhole", "shoulder").at(70),
                back.from("centre back", "neckline").at(90));
        Vector square = shoulder.startTangent().right();
        Vector down = square.dot(back.grain().down()) > 0 ? square : square.negated();
        EdgeDart dart = EdgeDart.of(
                "shoulder dart",
                shoulder.at(55).plus(down.times(0.05)), // as drawings have it: a hair beside the edge
                shoulder.at(61).plus(down.times(70)),
                shoulder.at(67));
        Draft draft = drawn.with(back.withMark(dart).withMark(new DrawnLine("style line", line)));
        Draft open = make(draft, "piece", "back", "line", "style line");
        Draft closed = make(draft, "piece", "back", "line", "style line", "close darts", "yes");
        assertEquals(
                Optional.empty(),
                closed.piece("back yoke").marks(EdgeDart.class).findAny());
        assertEquals(length(open, "back yoke", "yoke seam"), length(closed, "back yoke", "yoke seam"), 0.5);
        assertEquals(length(open, "back yoke", "shoulder") - 12, length(closed, "back yoke", "shoulder"), 0.5);
        assertEquals(length(open, "back yoke", "armhole"), length(closed, "back yoke", "armhole"), 0.01);
        assertTrue(area(closed.piece("back yoke")) < area(open.piece("back yoke")) - 0.9 * 6 * 70);
        for (String fair : List.of("yoke seam", "shoulder")) {
            assertTrue(
                    closed.piece("back yoke").edge(fair).path().corners(0.002).isEmpty(), fair);
        }
    }

    /** A facing is traced over the yoke seam as over flat paper: it is not divided where the yoke is. */
    @Property(seed = "734", tries = 20)
    void aFacingRunsWholeOverTheYokeSeam(@ForAll("shapes") Shape shape) {
        Draft drawn = Dresses.sleeveless(shape);
        AlterationRequest facing = new AlterationRequest("facing", options("edge", "armhole", "depth", "30 mm"));
        Draft whole = Choices.make(drawn, facing).draft();
        Draft yoked = make(drawn, "piece", "both", "from", "armhole 60 mm", "to", "centre 70 mm");
        Draft after = Choices.make(yoked, facing).draft();
        for (String name : List.of("front armhole facing", "back armhole facing")) {
            for (String edge : List.of("joined edge", "outer edge", "shoulder end", "side seam end")) {
                assertEquals(length(whole, name, edge), length(after, name, edge), 0.1, name + "/" + edge);
            }
        }
        assertTrue(SeamWalk.all(after).stream().allMatch(Walked::lengthMatches));
    }

    @Test
    void whatCannotBeDividedIsRefused() {
        Draft draft = Dresses.sleeved(Dresses.SHAPE);
        Refusal far = assertThrows(
                Refusal.class, () -> make(draft, "piece", "front", "from", "armhole 600 mm", "to", "centre 60 mm"));
        assertTrue(far.reason().limit().isPresent(), far.getMessage());
        assertThrows(Refusal.class, () -> make(draft, "piece", "front", "from", "armhole 60 mm"));
        assertThrows(Refusal.class, () -> make(draft, "piece", "front", "from", "armhole", "to", "centre 60 mm"));
        assertThrows(Refusal.class, () -> make(draft, "piece", "front", "line", "no such line"));
        assertThrows(Refusal.class, () -> make(draft, "piece", "collar", "from", "a 1 mm", "to", "b 2 mm"));
        Refusal out = assertThrows(
                Refusal.class, () -> make(draft, "piece", "front", "from", "shoulder 60 mm", "to", "side seam 30 mm"));
        assertTrue(out.getMessage().contains("runs out of the piece"), out.getMessage());
        // through the bust dart
        Refusal dart = assertThrows(
                Refusal.class, () -> make(draft, "piece", "front", "from", "side seam 70 mm", "to", "centre 250 mm"));
        assertTrue(dart.getMessage().contains("dart"), dart.getMessage());
    }
}
