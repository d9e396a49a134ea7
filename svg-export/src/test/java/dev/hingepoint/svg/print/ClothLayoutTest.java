package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Allowances;
import dev.hingepoint.pattern.BodyChart;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Lays;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

class ClothLayoutTest {
    private static final Draft DRESS = PatternFiles.read(java.nio.file.Path.of("../samples/patterns/larkfield.yaml"))
            .in("40");

    /** A rectangle of 300 x 500 mm, its left edge on the fold, cut without allowance. */
    private static Piece rectangle(String name, Cutting... cuttings) {
        Point[] corners = {new Point(0, 0), new Point(300, 0), new Point(300, 500), new Point(0, 500)};
        List<Edge> edges = new ArrayList<>();
        List<String> names = List.of("top", "side", "bottom", "fold");
        for (int i = 0; i < 4; i++) {
            Edge.Kind kind = i == 3 ? Edge.Kind.FOLD : Edge.Kind.SEAM;
            edges.add(new Edge(names.get(i), kind, Path.through(corners[i], corners[(i + 1) % 4])));
        }
        Grain grain = new Grain(new Line(new Point(200, 100), new Point(200, 400)));
        return Piece.of(name, "40", Optional.empty(), List.of(cuttings), edges, List.of(grain));
    }

    private static Draft draft(Lays.Way way, Piece... pieces) {
        Card card = new Card(
                "Test",
                "40",
                Optional.empty(),
                0,
                0,
                BodyChart.NONE,
                List.of(),
                new Allowances(Map.of("default", new Length(0))),
                List.of(),
                Map.of(),
                new Lays(Map.of(Lays.DEFAULT, way)),
                Optional.empty());
        return new Pattern(card, List.of(pieces)).in("40");
    }

    private static Cutting cut(int count, Cutting.How how, String cloth) {
        return new Cutting(count, how, Optional.of(cloth).filter(name -> !name.isEmpty()));
    }

    private static ClothLayout only(Draft draft, ClothWidths widths) {
        List<ClothLayout> layouts = ClothLayout.of(draft, widths);
        assertEquals(1, layouts.size());
        return layouts.get(0);
    }

    private static List<Polygon> laid(ClothLayout layout) {
        return layout.pieces().stream()
                .map(piece -> {
                    assertEquals(1, piece.rings().size());
                    return JtsBridge.polygon(piece.rings().get(0));
                })
                .toList();
    }

    /** Source: derived: twice 300 mm is 600 mm; 500 mm with 5 mm at either end is 510 mm, bought as 550 mm; 600 x 500 of 1400 x 550 mm leaves 61.04 %. */
    @Test
    void aRectangleOnTheFoldDoubles() {
        ClothLayout layout =
                only(draft(Lays.Way.ONE_WAY, rectangle("front", cut(1, Cutting.How.ON_FOLD, ""))), ClothWidths.USUAL);
        Polygon whole = laid(layout).get(0);
        assertEquals(600, whole.getEnvelopeInternal().getWidth(), 1e-9);
        assertEquals(600 * 500, whole.getArea(), 1e-6);
        assertEquals("main", layout.cloth());
        assertEquals(1400, layout.width());
        assertEquals(510, layout.used(), 1e-9);
        assertEquals(550, layout.needed());
        assertEquals(100 * (1 - 600 * 500 / (1400.0 * 550)), layout.waste(), 1e-9);
        assertEquals("main cloth, 140 cm wide: 55 cm (61 % waste)", layout.sentence());
    }

    /** Source: derived: the grain of the one is 200 mm from its left edge, of its mirror image 100 mm. */
    @Test
    void aPairIsTheOneAndItsMirrorImage() {
        ClothLayout layout =
                only(draft(Lays.Way.ONE_WAY, rectangle("sleeve", cut(1, Cutting.How.PAIR, ""))), ClothWidths.USUAL);
        List<Long> grains = layout.pieces().stream()
                .map(piece -> Math.round(
                        piece.grain().orElseThrow().start().x() - piece.bounds().left()))
                .sorted()
                .toList();
        assertEquals(List.of(100L, 200L), grains);
    }

    /** Source: derived: three pairs and two on the fold are eight pieces of 6 x 300 x 500 + 2 x 600 x 500 square mm. */
    @Test
    void eachIsCutAsOftenAsTheCardSays() {
        ClothLayout layout = only(
                draft(
                        Lays.Way.ONE_WAY,
                        rectangle("cuff", cut(3, Cutting.How.PAIR, "main"), cut(2, Cutting.How.ON_FOLD, ""))),
                ClothWidths.USUAL);
        assertEquals(8, layout.pieces().size());
        assertEquals(
                10 * 300 * 500,
                laid(layout).stream().mapToDouble(Polygon::getArea).sum(),
                1e-6);
    }

