package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Box;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.svg.file.Drawings;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.PdfPages;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.SvgPage;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The test squares of the first page, measured in what independent programs make of it: librsvg, poppler, and a browser's print read by poppler. */
class TrueScaleTest {
    @TempDir
    private Path folder;

    private Draft draft;

    @BeforeEach
    void readTheTunic() {
        Path card = Drawings.write(folder, UnaryOperator.identity(), UnaryOperator.identity());
        draft = PatternFiles.read(card).in("40");
    }

    private Page first(String paper) {
        return Printing.print(draft, PrintOptions.of(Paper.named(paper))).all().get(0);
    }

    private Path written(Page page) throws Exception {
        return Files.writeString(folder.resolve("first.svg"), SvgPage.write(page));
    }

    @Test
    void librsvgDrawsTheSquaresTrueToScale() throws Exception {
        Renderers.need("rsvg-convert");
        Page page = first("a4");
        assertSquares(page, Renderers.drawnByLibrsvg(written(page)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a4", "letter"})
    void aBrowserPrintsOnePageTrueToScale(String paper) throws Exception {
        Renderers.need("chromium", "pdftoppm", "pdfinfo");
        Page page = first(paper);
        Path pdf = Renderers.printedByChromium(written(page));
        String info = Renderers.run("pdfinfo", pdf.toString());
        assertTrue(info.matches("(?s).*Pages:\\s+1\\n.*"), info);
        assertSquares(page, Renderers.drawnByPoppler(pdf));
    }

    private Path pdf(Page page) throws Exception {
        return Files.write(folder.resolve("pages.pdf"), PdfPages.write(List.of(page), "test"));
    }

    /** ISO 216 and ANSI Y14.1, in points of 1/72 in. */
    @ParameterizedTest
    @CsvSource({"a4, 595.276 x 841.89", "letter, 612 x 792"})
    void popplerDrawsThePdfTrueToScale(String paper, String size) throws Exception {
        Renderers.need("pdftoppm", "pdfinfo");
        Page page = first(paper);
        Path pdf = pdf(page);
        String info = Renderers.run("pdfinfo", pdf.toString());
        assertTrue(info.contains(size + " pts"), info);
        assertSquares(page, Renderers.drawnByPoppler(pdf));
    }

    /** What a browser prints of a page's SVG is what poppler draws of the PDF, within 1/96 in: to that, a browser rounds the paper. */
    @ParameterizedTest
    @ValueSource(strings = {"a4", "letter"})
    void aBrowserAndPopplerAgree(String paper) throws Exception {
        Renderers.need("chromium", "pdftoppm");
        List<Page> pages =
                Printing.print(draft, PrintOptions.of(Paper.named(paper))).all();
        for (Page all : List.of(pages.get(0), pages.get(pages.size() / 2))) {
            // a browser sets words in a font of its own where it has not ours
            Page page = new Page(
                    all.row(),
                    all.column(),
                    all.paper(),
                    all.margin(),
                    all.weight(),
                    lines(all.drawn()),
                    lines(all.frame()));
            BufferedImage ours = Renderers.drawnByPoppler(pdf(page));
            BufferedImage browsers = Renderers.drawnByPoppler(Renderers.printedByChromium(written(page)));
            assertTrue(Renderers.inkBeyond(ours, browsers) < 0.001, "a line that a browser does not print");
            assertTrue(Renderers.inkBeyond(browsers, ours) < 0.001, "a line that is not in the PDF");
        }
    }

    private static Drawn lines(Drawn drawn) {
        return new Drawn(drawn.strokes(), List.of());
    }

    private static void assertSquares(Page page, BufferedImage image) {
        double[] sides = {100, 101.6};
        var squares = page.drawn().strokes().stream()
                .filter(stroke -> stroke.style() == Style.SQUARE)
                .map(Stroke::bounds)
                .sorted(Comparator.comparingDouble(Box::width))
                .toList();
        assertEquals(sides.length, squares.size());
        for (int i = 0; i < sides.length; i++) {
            Box square = squares.get(i);
            double x = square.left() + square.width() * 0.7;
            double y = square.top() + square.height() * 0.7;
            assertEquals(sides[i], Renderers.across(image, square.left(), square.right(), y), 0.1);
            assertEquals(sides[i], Renderers.down(image, square.top(), square.bottom(), x), 0.1);
        }
    }
}
