package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Cutting;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** However small a piece is, its name is on it, or beside it with a leader line to it; and no word is lost. */
class LetteringTest {
    static Piece strip(String name, double width, double height, Edge.Kind left, double allowanceTurn) {
        Motion turn = Motion.turn(new Point(0, 0), StrictMath.toRadians(allowanceTurn));
        List<Point> corners =
                List.of(new Point(0, 0), new Point(width, 0), new Point(width, height), new Point(0, height)).stream()
                        .map(turn::of)
                        .toList();
        List<Edge> edges = new ArrayList<>();
        String[] names = {"top", "right", "bottom", "left"};
        for (int i = 0; i < 4; i++) {
            edges.add(new Edge(
                    names[i], i == 3 ? left : Edge.Kind.SEAM, Path.through(corners.get(i), corners.get((i + 1) % 4))));
        }
        Point middle = turn.of(new Point(width / 2, height / 2));
        Vector up = new Vector(0, -Math.min(4, height / 4));
        List<Mark> marks = List.of(
                new Grain(new Line(middle.plus(up), middle.minus(up))),
                new Level(
                        "button",
                        Path.through(turn.of(new Point(0, height / 2)), turn.of(new Point(width, height / 2)))),
                new MarkedPoint("button place", middle, 3));
        return Piece.of(
                name,
                "40",
                Optional.empty(),
                List.of(new Cutting(2, Cutting.How.SINGLE, Optional.of("interfacing"))),
                edges,
                marks);
    }

    static Draft draft(Piece... pieces) {
        return new Pattern(Card.of("Test tunic", "40", List.of()), List.of(pieces)).in("40");
    }

    private static PieceDrawing drawing(Piece piece) {
        PrintOptions options = PrintOptions.of(Paper.A4).forWhom("Ida", "25 November");
        return PieceDrawing.of(List.of(draft(piece)), options).get(0);
    }

    private static PieceDrawing.Result drawn(Piece piece) {
        return drawing(piece).drawn(List.of());
    }

    /** Width and height as sewn, in mm, and how far it lies turned from its grain: strips upright, level and on the bias, tabs, a loop. */
    @ParameterizedTest
    @CsvSource({
        "10, 500, 0",
        "500, 10, 0",
        "10, 300, 45",
        "10, 60, 0",
        "25, 25, 0",
        "4, 80, 0",
        "60, 30, 0",
        "1, 12, 0",
        "40, 200, 30",
        "120, 150, 0"
    })
    void everyPieceHasItsNameAndLosesNoWord(double width, double height, double turn) {
        for (Edge.Kind left : new Edge.Kind[] {Edge.Kind.SEAM, Edge.Kind.FOLD, Edge.Kind.BOUND}) {
            PieceDrawing drawing = drawing(strip("tab", width, height, left, turn));
            PieceDrawing.Result result = drawing.drawn(List.of());
            Drawn drawn = result.drawn();
            Set<String> words = drawn.texts().stream().map(Text::words).collect(Collectors.toSet());
            String all = String.join(" ", words);
            assertTrue(all.contains("TAB  1 of 1"), all);
            assertTrue(all.contains("interfacing"), all);
            assertTrue(words.stream().anyMatch(word -> word.startsWith("button ") && word.endsWith("round")), all);
            assertTrue(words.contains("button place"), all);
            assertEquals(left == Edge.Kind.FOLD, words.contains("place on fold"), all);

            Polygon cut = JtsBridge.polygon(drawing.cutting().get(0));
            List<Polygon> rooms = drawn.texts().stream().map(ClearWords::room).toList();
            boolean isNamed = false;
            for (int i = 0; i < rooms.size(); i++) {
                String word = drawn.texts().get(i).words();
                assertTrue(drawn.texts().get(i).size() >= 2.5, word + " is too small to read");
                boolean isOn = cut.contains(rooms.get(i));
                assertTrue(isOn || cut.disjoint(rooms.get(i)), word + " lies across the cutting line");
                isNamed |= isOn && word.contains("TAB");
                for (Stroke stroke : drawn.strokes()) {
                    assertFalse(
                            rooms.get(i).intersects(JtsBridge.lineString(Path.through(stroke.points()))),
                            word + " on a line: " + stroke + drawn.texts().get(i));
                }
                for (int k = 0; k < i; k++) {
                    assertFalse(rooms.get(i).intersects(rooms.get(k)), word + " on another word");
                }
            }
            assertEquals(isNamed, result.isNamed());
            // what stands beside it is led to it
            boolean isAllOn = rooms.stream().allMatch(cut::contains);
            List<Stroke> leaders = drawn.strokes().stream()
                    .filter(stroke -> stroke.style() == Style.LEADER)
                    .toList();
            assertEquals(isAllOn, leaders.isEmpty());
            for (Stroke leader : leaders) {
                Geometry line = JtsBridge.lineString(Path.through(leader.points()));
                assertTrue(line.intersects(cut) && !cut.contains(line));
            }
        }
    }

