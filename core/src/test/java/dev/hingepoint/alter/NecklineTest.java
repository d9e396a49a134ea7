package dev.hingepoint.alter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** What a neckline promises, measured on random dresses. */
class NecklineTest {
    private static final Shape SHAPE = new Shape(205, 255, 20, 95, 262, 5, false, false, true, true, 0);

    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AlterationRequest request(Object... options) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < options.length; i += 2) {
            map.put((String) options[i], options[i + 1]);
        }
        return new AlterationRequest("neckline", map);
    }

    /** With the shoulders sewn together. */
    private static Draft dress(Shape shape) {
        Pattern pattern = TestPatterns.dress(shape);
        List<Seam> seams = new ArrayList<>(pattern.card().seams());
        seams.add(Seam.of(new EdgeRef("back", "shoulder"), new EdgeRef("front", "shoulder")));
        return pattern.with(pattern.card().withSeams(seams)).in("40");
    }

    private static String centre(Piece piece) {
        return piece.hasEdge("centre front") ? "centre front" : "centre back";
    }

    private static double corner(Piece piece, String edge, String neighbour) {
        return Math.abs(piece.from(edge, neighbour)
                .startTangent()
                .angleTo(piece.from(neighbour, edge).startTangent()));
    }

    @Property(seed = "421", tries = 150)
    void shouldersAndCentreLinesChangeByTheAmountsAndNothingElse(
            @ForAll("shapes") Shape shape,
            @ForAll @DoubleRange(min = -30, max = 80) double lower,
            @ForAll @DoubleRange(min = 0, max = 60) double back,
            @ForAll @DoubleRange(min = -15, max = 30) double widen) {
        Assume.that(lower != 0 || widen != 0 || back != 0);
        Draft before = dress(shape);
        // a back that is widened without being lowered loses its curve
        double lowerBack = Math.max(back, widen);
        Draft after = Catalogue.alter(
                        before,
                        request("lower", lower + " mm", "lower back", lowerBack + " mm", "widen", widen + " mm"))
                .draft();
        for (Piece old : before.pieces()) {
            Piece now = after.piece(old.name());
            double down = old.hasEdge("centre front") ? lower : lowerBack;
            assertEquals(Measured.sewn(old, centre(old)) - down, Measured.sewn(now, centre(now)), 1e-3);
            assertEquals(Measured.sewn(old, "shoulder") - widen, Measured.sewn(now, "shoulder"), 1e-3);
            for (Edge edge : old.edges()) {
                if (!List.of("neckline", "shoulder", centre(old)).contains(edge.name())) {
                    assertEquals(edge.path(), now.edge(edge.name()).path());
                }
            }
            assertEquals(StrictMath.PI / 2, corner(now, "neckline", centre(now)), 1e-6, "square to the centre line");
            assertEquals(corner(old, "neckline", "shoulder"), corner(now, "neckline", "shoulder"), 1e-6);
            assertEquals(old.marks(), now.marks());
            staysHollow(now);
        }
        assertEquals(
                Measured.sewn(before.piece("back"), "shoulder") - Measured.sewn(before.piece("front"), "shoulder"),
                Measured.sewn(after.piece("back"), "shoulder") - Measured.sewn(after.piece("front"), "shoulder"),
                1e-3);
    }

    /** From the centre line the neckline rises all the way. */
    private static void staysHollow(Piece piece) {
        Path neckline = piece.from("neckline", centre(piece));
        Vector down = piece.from(centre(piece), "neckline").startTangent();
        List<Point> points = neckline.flatten(0.01);
        for (int i = 1; i < points.size(); i++) {
            assertTrue(points.get(i).minus(points.get(i - 1)).dot(down) < 1e-9, "at " + points.get(i));
        }
    }

    @Property(seed = "422", tries = 60)
    void theLargestThatWouldWorkWorks(@ForAll("shapes") Shape shape) {
        Draft draft = dress(shape);
        for (String option : List.of("lower", "lower back", "widen")) {
            double most = limit(draft, request(option, "700 mm"));
            Catalogue.alter(draft, request(option, (most - 1e-6) + " mm"));
            assertThrows(Refusal.class, () -> Catalogue.alter(draft, request(option, (most + 0.01) + " mm")));
        }
        double raised = limit(draft, request("lower", "-700 mm"));
        Catalogue.alter(draft, request("lower", -(raised - 1e-6) + " mm"));
        assertThrows(Refusal.class, () -> Catalogue.alter(draft, request("lower", -(raised + 0.01) + " mm")));
    }

    private static double limit(Draft draft, AlterationRequest request) {
        Refusal refusal = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request));
        return refusal.reason().limit().orElseThrow();
    }

    @Test
    void loweredAtTheFrontTheBackIsNotTouched() {
        Draft draft = dress(SHAPE);
        Altered altered = Catalogue.alter(draft, request("lower", "20 mm"));
        assertEquals(draft.piece("back"), altered.draft().piece("back"));
        assertEquals(1, altered.steps().size());
        assertEquals(
                "Redraw the neckline 20 mm lower at the centre front",
                altered.steps().get(0).caption());
        assertEquals(Map.of("lower", 20.0, "widen", 0.0), altered.amounts());
    }

    /** Raised and narrowed again by as much it is as it was. */
    @Property(seed = "423", tries = 40)
    void raisedAgainByAsMuchItIsAsItWas(
            @ForAll("shapes") Shape shape,
            @ForAll @DoubleRange(min = 1, max = 60) double lower,
            @ForAll @DoubleRange(min = 0, max = 12) double widen) {
        Draft before = dress(shape);
        Draft lowered = Catalogue.alter(before, request("lower", lower + " mm", "widen", widen + " mm"))
                .draft();
        Draft again = Catalogue.alter(lowered, request("lower", -lower + " mm", "widen", -widen + " mm"))
                .draft();
        for (Piece piece : before.pieces()) {
            Piece now = again.piece(piece.name());
            for (Edge edge : piece.edges()) {
                assertEquals(
                        0, Measured.apart(edge.path(), now.edge(edge.name()).path()), 0.01);
            }
        }
    }

    @Test
    void alongADrawnLine() {
        Draft draft = dress(SHAPE);
        Piece front = draft.piece("front");
        Path centre = front.from("centre front", "neckline");
        Path shoulder = front.from("shoulder", "neckline");
        // from 18 mm along the shoulder to 60 mm down the centre front, not quite square to it
        Point end = centre.at(60);
        Path line = Path.of(
                new dev.hingepoint.curve.Cubic(shoulder.at(18), new Point(85, 90), new Point(50, end.y() - 3), end));
        Draft drawn = draft.with(front.withMark(new DrawnLine("scoop", line)));
        Altered altered = Catalogue.alter(drawn, request("to", "scoop"));
        Piece now = altered.draft().piece("front");
        assertEquals(Measured.sewn(front, "centre front") - 60, Measured.sewn(now, "centre front"), 1e-3);
        assertEquals(Measured.sewn(front, "shoulder") - 18, Measured.sewn(now, "shoulder"), 1e-3);
        assertEquals(0, Measured.apart(line, now.edge("neckline").path()), 2);
        assertEquals(StrictMath.PI / 2, corner(now, "neckline", "centre front"), 1e-6);
        assertFalse(now.find(DrawnLine.class, "scoop").isPresent());
        Piece back = altered.draft().piece("back");
        assertEquals(Measured.sewn(draft.piece("back"), "shoulder") - 18, Measured.sewn(back, "shoulder"), 1e-3);
        assertEquals(1, altered.notes().size());
    }

    @Test
    void aDrawnPointStaysAPoint() {
        Draft draft = dress(SHAPE);
        Piece front = draft.piece("front");
        Path line = Path.through(
                front.from("centre front", "neckline").at(70),
                front.from("shoulder", "neckline").at(10));
        Altered altered = Catalogue.alter(draft.with(front.withMark(new DrawnLine("v", line))), request("to", "v"));
        assertTrue(
                altered.notes().get(0).contains("makes a point"),
                altered.notes().toString());
        assertEquals(
                0,
                Measured.apart(
                        line, altered.draft().piece("front").edge("neckline").path()),
                1e-6);
    }

    @Test
    void saysHowMuchLongerAndWhatIsSewnToIt() {
        Draft draft = dress(SHAPE);
        List<Seam> seams = new ArrayList<>(draft.seams());
        seams.add(new Seam(
                List.of(new EdgeRef("collar", "neck edge")),
                List.of(new EdgeRef("front", "neckline"), new EdgeRef("back", "neckline")),
                0,
                0,
                false));
        Draft collared = draft.with(draft.construction().withSeams(seams));
        Altered altered = Catalogue.alter(collared, request("lower", "30 mm"));
        double was = 0;
        double is = 0;
        for (Piece piece : draft.pieces()) {
            was += 2 * Measured.sewn(piece, "neckline");
            is += 2 * Measured.sewn(altered.draft().piece(piece.name()), "neckline");
        }
        assertEquals(
                List.of("the neckline is " + Math.round(is - was) + " mm longer round the neck, " + Math.round(is)
                        + " mm now; collar/neck edge must change with it"),
                altered.notes());
    }

    @Test
    void aZipFromTheNecklineEndsWhereItDid() {
        Draft draft = dress(SHAPE);
        Opening zip = new Opening(new EdgeRef("back", "centre back"), "neckline", Length.ofMillimetres(500));
        Draft zipped = draft.with(draft.construction().withOpenings(List.of(zip)));
        Draft lowered = Catalogue.alter(zipped, request("lower back", "40 mm")).draft();
        assertEquals(460, lowered.openings().get(0).length().mm(), 1e-9);
        Draft front = Catalogue.alter(zipped, request("lower", "40 mm")).draft();
        assertEquals(List.of(zip), front.openings());
    }

    @Test
    void whatCannotBeIsRefused() {
        Draft draft = dress(SHAPE);
        refused(draft, "write how much", request());
        refused(draft, "no piece with a neckline draws the line 'scoop'", request("to", "scoop"));
        refused(draft, "leave out lower and widen", request("to", "scoop", "lower", "5 mm"));
        Piece front = draft.piece("front");
        Path centre = front.from("centre front", "neckline");
        Path shoulder = front.from("shoulder", "neckline");
        Path off = Path.through(centre.at(60), shoulder.at(10).plus(new Vector(0, 12)));
        refused(draft.with(front.withMark(new DrawnLine("scoop", off))), "from the shoulder", request("to", "scoop"));
        Piece back = draft.piece("back");
        Path one = Path.through(centre.at(60), shoulder.at(10));
        Path other = Path.through(
                back.from("centre back", "neckline").at(60),
                back.from("shoulder", "neckline").at(14));
        Draft both =
                draft.with(front.withMark(new DrawnLine("scoop", one)), back.withMark(new DrawnLine("scoop", other)));
        refused(both, "they do not meet", request("to", "scoop"));
        Path neckline = front.edge("neckline").path();
        Draft darted = draft.with(
                front.withMark(EdgeDart.of("neck dart", neckline.at(50), new Point(60, 150), neckline.at(62))));
        refused(darted, "a dart opens in the neckline", request("lower", "10 mm"));
    }

    private static void refused(Draft draft, String why, AlterationRequest request) {
        Refusal refusal = assertThrows(Refusal.class, () -> Catalogue.alter(draft, request));
        assertTrue(refusal.getMessage().contains(why), refusal.getMessage());
    }
}
