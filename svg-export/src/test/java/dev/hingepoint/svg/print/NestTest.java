package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.file.Drawings;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Several sizes in one another. Expected places are derived. */
class NestTest {
    private static final PrintOptions PLAIN = PrintOptions.of(Paper.A4).forWhom("Ida", "25 November");

    @TempDir
    private java.nio.file.Path folder;

    private Pattern pattern;

    @BeforeEach
    void readTheTunic() {
        pattern = PatternFiles.read(Drawings.write(folder, UnaryOperator.identity(), UnaryOperator.identity()));
    }

    private static List<Draft> sizes(Pattern pattern, String... sizes) {
        return List.of(sizes).stream().map(pattern::in).toList();
    }

    private static Geometry lines(List<Stroke> strokes) {
        return strokes.stream()
                .map(stroke -> (Geometry) JtsBridge.lineString(Path.through(stroke.points())))
                .reduce(Geometry::union)
                .orElseThrow();
    }

    private static List<Stroke> of(Drawn drawn, Style style) {
        return drawn.strokes().stream()
                .filter(stroke -> stroke.style() == style)
                .toList();
    }

    /** Strips in so many sizes, each wider than the last by a step and drawn beside it. */
    private static Pattern strips(int count, double step) {
        List<Piece> nest = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Piece strip = LetteringTest.strip("panel", 150 + i * step, 400 + i * step, Edge.Kind.SEAM, 0);
            nest.add(strip.inSize("" + (30 + 2 * i)));
        }
        return new Pattern(Card.of("Test tunic", "30", List.of()), nest);
    }

    private static Pattern moved(Pattern pattern, String size, Motion motion) {
        return pattern.with(pattern.nest().stream()
                .filter(piece -> piece.size().equals(size))
                .map(piece -> piece.moved(motion))
                .toList());
    }

    @ParameterizedTest
    @EnumSource(Scale.class)
    void everySizeIsThereInItsOwnLine(Scale scale) {
        List<Draft> sizes = sizes(pattern, "42", "40");
        for (PieceDrawing drawing : PieceDrawing.of(sizes, PLAIN.with(scale))) {
            Drawn drawn = ClearWords.of(drawing, 2.5);
            for (int i = 0; i < 2; i++) {
                Draft draft = sizes.get(i);
                List<Point> ring =
                        CuttingLine.of(draft, draft.piece(drawing.name())).outline();
                Geometry lines = lines(of(drawn, Style.nest().get(i)));
                Piece piece = draft.piece(drawing.name());
                for (int k = 1; k < ring.size(); k++) {
                    Point at = ring.get(k - 1).midpoint(ring.get(k));
                    boolean isOnFold = piece.edges().stream()
                            .filter(edge -> edge.kind() == Edge.Kind.FOLD)
                            .map(edge -> edge.path())
                            .anyMatch(fold -> Math.abs(fold.end()
                                            .minus(fold.start())
                                            .unit()
                                            .cross(at.minus(fold.start())))
                                    < 0.01);
                    Geometry scaled = lines.getFactory()
                            .createPoint(new Coordinate(at.x() * scale.factor(), at.y() * scale.factor()));
                    assertEquals(!isOnFold, lines.isWithinDistance(scaled, 1e-9), at.toString());
                }
            }
            assertEquals(List.of(), of(drawn, Style.CUTTING));
            assertEquals(List.of(), of(drawn, Style.STITCHING));
            List<String> words = ClearWords.words(drawn);
            assertTrue(words.contains("sizes 42, 40"), words.toString());
            assertTrue(words.contains("stitching lines left out"), words.toString());
            assertEquals(1, words.stream().filter("hip"::equals).count());
            // what is laid out is as large as the largest of them
            Geometry laid = ClearWords.area(drawing.cutting());
            for (Style style : Style.nest().subList(0, 2)) {
                assertTrue(laid.buffer(1e-6).covers(lines(of(drawn, style))));
            }
        }
    }

    /** The names of the sizes stand inside their own line, the next line nearer to none. */
    @Test
    void everySizeIsNamedAlongItsLine() {
        Pattern strips = strips(10, 8);
        List<Draft> sizes = strips.sizes().stream().map(strips::in).toList();
        PieceDrawing drawing = PieceDrawing.of(sizes, PLAIN).get(0);
        Drawn drawn = ClearWords.of(drawing, 2.5);
        for (int i = 0; i < sizes.size(); i++) {
            String size = sizes.get(i).size();
            Style style = Style.nest().get(i);
            List<Text> names = drawn.texts().stream()
                    .filter(text -> text.words().equals(size))
                    .toList();
            assertTrue(names.size() > 1, size + " is named " + names.size() + " times");
            List<Point> own = of(drawn, style).get(0).points();
            for (Text name : names) {
                Geometry room = ClearWords.room(name);
                assertTrue(ClearWords.area(List.of(own)).contains(room), name.toString());
                double distance = line(own).distance(room);
                assertTrue(distance < 1, name + " is " + distance + " mm from its line");
                for (Style other : Style.nest()) {
                    if (other != style) {
                        assertTrue(line(of(drawn, other).get(0).points()).distance(room) > 0.2, name.toString());
                    }
                }
            }
        }
    }

    private static Geometry line(List<Point> ring) {
        return ClearWords.area(List.of(ring)).getBoundary();
    }

    /** Where lines lie too close for a name between them, a leader line leads to it: no size is without its name. */
    @ParameterizedTest
    @EnumSource(Scale.class)
    void noSizeIsWithoutItsName(Scale scale) {
        Pattern strips = strips(6, 3);
        List<Draft> sizes = strips.sizes().stream().map(strips::in).toList();
        List<String> words = ClearWords.words(
                ClearWords.of(PieceDrawing.of(sizes, PLAIN.with(scale)).get(0), 2.5));
        for (Draft size : sizes) {
            assertTrue(words.contains(size.size()) || words.contains("size " + size.size()), words.toString());
        }
    }

    @Test
    void sizesThatShareTheirLineShareItsName() {
        Pattern strips = strips(1, 0);
        Piece panel = strips.nest().get(0);
        Pattern same = strips.with(List.of(panel.inSize("32"), panel.inSize("34")));
        Drawn drawn = ClearWords.of(
                PieceDrawing.of(sizes(same, "30", "32", "34"), PLAIN).get(0), 2.5);
        assertEquals(1, of(drawn, Style.NEST_1).size());
        assertEquals(List.of(), of(drawn, Style.NEST_2));
        assertTrue(ClearWords.words(drawn).contains("30, 32, 34"));
    }

    @Test
    void linesOfSizesAreToldApart() {
        Set<List<Object>> looks = new HashSet<>();
        Style.nest().forEach(style -> assertTrue(looks.add(List.of(style.width(), style.dashes())), style.name()));
        assertEquals(10, looks.size());
    }

    @Test
    void moreSizesThanLinesAreRefused() {
        Pattern strips = strips(11, 5);
        List<Draft> sizes = strips.sizes().stream().map(strips::in).toList();
        PieceDrawing.of(sizes.subList(0, 10), PLAIN);
        Refusal refusal = assertThrows(Refusal.class, () -> PieceDrawing.of(sizes, PLAIN));
        assertEquals(
                "11 sizes in one another could not be told apart; print at most 10 at a time", refusal.getMessage());
    }

    /** Drawn in one another, they stay; drawn side by side, they are brought together at the bust, or at the first level that all have. */
    @Test
    void sizesDrawnApartAreBroughtTogether() {
        Motion away = Motion.turn(new Point(100, 100), 0.3).then(Motion.shift(new Vector(900, 70)));
        Pattern apart = moved(pattern, "40", away);
        for (String name : List.of("front", "back")) {
            Piece small = apart.in("40").piece(name);
            Piece large = apart.in("42").piece(name);
            List<Motion> motions = Nesting.of(List.of(small, large), large);
            assertEquals(Motion.STAY, motions.get(1));
            Piece brought = small.moved(motions.get(0));
            Point bust = large.levelFrame("bust").origin();
            assertTrue(bust.isCloseTo(brought.levelFrame("bust").origin(), 1e-9));
            assertEquals(0, brought.grain().down().cross(large.grain().down()), 1e-9);
            assertTrue(brought.grain().down().dot(large.grain().down()) > 0);

            Piece drawnTogether = pattern.in("40").piece(name);
            assertEquals(List.of(Motion.STAY, Motion.STAY), Nesting.of(List.of(drawnTogether, large), large));
            // without a bust in one of them, the waist
            Piece waisted = small.withoutMark(small.find(Level.class, "bust").orElseThrow());
            Piece atWaist =
                    waisted.moved(Nesting.of(List.of(waisted, large), large).get(0));
            Point waist = large.levelFrame("waist").origin();
            assertTrue(waist.isCloseTo(atWaist.levelFrame("waist").origin(), 1e-9));
        }
        PieceDrawing.of(sizes(apart, "40", "42"), PLAIN).forEach(drawing -> ClearWords.of(drawing, 2.5));
    }

    @Test
    void withoutLevelsTheGrainsEndsAreBroughtTogether() {
        Pattern strips = strips(2, 10);
        List<Piece> plain = strips.nest().stream()
                .map(piece -> piece.withMarks(piece.marks().stream()
                        .filter(mark -> !(mark instanceof Level))
                        .toList()))
                .toList();
        Piece away = plain.get(0).moved(Motion.shift(new Vector(0, 900)));
        Motion motion = Nesting.of(List.of(away, plain.get(1)), plain.get(1)).get(0);
        assertTrue(motion.of(away.grain().line().start())
                .isCloseTo(plain.get(1).grain().line().start(), 1e-9));
    }

    @Test
    void aPieceThatASizeLacksIsDrawnInTheOthers() {
        Pattern lacking = new Pattern(
                pattern.card(),
                pattern.nest().stream()
                        .filter(piece ->
                                !(piece.name().equals("back") && piece.size().equals("42")))
                        .toList());
        List<PieceDrawing> drawings = PieceDrawing.of(sizes(lacking, "42", "40"), PLAIN);
        assertEquals(2, drawings.size());
        Drawn back = ClearWords.of(drawings.get(1), 2.5);
        assertEquals(List.of(), of(back, Style.NEST_1));
        assertEquals(1, of(back, Style.NEST_2).size());
        assertFalse(ClearWords.words(back).contains("sizes 42, 40"));
        assertTrue(ClearWords.words(back).contains("size 40"));
    }

    /** Laid open in several sizes: each line whole. */
    @Test
    void aNestIsLaidOpen() {
        List<PieceDrawing> drawings =
                PieceDrawing.of(sizes(pattern, "40", "42"), PLAIN.with(PrintOptions.Pieces.UNFOLDED));
        assertEquals(3, drawings.size());
        drawings.forEach(drawing -> ClearWords.of(drawing, 2.5));
        Drawn front = drawings.get(0).drawn(List.of()).drawn();
        for (int i = 0; i < 2; i++) {
            Draft draft = pattern.in(List.of("40", "42").get(i));
            List<Point> half = CuttingLine.of(draft, draft.piece("front")).outline();
            Geometry whole = ClearWords.area(
                    List.of(of(front, Style.nest().get(i)).get(0).points()));
            assertEquals(2 * ClearWords.area(List.of(half)).getArea(), whole.getArea(), 1e-6);
        }
    }
}
