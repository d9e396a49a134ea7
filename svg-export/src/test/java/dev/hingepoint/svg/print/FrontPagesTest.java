package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.curve.Box;
import dev.hingepoint.fit.Body;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.Drawings;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read before anything is cut. What it must say is common practice, no source; the lengths of the gauge are derived. */
class FrontPagesTest {
    @TempDir
    private Path folder;

    private Draft draft(UnaryOperator<String> card) {
        return PatternFiles.read(Drawings.write(folder, UnaryOperator.identity(), card))
                .in("40");
    }

    private Draft draft() {
        return draft(UnaryOperator.identity());
    }

    private static String words(List<Page> pages) {
        return pages.stream()
                .flatMap(page -> page.drawn().texts().stream())
                .map(Text::words)
                .collect(Collectors.joining(" "));
    }

    @Test
    void theyTellAllThatASewistNeedsToKnow() {
        Pattern pattern = draft().pattern();
        Order order = new Order(
                "40", Optional.empty(), List.of(new AlterationRequest("sway back", Map.of("wedge", "12 mm"))));
        Body ida = Body.of(Map.of("full bust", new Length(820), "waist", new Length(720), "hip", new Length(920)));
        Printed printed = Printing.print(
                Fitting.of(pattern, order).after(),
                PrintOptions.of(Paper.A4).forWhom("Ida", "25 November").forBody(ida));
        String words = words(printed.leaves());
        for (String said : List.of(
                "Test tunic, size 40",
                "for Ida, 25 November",
                "Print this page alone first, at 100 %",
                "measure both squares",
                "Body, and the finished garment",
                "bust girth 820",
                "waist girth 720",
                "hip girth 920",
                "back: Fold out 12 mm at centre back",
                "1 front: cut 1 on fold",
                "2 back: cut 1 pair",
                "main cloth, 140 cm wide: ",
                "10 mm: every seam not named here",
                "30 mm: hem",
                "15 mm: centre back",
                "Wash and dry the cloth",
                "Sew a toile",
                "trim",
                "glue",
                "1.1")) {
            assertTrue(words.contains(said), said + " is not in " + words);
        }
    }

    /** As its label says "2 of 2", the list of pieces and the map say 2 of both of a pair. */
    @Test
    void aPieceHasOneNumberInTheListAndOnTheMap() {
        Printed printed = Printing.print(draft(), PrintOptions.of(Paper.A4).with(PrintOptions.Pieces.UNFOLDED));
        String words = words(printed.leaves());
        assertTrue(words.contains("1 front: cut 1, unfolded 2 back: cut 1 pair, both drawn"), words);
        String map = Printing.contents(printed).get("map.svg");
        assertTrue(map.contains("1 front, 2 back, 2 back, mirrored"), map);
        assertFalse(map.contains(">3<"), map);
    }