    /** A number stays whole, and goes on the next line with all of it. */
    @Test
    void aLongLineIsBrokenWhereItsSenseIs() {
        List<String> lines = List.of(
                "BACK NECKLINE FACING  5 of 6", "  15 mm: shoulder, armhole, side seam", "size 40", "a".repeat(40));
        assertEquals(
                List.of(List.of(
                        "BACK NECKLINE FACING",
                        "  5 of 6",
                        "  15 mm: shoulder, armhole,",
                        "  side seam",
                        "size 40",
                        "a".repeat(40))),
                Block.wrapped(lines, 26).columns());
    }

    /** Where the paper has no room for the name, a person is told to write it on. */
    @Test
    void aNameThatStandsOnlyBesideIsNoted() {
        Draft draft = draft(strip("loop", 1, 12, Edge.Kind.BOUND, 0), strip("belt", 60, 700, Edge.Kind.SEAM, 0));
        Printed printed = Printing.print(draft, PrintOptions.of(Paper.A4));
        List<Boolean> named = List.of(
                drawn(draft.piece("loop")).isNamed(), drawn(draft.piece("belt")).isNamed());
        assertEquals(named.stream().filter(is -> !is).count(), printed.notes().size());
        assertTrue(named.get(1));
        printed.notes().forEach(note -> assertTrue(note.contains("loop"), note));
    }

    /** Words keep off the strips where pages are joined, wherever a page has room for them. */
    @Test
    void wordsKeepOffTheJoints() {
        Piece wide = strip("panel", 500, 900, Edge.Kind.FOLD, 0);
        PrintOptions options = PrintOptions.of(Paper.A4);
        Printed printed = Printing.print(draft(wide), options);
        Box piece = printed.pieces().get(0).box();
        List<Text> onPiece = printed.sheet().texts().stream()
                .filter(text -> piece.distanceTo(text.at()) == 0)
                .toList();
        assertTrue(onPiece.size() > 8);
        for (Text text : onPiece) {
            Box box = text.bounds();
            assertEquals(
                    Math.floor((box.left() - options.overlap()) / options.stepAcross()),
                    Math.floor(box.right() / options.stepAcross()),
                    text.words());
            assertEquals(
                    Math.floor((box.top() - options.overlap()) / options.stepDown()),
                    Math.floor(box.bottom() / options.stepDown()),
                    text.words());
        }
    }

    /** What is small enough for a page is not cut in two by a joint where that costs no page. */
    @ParameterizedTest
    @CsvSource({"300, 400, 120, 60", "300, 700, 150, 100", "250, 500, 60, 200"})
    void aSmallPieceLiesWholeOnAPage(double width, double height, double smallWidth, double smallHeight) {
        PrintOptions options = PrintOptions.of(Paper.A4);
        Printed printed = Printing.print(
                draft(
                        strip("panel", width, height, Edge.Kind.FOLD, 0),
                        strip("flap", smallWidth, smallHeight, Edge.Kind.SEAM, 0)),
                options);
        Box flap = printed.pieces().get(1).box();
        double left = Math.floor(flap.left() / options.stepAcross()) * options.stepAcross();
        double top = Math.floor(flap.top() / options.stepDown()) * options.stepDown();
        assertTrue(flap.right() <= left + options.printableWidth() + 1e-9, flap.toString());
        assertTrue(flap.bottom() <= top + options.printableHeight() + 1e-9, flap.toString());
    }
}
