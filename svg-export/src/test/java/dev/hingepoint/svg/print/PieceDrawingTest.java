package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.JtsBridge;
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
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;

/** One piece in one size, as it is drawn at a scale, laid open, or with its lines as they were. Expected places are derived; areas and distances are taken by JTS. */
class PieceDrawingTest {
    private static final PrintOptions PLAIN = PrintOptions.of(Paper.A4).forWhom("Ida", "25 November");

    @TempDir
    private java.nio.file.Path folder;

    private Pattern pattern;
    private Draft draft;

    @BeforeEach
    void readTheTunic() {
        pattern = PatternFiles.read(Drawings.write(folder, UnaryOperator.identity(), UnaryOperator.identity()));
        draft = pattern.in("40");
    }

    private Draft altered() {
        Order order =
                new Order("40", Optional.empty(), List.of(new AlterationRequest("hip blend", Map.of("hip", "42"))));
        return Fitting.of(pattern, order).after();
    }

    private static List<Stroke> of(Drawn drawn, Style... styles) {
        return drawn.strokes().stream()
                .filter(stroke -> List.of(styles).contains(stroke.style()))
                .toList();
    }

    private static Geometry lines(List<Stroke> strokes) {
        return strokes.stream()
                .map(stroke -> (Geometry) JtsBridge.lineString(Path.through(stroke.points())))
                .reduce(Geometry::union)
                .orElseThrow();
    }

    private static Geometry lines(Piece piece, Motion place) {
        List<Path> paths =
                new ArrayList<>(piece.edges().stream().map(Edge::path).toList());
        piece.marks(Dart.class).forEach(dart -> paths.addAll(dart.legs()));
        return paths.stream()
                .map(path -> (Geometry) JtsBridge.lineString(path.moved(place)))
                .reduce(Geometry::union)
                .orElseThrow();
    }

    private static Motion scaling(Scale scale) {
        return new Motion(scale.factor(), 0, 0, scale.factor(), 0, 0);
    }

    @ParameterizedTest
    @EnumSource(Scale.class)
    void aSmallPieceIsTheLargeOneTimesTheScale(Scale scale) {
        for (PieceDrawing drawing : PieceDrawing.of(List.of(draft), PLAIN.with(scale))) {
            Piece piece = draft.piece(drawing.name());
            List<Point> ring = CuttingLine.of(draft, piece).outline();
            assertEquals(1, drawing.cutting().size());
            for (int i = 0; i < ring.size(); i++) {
                Point expected = scaling(scale).of(ring.get(i));
                assertTrue(expected.isCloseTo(drawing.cutting().get(0).get(i), 1e-9));
            }
            Drawn drawn = ClearWords.of(drawing, 2.5);
            Geometry expected = lines(piece, scaling(scale));
            Geometry stitching = lines(of(drawn, Style.STITCHING, Style.DART));
            assertTrue(expected.buffer(0.03).covers(stitching));
            // the fold runs on through the allowances at its ends
            Geometry withFolds = lines(of(drawn, Style.STITCHING, Style.FOLD, Style.DART));
            assertTrue(withFolds.buffer(0.03).covers(expected));
            List<String> words = ClearWords.words(drawn);
            assertEquals(scale != Scale.FULL, words.contains(scale.words() + ", not for cutting"));
            // 4 x 250: twice the front and twice the back, however small they are drawn
            assertTrue(words.contains("hip 1000 mm round"), words.toString());
        }
    }

    /** Arrows and crosses are as large on paper at any scale. */
    @Test
    void signsKeepTheirSize() {
        for (Scale scale : Scale.values()) {
            Drawn drawn = PieceDrawing.of(List.of(draft), PLAIN.with(scale))
                    .get(0)
                    .drawn(List.of())
                    .drawn();
            Point apex = scaling(scale).of(draft.piece("front").point("bust apex"));
            List<Stroke> cross = of(drawn, Style.MARK).stream()
                    .filter(stroke -> stroke.bounds().centre().isCloseTo(apex, 1e-9))
                    .toList();
            assertEquals(10, cross.get(0).bounds().width(), 1e-9);
            assertEquals(10, cross.get(1).bounds().height(), 1e-9);
        }
    }

