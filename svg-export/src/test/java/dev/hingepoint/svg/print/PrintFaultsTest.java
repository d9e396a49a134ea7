package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.Refusal;
import dev.hingepoint.allowance.CuttingLine;
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
import dev.hingepoint.pattern.Lays;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a print must keep on unusual paper and with unusual pieces. Expected values are derived. */
class PrintFaultsTest {
    private static final Draft DRESS = PatternFiles.read(java.nio.file.Path.of("../samples/patterns/larkfield.yaml"))
            .in("40");

    private static Draft draft(double allowance, double... corners) {
        List<Edge> edges = new ArrayList<>();
        int count = corners.length / 2;
        for (int i = 0; i < count; i++) {
            int next = (i + 1) % count;
            Point from = new Point(corners[2 * i], corners[2 * i + 1]);
            Point to = new Point(corners[2 * next], corners[2 * next + 1]);
            edges.add(new Edge("edge " + i, Edge.Kind.SEAM, Path.through(from, to)));
        }
        Grain grain = new Grain(new Line(new Point(10, 10), new Point(10, 30)));
        Piece piece = Piece.of(
                "piece",
                "40",
                Optional.empty(),
                List.of(new Cutting(1, Cutting.How.SINGLE, Optional.empty())),
                edges,
                List.of(grain));
        Card card = new Card(
                "Test",
                "40",
                Optional.empty(),
                0,
                0,
                BodyChart.NONE,
                List.of(),
                new Allowances(Map.of("default", new Length(allowance))),
                List.of(),
                Map.of(),
                new Lays(Map.of()),
                Optional.empty());
        return new Pattern(card, List.of(piece)).in("40");
    }

    /** A step of 5 mm in an edge with an allowance of 15 mm: the parallels cross, and a loop is taken away. */
    private static Draft step() {
        return draft(15, 0, 0, 300, 0, 300, 200, 295, 200, 295, 400, 0, 400);
    }

    /** Source: derived: the same piece has the same line, point for point. */
    @Test
    void aCuttingLineWithoutItsLoopsBeginsAtTheSamePointEveryTime() {
        Draft draft = step();
        Set<List<Point>> outlines = new HashSet<>();
        for (int i = 0; i < 50; i++) {
            outlines.add(CuttingLine.of(draft, draft.pieces().get(0)).outline());
        }
        assertEquals(1, outlines.size());
    }

    /** Source: the rule that the same input gives the same bytes. */
    @Test
    void theSamePrintTwiceInOneProcessIsTheSameBytes() {
        PrintOptions options = PrintOptions.of(Paper.A4);
        byte[] first = Printing.pdf(Printing.print(step(), options));
        for (int i = 0; i < 20; i++) {
            assertArrayEquals(first, Printing.pdf(Printing.print(step(), options)));
        }
    }

    /** Source: derived: what is read takes one leaf more where the map is too small for its square. */
    @ParameterizedTest
    @ValueSource(strings = {"roll 200 mm", "roll 210 mm", "roll 220 mm", "210x2970"})
    void theDressIsPrintedOnNarrowPaper(String paper) {
        assertDoesNotThrow(() -> Printing.print(DRESS, PrintOptions.of(Paper.named(paper))));
    }

    /** Source: derived: a stroke or a word beyond the paper is not printed. */
    @ParameterizedTest
    @ValueSource(strings = {"roll 250 mm", "roll 300 mm"})
    void everyMarkOfAJointLiesOnTheRoll(String paper) {
        Printed printed = Printing.print(DRESS, PrintOptions.of(Paper.named(paper)));
        assertTrue(printed.pages().size() > 1);
        for (Page page : printed.pages()) {
            Box paperBox = new Box(0, 0, page.paper().width(), page.paper().height());
            page.frame().strokes().forEach(stroke -> assertEquals(paperBox, paperBox.union(stroke.bounds())));
            page.frame().texts().forEach(text -> assertEquals(paperBox, paperBox.union(text.bounds()), text.words()));
        }
    }

    /** Source: derived: a square that lies on two pages cannot be measured. */
    @Test
    void theSquaresLieWholeOnOnePage() {
        Draft square = draft(10, 0, 0, 1200, 0, 1200, 180, 0, 180);
        for (String paper : List.of("2000x260", "260x2000", "210x2970", "1500x230")) {
            Printed printed = Printing.print(square, PrintOptions.of(Paper.named(paper)));
            assertTrue(printed.toMeasure().isPresent(), paper);
        }
    }

    /** Source: derived: there cannot be fewer pages than the least. */
    @Test
    void noFewerPagesThanTheLeast() {
        Printed printed = Printing.print(draft(0, 0, 0, 3000, 0, 3000, 2500, 0, 2500), PrintOptions.of(Paper.A4));
        assertTrue(
                printed.pages().size() >= printed.leastPages(),
                printed.pages().size() + " pages, least " + printed.leastPages());
    }

    /** Source: derived: 18 m are wider than 60 pages; and no cloth is 10 000 000 km wide. Either is refused, not a mistake of ours. */
    @Test
    void whatIsTooLargeIsRefused() {
        PrintOptions a4 = PrintOptions.of(Paper.A4);
        assertThrows(Refusal.class, () -> Printing.print(draft(0, 0, 0, 18000, 0, 18000, 40, 0, 40), a4));
        assertThrows(
                Refusal.class,
                () -> Printing.print(DRESS, a4.with(ClothWidths.USUAL.with(ClothWidths.MAIN, new Length(1e13)))));
    }

    /** Source: derived: words that are read lie within what the printer reaches, on the smallest paper that is taken. */
    @Test
    void theFirstLeafHoldsItsWordsOnTheSmallestPaper() {
        Printed printed = Printing.print(DRESS, PrintOptions.of(Paper.named("180x260")));
        for (Page page : printed.leaves()) {
            Box room = page.printable().grownBy(1e-6);
            page.drawn().texts().forEach(text -> assertEquals(room, room.union(text.bounds()), text.words()));
        }
    }

    /** Source: derived: 45 x 75 mm fits on a page; its words beside it are broken into lines that do as well. */
    @Test
    void aSmallPieceWithManyEdgesIsStillOnOnePage() {
        double[] corners = new double[40];
        for (int i = 0; i < 20; i++) {
            double turn = 2 * StrictMath.PI * i / 20;
            corners[2 * i] = 20 + 20 * StrictMath.cos(turn);
            corners[2 * i + 1] = 35 + 35 * StrictMath.sin(turn);
        }
        Printed printed = Printing.print(draft(0, corners), PrintOptions.of(Paper.A4));
        assertEquals(1, printed.pages().size());
    }

    @Test
    void whatTheFontLacksIsTold() {
        PrintOptions options = PrintOptions.of(Paper.A4).forWhom("\u674E", "");
        assertTrue(Printing.print(step(), options).notes().stream().anyMatch(note -> note.contains("\u674E")));
    }

    /** Source: common practice: paper that is cut out has no hole in it. */
    @Test
    void aPageInTheMiddleOfAPieceIsThere() {
        Printed printed = Printing.print(draft(0, 0, 0, 900, 0, 900, 1200, 0, 1200), PrintOptions.of(Paper.A4));
        List<String> names = printed.pages().stream().map(Page::name).toList();
        assertTrue(names.containsAll(List.of("1.1", "2.2", "3.3", "2.3", "3.2")), names.toString());
    }
}