    /** Source: derived; interfacing 90 cm wide, common practice, no source. */
    @Test
    void eachClothIsLaidByItself() {
        Draft draft = draft(
                Lays.Way.ONE_WAY,
                rectangle("collar", cut(2, Cutting.How.SINGLE, ""), cut(1, Cutting.How.SINGLE, "interfacing")),
                rectangle("yoke", cut(1, Cutting.How.ON_FOLD, "contrast")));
        List<ClothLayout> layouts = ClothLayout.of(draft, ClothWidths.USUAL.with("contrast", new Length(700)));
        assertEquals(
                List.of("main", "interfacing", "contrast"),
                layouts.stream().map(ClothLayout::cloth).toList());
        assertEquals(
                List.of(1400.0, 900.0, 700.0),
                layouts.stream().map(ClothLayout::width).toList());
        assertEquals(
                List.of(2, 1, 1),
                layouts.stream().map(layout -> layout.pieces().size()).toList());
    }

    /** Source: derived: what may lie two ways does so no more when the cloth has a nap: each grain runs down the cloth. */
    @Test
    void aNapKeepsAllOneWay() {
        ClothLayout layout = only(DRESS, ClothWidths.USUAL.with(ClothWidths.Nap.ONE_WAY));
        layout.pieces().forEach(piece -> {
            Line asDrawn =
                    piece.piece().marks(Grain.class).findFirst().orElseThrow().line();
            boolean isDrawnDown = piece.piece().grain().down().dot(asDrawn.tangent(0)) > 0;
            double down = piece.grain().orElseThrow().tangent(0).y();
            assertEquals(isDrawnDown ? 1 : -1, down, 1e-9);
        });
        assertTrue(only(DRESS, ClothWidths.USUAL).used() <= layout.used());
    }

    /** Source: derived, JTS's polygons of the laid pieces: 5 mm apart, within the cloth. */
    @ParameterizedTest
    @CsvSource({"1100", "1400", "1500"})
    void thePiecesOfTheDressKeepApartOnEveryCloth(double width) {
        ClothLayout layout = only(DRESS, ClothWidths.USUAL.with(ClothWidths.MAIN, new Length(width)));
        List<Polygon> pieces = laid(layout);
        assertEquals(5, pieces.size());
        Geometry cloth = JtsBridge.polygon(
                new Box(5, 5, width - 5, layout.used() - 5).grownBy(1e-6).corners());
        for (int i = 0; i < pieces.size(); i++) {
            assertTrue(cloth.covers(pieces.get(i)));
            for (int k = 0; k < i; k++) {
                assertTrue(pieces.get(i).distance(pieces.get(k)) >= 5 - 1e-9);
            }
        }
        assertTrue(layout.needed() >= layout.used() && layout.needed() < layout.used() + 50);
        assertEquals(0, layout.needed() % 50);
    }

    /** Source: derived: 600 mm with 5 mm at either side need 610 mm. */
    @Test
    void aPieceWiderThanTheClothIsRefusedWithWhatWouldWork() {
        Draft draft = draft(Lays.Way.TWO_WAYS, rectangle("front", cut(1, Cutting.How.ON_FOLD, "")));
        ClothWidths narrow = ClothWidths.USUAL.with(ClothWidths.MAIN, new Length(609));
        Refusal refusal = assertThrows(Refusal.class, () -> ClothLayout.of(draft, narrow));
        assertEquals(
                "piece front, size 40: it is 600 mm wide as it is cut, too wide for the main cloth of 60.9 cm; a cloth of at least 61 cm would work",
                refusal.getMessage());
        assertEquals(
                1,
                ClothLayout.of(draft, narrow.with(ClothWidths.MAIN, new Length(610)))
                        .size());
    }

    /** Source: derived: on paper of any size words are 2.5 mm or more, lie on it, and touch neither a line nor each other; every piece has its number. */
    @ParameterizedTest
    @CsvSource({"180, 267", "90, 100", "60, 75", "190, 90"})
    void everyPieceIsNamedAndNothingCollides(double width, double height) {
        ClothLayout layout = only(DRESS, ClothWidths.USUAL);
        Drawn picture = layout.picture(width, height);
        Geometry paper = JtsBridge.polygon(new Box(0, 0, width, height).corners());
        List<Geometry> words = new ArrayList<>();
        for (Text text : picture.texts()) {
            assertTrue(text.size() >= 2.5);
            Geometry room = JtsBridge.polygon(text.bounds().corners());
            assertTrue(paper.covers(room), text.words());
            words.forEach(other -> assertFalse(other.intersects(room), text.words()));
            words.add(room);
            for (Stroke stroke : picture.strokes()) {
                boolean isItsLeader = stroke.style() == Style.LEADER;
                assertTrue(
                        isItsLeader || !room.intersects(JtsBridge.lineString(Path.through(stroke.points()))),
                        text.words());
            }
        }
        picture.strokes()
                .forEach(stroke -> assertTrue(paper.covers(JtsBridge.lineString(Path.through(stroke.points())))));
        assertEquals(
                5,
                picture.texts().stream()
                        .filter(text -> text.words().matches("[123]( front| back| sleeve)?"))
                        .count());
    }

    @Test
    void theSamePictureEveryTime() {
        assertEquals(
                only(DRESS, ClothWidths.USUAL).svg(210, 297, 15),
                only(DRESS, ClothWidths.USUAL).svg(210, 297, 15));
    }
}