    @Test
    void aPieceOnTheFoldIsLaidOpen() {
        PieceDrawing half = PieceDrawing.of(List.of(draft), PLAIN).get(0);
        PieceDrawing whole = PieceDrawing.of(List.of(draft), PLAIN.with(PrintOptions.Pieces.UNFOLDED))
                .get(0);
        assertEquals(1, whole.cutting().size());
        Geometry area = ClearWords.area(whole.cutting());
        Geometry right = ClearWords.area(half.cutting());
        assertTrue(area.isValid());
        assertEquals(2 * right.getArea(), area.getArea(), 1e-6);
        List<Point> ring = whole.cutting().get(0);
        for (Point point : ring) {
            Point mirrored = new Point(-point.x(), point.y());
            assertTrue(ring.stream().anyMatch(other -> other.isCloseTo(mirrored, 1e-9)), point.toString());
        }
        assertTrue(area.buffer(1e-6).covers(right));
        // the middle is no line to cut or stitch along
        Drawn drawn = ClearWords.of(whole, 2.5);
        assertEquals(1, of(drawn, Style.CENTRE).size());
        assertEquals(0, of(drawn, Style.FOLD).size());
        assertEquals(
                2 * (draft.piece("front").edges().size() - 1),
                of(drawn, Style.STITCHING).size());
        List<String> words = ClearWords.words(drawn);
        assertTrue(words.contains("cut 1, unfolded"), words.toString());
        assertEquals(1, words.stream().filter("centre front"::equals).count());
        assertFalse(words.contains("place on fold"));
        assertEquals(1, words.stream().filter("bust apex"::equals).count());
    }

    @Test
    void bothOfAPairAreDrawn() {
        List<PieceDrawing> drawings = PieceDrawing.of(List.of(draft), PLAIN.with(PrintOptions.Pieces.UNFOLDED));
        assertEquals(
                List.of("front", "back", "back, mirrored"),
                drawings.stream().map(PieceDrawing::name).toList());
        assertEquals(
                List.of(1, 2, 2), drawings.stream().map(PieceDrawing::number).toList());
        List<Point> one = drawings.get(1).cutting().get(0);
        List<Point> other = drawings.get(2).cutting().get(0);
        double middle = draft.piece("back").outline().bounds().centre().x();
        for (int i = 0; i < one.size(); i++) {
            Point mirrored = new Point(2 * middle - one.get(i).x(), one.get(i).y());
            assertTrue(mirrored.isCloseTo(other.get(i), 1e-9));
        }
        assertTrue(ClearWords.words(ClearWords.of(drawings.get(1), 2.5)).contains("cut 1: one of the pair"));
        List<String> words = ClearWords.words(ClearWords.of(drawings.get(2), 2.5));
        assertTrue(words.contains("cut 1: the other of the pair"), words.toString());
        assertTrue(words.contains("BACK, mirrored  2 of 2"), words.toString());
    }

    /** Each cloth has its line; what is not cut as the drawing shows is said of the paper's half, and once. */
    @Test
    void theMainClothDecidesWhatIsDrawn() {
        List<Cutting> cuttings = List.of(
                new Cutting(1, Cutting.How.PAIR, Optional.of("lining")),
                new Cutting(1, Cutting.How.ON_FOLD, Optional.empty()),
                new Cutting(2, Cutting.How.ON_FOLD, Optional.of("interfacing")));
        Piece front = draft.piece("front").named("front", cuttings);
        PrintOptions unfolded = PLAIN.with(PrintOptions.Pieces.UNFOLDED);
        assertEquals(List.of(Copy.UNFOLDED), Copy.of(front, unfolded));
        assertEquals(
                List.of("cut 1 pair lining, of one half", "cut 1, unfolded", "cut 2 interfacing, unfolded"),
                Copy.UNFOLDED.cut(front));
        Piece pair = draft.piece("back")
                .named(
                        "back",
                        List.of(
                                new Cutting(2, Cutting.How.PAIR, Optional.empty()),
                                new Cutting(1, Cutting.How.SINGLE, Optional.of("lining"))));
        assertEquals(List.of(Copy.ONE_OF_PAIR, Copy.OTHER_OF_PAIR), Copy.of(pair, unfolded));
        assertEquals(List.of("cut 2: one of each pair", "cut 1 lining"), Copy.ONE_OF_PAIR.cut(pair));
        assertEquals(List.of("cut 2: the other of each pair"), Copy.OTHER_OF_PAIR.cut(pair));
        assertEquals(List.of(Copy.AS_DRAWN), Copy.of(pair, PLAIN));
    }