    @Test
    void easeIsWhatTheGarmentHasMoreThanTheBody() {
        Draft draft = draft();
        double girth = draft.girth("hip");
        String words =
                words(Printing.print(draft, PrintOptions.of(Paper.A4).forBody(Body.of(Map.of("hip", new Length(1000)))))
                        .leaves());
        assertTrue(words.contains("hip girth 1000 " + Math.round(girth) + " " + Math.round(girth - 1000)), words);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a4", "letter", "a3", "legal", "tabloid", "320x450", "200x300", "a2", "roll 914 mm"})
    void wordsLieOnThePageAndOnNoOthers(String paper) {
        Printed printed = Printing.print(draft(), PrintOptions.of(Paper.named(paper)));
        for (Page page : printed.all()) {
            List<Text> texts = page.drawn().texts();
            Box room = page.printable().grownBy(0.01);
            for (int i = 0; i < texts.size(); i++) {
                if (page.row() == 0) {
                    assertEquals(
                            room,
                            room.union(texts.get(i).bounds()),
                            texts.get(i).words());
                }
                for (int k = 0; k < i; k++) {
                    assertFalse(
                            ClearWords.room(texts.get(i)).overlaps(ClearWords.room(texts.get(k)))
                                    || ClearWords.room(texts.get(i)).contains(ClearWords.room(texts.get(k))),
                            texts.get(i).words() + " lies on " + texts.get(k).words());
                }
            }
        }
    }

    /** Derived: stretch = (stretched - rest) / rest, so 100 mm of a cloth of 40 % reach 140 mm. */
    @ParameterizedTest
    @CsvSource({"40 %, 20 %, 100, 140, 120", "60 %, 0 %, 100, 160, 100", "150 %, 100 %, 50, 125, 100"})
    void theStretchGaugeIsAsLongAsTheClothMustReach(
            String across, String down, double held, double farAcross, double farDown) {
        Draft draft = draft(card -> card.replace(
                "stretch: {across: 0 %, down: 5 %}", "stretch: {across: " + across + ", down: " + down + "}"));
        Printed printed = Printing.print(draft, PrintOptions.of(Paper.A4));
        String words = words(printed.leaves());
        assertTrue(words.contains("hold " + Math.round(held) + " mm of the fold"), words);
        assertTrue(words.contains("toile in cloth of the same stretch"), words);
        Text title = printed.leaves().get(0).drawn().texts().stream()
                .filter(text -> text.words().startsWith("Stretch gauge"))
                .findFirst()
                .orElseThrow();
        List<Double> ticks = printed.leaves().get(0).drawn().strokes().stream()
                .filter(stroke -> stroke.style() == Style.RULE)
                .map(Stroke::bounds)
                .filter(box -> box.width() == 0 && box.top() > title.at().y())
                .map(Box::left)
                .distinct()
                .sorted()
                .toList();
        double first = ticks.get(0);
        for (double far : new double[] {held, farAcross, farDown}) {
            assertTrue(ticks.stream().anyMatch(tick -> Math.abs(tick - first - far) < 1e-9), far + " in " + ticks);
        }
    }

    @Test
    void clothThatNeedsNoStretchHasNoGauge() {
        Draft draft = draft(card -> card.replace("down: 5 %", "down: 0 %"));
        assertFalse(
                words(Printing.print(draft, PrintOptions.of(Paper.A4)).leaves()).contains("gauge"));
    }

    /** A copy shop's sheet has room for all there is to read; paper is not wasted on a page of its own. A long strip has the area, and is too narrow for it. */
    @ParameterizedTest
    @CsvSource({"a4, true", "a3, true", "200x1000, true", "a2, false", "a0, false", "roll 914 mm, false"})
    void onLargePaperTheyLieBesideThePieces(String paper, boolean isApart) {
        Printed printed = Printing.print(draft(), PrintOptions.of(Paper.named(paper)));
        assertEquals(isApart, !printed.leaves().isEmpty());
        assertEquals(
                2,
                printed.toMeasure().orElseThrow().drawn().strokes().stream()
                        .filter(stroke -> stroke.style() == Style.SQUARE)
                        .count());
    }

    /** Derived: on a strip so long and narrow, the names of the pages are too small for the map in the square; what lies on the sheet has its places by then. */
    @Test
    void aLongRollHoldsItsMapAllTheSame() {
        List<Piece> drawn = draft().pieces();
        List<Piece> many = IntStream.range(0, 12)
                .mapToObj(i ->
                        drawn.get(i % 2).named("piece " + i, drawn.get(i % 2).cuttings()))
                .toList();
        Draft draft = new Pattern(Card.of("Many", "", List.of()), many).in("40");
        Printed printed = Printing.print(draft, PrintOptions.of(Paper.named("roll 340 mm")));
        assertTrue(printed.sheet().bounds().height() > 3500, "too short to tell");
        assertTrue(printed.leaves().isEmpty());
        assertEquals(12, printed.pieces().size());
    }

    @Test
    void aCalibratedPrintSaysSoOnEveryPage() {
        Printed printed = Printing.print(draft(), PrintOptions.of(Paper.A4).with(new Calibration(98.5, 99)));
        assertTrue(words(printed.leaves()).contains("98.5 mm x 99 mm"));
        for (Page page : printed.pages()) {
            String said = page.frame().texts().stream().map(Text::words).collect(Collectors.joining(" "));
            assertTrue(said.contains("measured 98.5 mm x 99 mm"), page.name() + ": " + said);
        }
        Box square = printed.leaves().get(0).drawn().strokes().stream()
                .filter(stroke -> stroke.style() == Style.SQUARE)
                .map(Stroke::bounds)
                .findFirst()
                .orElseThrow();
        assertEquals(100, square.width() * 0.985, 1e-9);
        assertEquals(100, square.height() * 0.99, 1e-9);
    }

    @Test
    void lengthsToMeasureByAreInInchesWhereTheyAreAskedFor() {
        String words = words(
                Printing.print(draft(), PrintOptions.of(Paper.named("letter")).with(Unit.INCH))
                        .leaves());
        assertTrue(words.matches(".*in inches.*hip girth [0-9]+[0-9 /]* [0-9]+[0-9 /]*.*"), words);
    }

    /** What a person trims by must be what the pieces say: a bound neckline has no allowance. */
    @Test
    void theFirstPageAndThePiecesTellTheSameAllowances() {
        Draft bound = PatternFiles.read(Drawings.write(
                        folder,
                        drawing ->
                                drawing.replace("data-edge=\"neckline\"", "data-edge=\"neckline\" data-kind=\"bound\""),
                        card -> card.replace("hem: 30 mm", "hem: 30 mm, neckline: 7 mm")))
                .in("40");
        String words = words(Printing.print(bound, PrintOptions.of(Paper.A4)).leaves());
        assertFalse(words.contains("7 mm"), words);
        assertTrue(words.contains("none: neckline"), words);
    }

    /** A label tells what was done to its own piece. */
    @Test
    void aLabelTellsNoAlterationOfAnotherPiece() {
        Order order = new Order(
                "40", Optional.empty(), List.of(new AlterationRequest("sway back", Map.of("wedge", "12 mm"))));
        Draft after = Fitting.of(draft().pattern(), order).after();
        for (PieceDrawing piece : PieceDrawing.of(List.of(after), PrintOptions.of(Paper.A4))) {
            boolean says = ClearWords.words(piece.drawn(List.of()).drawn()).contains("sway back: wedge 12 mm");
            assertEquals(piece.name().equals("back"), says, piece.name());
        }
    }
}
