package dev.hingepoint.make;

import static dev.hingepoint.make.Dresses.dress;
import static dev.hingepoint.make.Dresses.length;
import static dev.hingepoint.make.Dresses.sleeveless;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.alter.Altered;
import dev.hingepoint.check.SeamWalk;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.EdgeRef;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Opening;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.TestPatterns;
import dev.hingepoint.pattern.TestPatterns.Shape;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/** Facings on random dresses, measured with JTS on flattened lines. */
class FacingTest {
    @Provide
    Arbitrary<Shape> shapes() {
        return TestPatterns.shapes();
    }

    private static AlterationRequest request(String edge, double depth) {
        return new AlterationRequest("facing", Map.of("edge", edge, "depth", depth + " mm"));
    }

    private static String end(Piece piece, boolean isCentre) {
        return piece.edges().stream()
                .map(edge -> edge.name())
                .filter(name -> name.endsWith(" end") && name.startsWith("centre") == isCentre)
                .findFirst()
                .orElseThrow();
    }

    @Property(seed = "701", tries = 60)
    void theJoinedEdgeIsOnePerCentShorterAndAtMostFourMillimetres(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 20, max = 60) double depth) {
        Draft before = dress(shape);
        Draft after = Choices.make(before, request("neckline", depth)).draft();
        double edge = 0;
        double facing = 0;
        for (String piece : List.of("front", "back")) {
            edge += 2 * length(before.piece(piece).edge("neckline").path());
            facing += 2
                    * length(after.piece(piece + " neckline facing")
                            .edge("joined edge")
                            .path());
            assertEquals(before.piece(piece), after.piece(piece));
        }
        assertEquals(edge - Math.min(0.01 * edge, 4), facing, 0.02);
    }

    /** The curve of the edge is the facing's, point for point: what is taken out is taken out at the ends. */
    @Property(seed = "702", tries = 60)
    void theFacingHasTheEdgesOwnCurve(@ForAll("shapes") Shape shape) {
        Draft before = dress(shape);
        Draft after = Choices.make(before, request("neckline", 45)).draft();
        for (String name : List.of("front", "back")) {
            Piece made = after.piece(name + " neckline facing");
            Path joined = made.edge("joined edge").path();
            Path edge = before.piece(name).edge("neckline").path();
            // the facing was laid aside without being turned
            LineString home = JtsBridge.lineString(joined.moved(shiftOnto(made, before.piece(name))));
            LineString own = JtsBridge.lineString(edge);
            for (Coordinate point : home.getCoordinates()) {
                assertEquals(0, own.distance(own.getFactory().createPoint(point)), 0.02);
            }
        }
    }

    /** By the middles of the two paths, which nothing was taken out of. */
    private static Motion shiftOnto(Piece made, Piece piece) {
        Path joined = made.edge("joined edge").path();
        Path edge = piece.edge("neckline").path();
        return Motion.shift(edge.at(edge.length() / 2).minus(joined.at(joined.length() / 2)));
    }

    @Property(seed = "703", tries = 60)
    void theOuterEdgeIsParallelAndFairPastTheShoulder(
            @ForAll("shapes") Shape shape, @ForAll @DoubleRange(min = 25, max = 55) double depth) {
        Draft before = dress(shape);
        Draft after = Choices.make(before, request("neckline", depth)).draft();
        double angles = 0;
        for (String name : List.of("front", "back")) {
            Piece made = after.piece(name + " neckline facing");
            LineString own = JtsBridge.lineString(before.piece(name)
                    .edge("neckline")
                    .path()
                    .moved(shiftOnto(made, before.piece(name)).inverse()));
            Path outer = made.edge("outer edge").path();
            for (int i = 0; i <= 20; i++) {
                // near the shoulder the other piece's edge is as near
                Point point = made.from("outer edge", end(made, true)).at(outer.length() * 0.7 * i / 20);
                Geometry at = own.getFactory().createPoint(new Coordinate(point.x(), point.y()));
                assertEquals(depth, own.distance(at), 0.05, name + " at " + i);
            }
            Vector seam = made.from(end(made, false), "outer edge").startTangent();
            Vector away = made.from("outer edge", end(made, false)).startTangent();
            angles += Math.abs(StrictMath.toDegrees(seam.angleTo(away)));
            assertTrue(outer.corners(StrictMath.toRadians(0.5)).isEmpty());
        }
        // derived: the ends lie on one fair line, up to 1 mm apart for what was taken out, and it bends no more tightly
        // than radius 40 mm
        assertEquals(180, angles, StrictMath.toDegrees(1 / 40.0));
        assertTrue(SeamWalk.all(after).stream().allMatch(seam -> seam.lengthMatches()));
    }

    @Property(seed = "704", tries = 40)
    void anArmholeFacingGoesRoundWithoutTheSleeve(@ForAll("shapes") Shape shape) {
        Draft before = sleeveless(shape);
        Draft after = Choices.make(before, request("armhole", 35)).draft();
        double edge = length(before.piece("front").edge("armhole").path())
                + length(before.piece("back").edge("armhole").path());
        double facing = length(
                        after.piece("front armhole facing").edge("joined edge").path())
                + length(after.piece("back armhole facing").edge("joined edge").path());
        assertEquals(edge - Math.min(0.01 * edge, 4), facing, 0.02);
        assertTrue(SeamWalk.all(after).stream().allMatch(seam -> seam.lengthMatches()));
        assertEquals(
                Cutting.How.PAIR,
                after.piece("back armhole facing").cuttings().get(0).how());
    }

    @Test
    void itLiesOnTheFoldWhereThePieceDoesAndIsInterfaced() {
        Altered made = Choices.make(dress(Dresses.SHAPE), request("neckline", 50));
        List<Cutting> cuttings = made.draft().piece("front neckline facing").cuttings();
        assertEquals(
                List.of(
                        new Cutting(1, Cutting.How.ON_FOLD, Optional.empty()),
                        new Cutting(1, Cutting.How.ON_FOLD, Optional.of("interfacing"))),
                cuttings);
        String label = String.join("\n", made.draft().construction().labels().get("front neckline facing"));
        assertTrue(label.contains("interface") && label.contains("understitch"), label);
    }

    /** The outer edge ends 6 mm beside the opening; common practice, no source. */
    @Test
    void theOuterEdgeEndsClearOfTheOpening() {
        Draft draft = dress(Dresses.SEAMED);
        EdgeRef back = new EdgeRef("back", "centre back");
        Draft opened =
                draft.with(draft.construction().withOpenings(List.of(new Opening(back, "neckline", new Length(500)))));
        Piece made = Choices.make(opened, request("neckline", 50)).draft().piece("back neckline facing");
        Path outer = made.from("outer edge", "centre back end");
        Path joined = made.from("joined edge", "centre back end");
        double edge = draft.piece("front").sewnLength("neckline")
                + draft.piece("back").sewnLength("neckline");
        double share = Math.min(0.01, 2 / edge) * draft.piece("back").sewnLength("neckline") / 2;
        assertEquals(6 - share, Math.abs(outer.start().x() - joined.start().x()), 0.01);
    }

    @Test
    void whatCannotBeFacedIsRefusedWithWhatWouldWork() {
        Draft draft = dress(Dresses.SHAPE);
        Refusal deep = assertThrows(Refusal.class, () -> Choices.make(draft, request("neckline", 140)));
        double most = deep.reason().limit().orElseThrow();
        assertTrue(most > 60 && most < 140, deep.getMessage());
        Choices.make(draft, request("neckline", most - 0.01));
        assertThrows(Refusal.class, () -> Choices.make(draft, request("neckline", most + 0.01)));

        Refusal sleeve = assertThrows(Refusal.class, () -> Choices.make(draft, request("armhole", 40)));
        assertTrue(sleeve.getMessage().contains("sleeveless"), sleeve.getMessage());

        Piece front = draft.piece("front");
        Piece sheer = front.named("front", List.of(new Cutting(1, Cutting.How.ON_FOLD, Optional.of("sheer"))));
        Refusal shows = assertThrows(Refusal.class, () -> Choices.make(draft.with(sheer), request("neckline", 40)));
        assertTrue(shows.getMessage().contains("bind") && shows.getMessage().contains("rolled"), shows.getMessage());

        Draft faced = Choices.make(draft, request("neckline", 40)).draft();
        assertThrows(Refusal.class, () -> Choices.make(faced, request("neckline", 40)));
        assertThrows(Refusal.class, () -> Choices.make(draft, new AlterationRequest("facing", Map.of())));
        assertThrows(Refusal.class, () -> Choices.make(draft, new AlterationRequest("pocket", Map.of())));
    }
}