    /** However a piece lies and whatever its allowance: a closed, sound line, twice the area, its own mirror image. */
    @Property(seed = "2026112601", tries = 60)
    void whatIsLaidOpenIsItsOwnMirrorImage(
            @ForAll @DoubleRange(min = 30, max = 400) double width,
            @ForAll @DoubleRange(min = 40, max = 900) double height,
            @ForAll @DoubleRange(min = -180, max = 180) double turn) {
        Piece half = LetteringTest.strip("panel", width, height, Edge.Kind.FOLD, turn);
        List<Point> ring = CuttingLine.of(LetteringTest.draft(half), half).outline();
        Unfolding unfolding = Unfolding.of(half);
        List<List<Point>> rings = unfolding.rings(ring);
        assertEquals(1, rings.size());
        Geometry area = ClearWords.area(rings);
        assertTrue(area.isValid());
        assertEquals(2 * JtsBridge.polygon(ring).getArea(), area.getArea(), 1e-6);
        Motion mirror = unfolding.images().get(1);
        for (Point point : rings.get(0)) {
            assertTrue(rings.get(0).stream().anyMatch(other -> other.isCloseTo(mirror.of(point), 1e-9)));
        }
    }

    /** A quarter, on two folds square to each other, is laid open to four times its area; on two that are not, about the first alone. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 30})
    void aQuarterIsLaidOpenTwice(double lean) {
        Point corner = new Point(0, 0);
        Point low = new Point(0, 300);
        Point far = new Point(200, 0).plus(new Vector(0, lean));
        Point last = new Point(200, 300);
        Piece quarter = Piece.of(
                "quarter",
                "40",
                Optional.empty(),
                List.of(new Cutting(1, Cutting.How.ON_FOLD, Optional.empty())),
                List.of(
                        new Edge("centre front", Edge.Kind.FOLD, Path.through(low, corner)),
                        new Edge("top", Edge.Kind.FOLD, Path.through(corner, far)),
                        new Edge("side seam", Edge.Kind.SEAM, Path.through(far, last)),
                        new Edge("hem", Edge.Kind.HEM, Path.through(last, low))),
                List.of());
        Unfolding unfolding = Unfolding.of(quarter);
        int images = lean == 0 ? 4 : 2;
        assertEquals(images, unfolding.images().size());
        List<List<Point>> rings = unfolding.rings(quarter.outline().flatten(0.01));
        assertEquals(1, rings.size());
        assertEquals(images * quarter.area(), ClearWords.area(rings).getArea(), 1e-6);
        assertEquals(lean == 0, unfolding.opens(quarter.edge("top")));
    }

    /** A ring whose fold is broken by a hole: the hole is closed by its own mirror image. */
    @Test
    void aHoleInTheFoldIsLaidOpenAsAHole() {
        Piece half = LetteringTest.strip("panel", 100, 200, Edge.Kind.FOLD, 0);
        List<Point> keyhole = List.of(
                new Point(0, 0),
                new Point(100, 0),
                new Point(100, 200),
                new Point(0, 200),
                new Point(0, 120),
                new Point(20, 100),
                new Point(0, 80),
                new Point(0, 0));
        List<List<Point>> rings = Unfolding.of(half).rings(keyhole);
        assertEquals(2, rings.size());
        assertEquals(
                2 * JtsBridge.polygon(keyhole).getArea(), ClearWords.area(rings).getArea(), 1e-6);
    }

