package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Box;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.Drawings;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Clipping;
import dev.hingepoint.svg.page.Layer;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.SvgPage;
import dev.hingepoint.svg.page.Text;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Rolls, projections, small prints: what is particular to each. Lengths are derived from what each is for. */
class KindsOfPrintTest {
    @TempDir
    private Path folder;

    private Draft draft;

    @BeforeEach
    void readTheTunic() {
        draft = PatternFiles.read(Drawings.write(folder, UnaryOperator.identity(), UnaryOperator.identity()))
                .in("40");
    }

    @Test
    void aRollIsOnePageAsLongAsItNeeds() {
        Printed printed = Printing.print(draft, PrintOptions.of(Paper.named("roll 914 mm")));
        assertEquals(1, printed.all().size());
        Page page = printed.pages().get(0);
        assertEquals(914, page.paper().width(), 1e-9);
        assertEquals(page.paper().height() - 10, page.drawn().bounds().bottom(), 1e-6);
        assertTrue(page.paper().height() < 1500, "both pieces lie side by side");
        assertTrue(SvgPage.write(page).contains("@page{size:914mm "));
    }

    /** Wider than the roll: two strips, side by side, joined as pages are. */
    @Test
    void aPieceWiderThanTheRollIsTaped() {
        Printed printed = Printing.print(draft, PrintOptions.of(Paper.named("roll 260 mm")));
        assertTrue(printed.pages().size() > 1);
        assertTrue(printed.pages().stream().allMatch(page -> page.paper().width() == 260));
    }

    @ParameterizedTest
    @CsvSource({"MILLIMETRE, 10, 10", "CENTIMETRE, 10, 10", "INCH, 25.4, 4"})
    void aProjectionLiesOnAGridOfWholeCentimetresOrInches(Unit unit, double step, int wide) {
        Printed printed =
                Printing.print(draft, PrintOptions.of(Paper.named("projector")).with(unit));
        assertEquals(1, printed.all().size());
        Page page = printed.all().get(0);
        assertTrue(page.weight() > 2, "lines are wide");
        List<Double> upright = upright(page, Style.GRID, Style.GRID_WIDE);
        for (int i = 1; i < upright.size(); i++) {
            assertEquals(step, upright.get(i) - upright.get(i - 1), 1e-9);
        }
        List<Double> wider = upright(page, Style.GRID_WIDE);
        assertEquals(wide * step, wider.get(1) - wider.get(0), 1e-9);
        Box used = page.drawn().bounds();
        assertEquals(page.paper().width() - 10, used.right(), 1e-6);
        String words = page.drawn().texts().stream().map(Text::words).collect(Collectors.joining(" "));
        assertTrue(words.contains("Measure on the cloth, across and down, before you cut"), words);
    }

    private static List<Double> upright(Page page, Style... styles) {
        return page.drawn().strokes().stream()
                .filter(stroke -> List.of(styles).contains(stroke.style()))
                .map(Stroke::bounds)
                .filter(box -> box.width() == 0)
                .map(Box::left)
                .distinct()
                .sorted()
                .toList();
    }

    @Test
    void theGridLeavesWordsFree() {
        Page page = Printing.print(draft, PrintOptions.of(Paper.named("projector")))
                .all()
                .get(0);
        List<Box> words = page.drawn().texts().stream()
                .map(text -> text.bounds().grownBy(-0.01))
                .toList();
        page.drawn().strokes().stream()
                .filter(stroke -> stroke.style().layer() == Layer.GRID)
                .forEach(line -> words.forEach(
                        box -> assertTrue(Clipping.clipped(line, box).isEmpty(), line.points() + " in " + box)));
    }

    /** Derived: 25 mm on paper are 50 mm of a piece at half size, 100 mm at a quarter. */
    @ParameterizedTest
    @EnumSource(
            value = Scale.class,
            names = {"HALF", "QUARTER"})
    void aSmallPrintSaysSoOnEveryPageAndHasASquareOfItsOwn(Scale scale) {
        Printed printed = Printing.print(draft, PrintOptions.of(Paper.A4).with(scale));
        String whole = Math.round(25 / scale.factor()) + " mm of the pieces";
        for (Page page : printed.pages()) {
            String words = page.frame().texts().stream().map(Text::words).collect(Collectors.joining(" "));
            assertTrue(words.contains(scale.words() + ", not for cutting"), words);
            assertTrue(words.contains(whole), words);
            Box square = page.frame().strokes().stream()
                    .filter(stroke -> stroke.style() == Style.SQUARE)
                    .map(Stroke::bounds)
                    .findFirst()
                    .orElseThrow();
            assertEquals(25, square.width(), 1e-9);
            assertEquals(25, square.height(), 1e-9);
            Box printable = page.printable();
            assertEquals(printable, printable.union(square));
            double band = square.top();
            page.drawn().strokes().forEach(stroke -> assertTrue(stroke.bounds().bottom() < band));
        }
        assertTrue(printed.pages().size()
                < Printing.print(draft, PrintOptions.of(Paper.A4)).pages().size());
    }

    /** Upright or lying, whichever needs less paper. */
    @ParameterizedTest
    @CsvSource({"a4", "a3", "letter", "200x300", "300x200", "260x420"})
    void thePaperIsTurnedWhereThatSavesPages(String name) {
        Paper paper = Paper.named(name);
        Printed best = Printing.print(draft, PrintOptions.of(paper));
        Printed turned = Printing.print(draft, PrintOptions.of(paper.turned()));
        assertEquals(best.all().size(), turned.all().size());
        assertTrue(best.pages().size() >= best.leastPages());
    }
}