    /** A bias strip's grain would be two across each other; its fold is called centre, whatever the strip's edge is. */
    @Test
    void aBiasStripLaidOpenHasOneGrain() {
        Piece half = LetteringTest.strip("binding", 200, 40, Edge.Kind.FOLD, 0)
                .named("binding", List.of(new Cutting(1, Cutting.How.ON_FOLD, Optional.empty())))
                .withMark(new DrawnLine("grain", Path.through(new Point(100, 10), new Point(110, 20))))
                .withMark(new DrawnLine("stitch here", Path.through(new Point(0, 30), new Point(200, 30))));
        PieceDrawing whole = PieceDrawing.of(
                        List.of(LetteringTest.draft(half)), PLAIN.with(PrintOptions.Pieces.UNFOLDED))
                .get(0);
        List<Stroke> marks = of(ClearWords.of(whole, 2.5), Style.MARK);
        assertEquals(
                1,
                marks.stream()
                        .filter(stroke -> Math.abs(stroke.bounds().width() - 10) < 1e-9
                                && Math.abs(stroke.bounds().height() - 10) < 1e-9)
                        .count());
        assertEquals(
                2,
                marks.stream().filter(stroke -> stroke.bounds().width() == 200).count());
        assertEquals(
                1,
                ClearWords.words(whole.drawn(List.of()).drawn()).stream()
                        .filter("centre"::equals)
                        .count());
    }

    @Test
    void aCrookedFoldIsNotLaidOpen() {
        Piece panel = LetteringTest.strip("panel", 100, 200, Edge.Kind.FOLD, 0);
        Path crooked = Path.through(new Point(0, 200), new Point(-3, 100), new Point(0, 0));
        Piece bent = panel.with(
                panel.edges().stream()
                        .map(edge -> edge.kind() == Edge.Kind.FOLD ? edge.with(crooked) : edge)
                        .toList(),
                List.of());
        Refusal refusal = assertThrows(Refusal.class, () -> Unfolding.of(bent));
        assertTrue(refusal.getMessage().contains("a fold that is not straight"), refusal.getMessage());
        assertEquals(1, refusal.getMessage().lines().count());
    }

    @Test
    void anUnchangedPieceShowsNoOriginal() {
        PrintOptions shown = PLAIN.with(PrintOptions.Original.SHOWN);
        for (PieceDrawing drawing : PieceDrawing.of(List.of(draft), shown)) {
            Drawn drawn = drawing.drawn(List.of()).drawn();
            assertEquals(List.of(), of(drawn, Style.BEFORE));
            assertFalse(ClearWords.words(drawn).contains("as drawn"));
        }
        for (PieceDrawing drawing : PieceDrawing.of(List.of(altered()), PLAIN)) {
            assertEquals(List.of(), of(drawing.drawn(List.of()).drawn(), Style.BEFORE));
        }
    }

    /** The lines before and after lie over each other as {@link BeforeAfter} lays them: both where the paper has them. */
    @ParameterizedTest
    @EnumSource(Scale.class)
    void linesAsDrawnAreShownWhereTheyAreOthers(Scale scale) {
        Draft after = altered();
        PrintOptions shown = PLAIN.with(PrintOptions.Original.SHOWN).with(scale);
        for (PieceDrawing drawing : PieceDrawing.of(List.of(after), shown)) {
            Drawn drawn = ClearWords.of(drawing, 2.5);
            Geometry was = lines(draft.piece(drawing.name()), scaling(scale));
            Geometry is = lines(after.piece(drawing.name()), scaling(scale));
            Geometry original = lines(of(drawn, Style.BEFORE));
            assertTrue(original.getLength() > 100 * scale.factor(), "the hip was moved by some mm");
            assertTrue(was.buffer(0.03).covers(original));
            // nothing twice, and nothing left out but what would be a dot
            assertFalse(is.buffer(0.07 * scale.factor()).intersects(original));
            Geometry leftOut = was.difference(is.buffer(0.13)).difference(original.buffer(0.03));
            assertTrue(leftOut.getLength() < 1.5, leftOut.toString());
            assertTrue(ClearWords.words(drawn).contains("as drawn"));
        }
    }

    @Test
    void linesAsDrawnAreLaidOpenWithThePiece() {
        PrintOptions shown = PLAIN.with(PrintOptions.Original.SHOWN).with(PrintOptions.Pieces.UNFOLDED);
        PieceDrawing front = PieceDrawing.of(List.of(altered()), shown).get(0);
        List<Stroke> original = of(ClearWords.of(front, 2.5), Style.BEFORE);
        Geometry all = lines(original);
        Geometry mirrored = lines(original.stream()
                .map(stroke -> stroke.moved(Motion.stretch(new Point(0, 0), new Vector(1, 0), -1)))
                .toList());
        assertTrue(all.buffer(0.01).covers(mirrored));
        assertEquals(0, original.size() % 2);
    }

    /** Words thrown on cloth are two to three times as large; the piece's name more. */
    @Test
    void wordsForAProjectorAreLarge() {
        PrintOptions projected = PLAIN.on(Paper.named("projector"));
        for (PieceDrawing drawing : PieceDrawing.of(List.of(draft), projected)) {
            Drawn drawn = ClearWords.of(drawing, 8);
            Text name = drawn.texts().stream()
                    .filter(text -> text.words().startsWith(drawing.name().toUpperCase(Locale.ROOT)))
                    .findFirst()
                    .orElseThrow();
            assertEquals(21, name.size(), 1e-9);
        }
    }

    /** Small pieces and large, at every scale, laid open or not, on paper and thrown on cloth. */
    @ParameterizedTest
    @EnumSource(Scale.class)
    void wordsAreClearOfLines(Scale scale) {
        List<Draft> drafts = new ArrayList<>(List.of(draft, altered()));
        IntStream.of(12, 30, 70)
                .forEach(width -> drafts.add(
                        LetteringTest.draft(LetteringTest.strip("tab", width, 3 * width, Edge.Kind.FOLD, 20))));
        for (Draft each : drafts) {
            for (PrintOptions.Pieces pieces : PrintOptions.Pieces.values()) {
                PrintOptions options = PLAIN.with(scale).with(pieces).with(PrintOptions.Original.SHOWN);
                PieceDrawing.of(List.of(each), options).forEach(drawing -> ClearWords.of(drawing, 2.5));
            }
        }
        if (scale == Scale.FULL) {
            PrintOptions projected = PLAIN.on(Paper.named("projector"));
            drafts.forEach(
                    each -> PieceDrawing.of(List.of(each), projected).forEach(drawing -> ClearWords.of(drawing, 5)));
        }
    }

    /** Source: common practice: the fold of the cloth is not cut; the cutting line ends where it meets it. */
    @Test
    void theFoldIsNoLineToCut() {
        Drawn drawn =
                PieceDrawing.of(List.of(draft), PLAIN).get(0).drawn(List.of()).drawn();
        Path fold = draft.piece("front").edge("centre front").path();
        List<Stroke> cut = of(drawn, Style.CUTTING);
        assertEquals(1, cut.size());
        List<Point> points = cut.get(0).points();
        for (int i = 1; i < points.size(); i++) {
            Point middle = points.get(i - 1).midpoint(points.get(i));
            assertTrue(Math.abs(middle.x() - fold.start().x()) > 0.01, middle.toString());
        }
        Box line = of(drawn, Style.FOLD).get(0).bounds();
        assertEquals(points.get(0).y(), points.get(0).y() < 500 ? line.top() : line.bottom(), 1e-9);
        assertEquals(0, line.width(), 1e-9);
    }
}
