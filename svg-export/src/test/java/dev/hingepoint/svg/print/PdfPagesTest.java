package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.svg.file.Drawings;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Layer;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.PdfPages;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.SvgPage;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The PDF is read back by PDFBox, and the SVG of the same page by its XML: both draw what the page model says, where it says. */
class PdfPagesTest {
    private static final Drawn NOTHING = new Drawn(List.of(), List.of());

    @TempDir
    private Path folder;

    private Printed tunic(String paper) {
        Path card = Drawings.write(folder, UnaryOperator.identity(), UnaryOperator.identity());
        Draft draft = PatternFiles.read(card).in("40");
        return Printing.print(draft, PrintOptions.of(Paper.named(paper)).forWhom("Ida", "25 November"));
    }

    private static Page page(Paper paper, Drawn drawn) {
        return new Page(1, 1, paper, 10, 1, drawn, NOTHING);
    }

    private static Page saying(String... words) {
        List<Text> texts = new ArrayList<>();
        for (String line : words) {
            texts.add(new Text(line, new Point(20, 30 + 10 * texts.size()), 5, 0));
        }
        return page(Paper.A4, new Drawn(List.of(), texts));
    }

    @Test
    void noPagesAreNoPdf() {
        assertThrows(IllegalArgumentException.class, () -> PdfPages.write(List.of(), "nothing"));
    }

    /** ISO 216 and ANSI Y14.1 sizes in mm, in points of 1/72 in; A3 lying; any other; a roll of 1100 mm by what is used of it; the longest there is. */
    @ParameterizedTest
    @CsvSource({
        "210, 297, 595.2756, 841.8898",
        "215.9, 279.4, 612, 792",
        "420, 297, 1190.5512, 841.8898",
        "333.3, 481.7, 944.7874, 1365.4488",
        "1100, 3000, 3118.1102, 8503.9370",
        "5000, 5000, 14173.2283, 14173.2283"
    })
    void boxesAreThePaperToAThousandthOfAPoint(double width, double height, double across, double up)
            throws IOException {
        assertEquals(width * 72 / 25.4, across, 1e-4);
        assertEquals(height * 72 / 25.4, up, 1e-4);
        Page page = page(new Paper("", width, height, Paper.Kind.SHEET), NOTHING);
        try (PDDocument pdf = Loader.loadPDF(PdfPages.write(List.of(page), "boxes"))) {
            PDPage sheet = pdf.getPage(0);
            for (PDRectangle box : List.of(sheet.getMediaBox(), sheet.getCropBox(), sheet.getTrimBox())) {
                assertEquals(0, box.getLowerLeftX());
                assertEquals(0, box.getLowerLeftY());
                assertEquals(across, box.getUpperRightX(), 0.001);
                assertEquals(up, box.getUpperRightY(), 0.001);
            }
            assertEquals(0, sheet.getRotation());
            assertEquals(1, sheet.getUserUnit());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"a4", "letter", "a3", "roll 914 mm"})
    void allPagesAreThereInOrderAndDrawWhatTheirSvgDraws(String paper) throws Exception {
        Printed printed = tunic(paper);
        try (PDDocument pdf = Loader.loadPDF(Printing.pdf(printed))) {
            assertEquals(printed.all().size(), pdf.getNumberOfPages());
            String[] labels = pdf.getDocumentCatalog().getPageLabels().getLabelsByPageIndices();
            for (int i = 0; i < pdf.getNumberOfPages(); i++) {
                Page page = printed.all().get(i);
                assertEquals(page.name(), labels[i]);
                assertEquals(page.paper().width(), pdf.getPage(i).getMediaBox().getWidth() * 25.4 / 72, 0.001);
                assertEquals(page.paper().height(), pdf.getPage(i).getMediaBox().getHeight() * 25.4 / 72, 0.001);
                Ink ink = PdfInk.read(pdf.getPage(i)).ink();
                ink.assertIs(Ink.meant(page));
                SvgInk.read(SvgPage.write(page)).assertIs(ink);
            }
        }
    }

    @Provide
    Arbitrary<Page> pages() {
        Arbitrary<Double> parts = Arbitraries.doubles().between(0, 1);
        Arbitrary<Paper> papers = Combinators.combine(
                        Arbitraries.doubles().between(100, 5000),
                        Arbitraries.doubles().between(100, 5000))
                .as((width, height) -> new Paper("", width, height, Paper.Kind.SHEET));
        Arbitrary<Point> places = Combinators.combine(parts, parts).as(Point::new);
        Arbitrary<Stroke> strokes = Combinators.combine(
                        Arbitraries.of(Style.class),
                        places.list().ofMinSize(2).ofMaxSize(6),
                        Arbitraries.doubles().between(0, 2000))
                .as(Stroke::new);
        Arbitrary<String> words = Arbitraries.strings()
                .withCharRange('!', '~')
                .withChars("\u00e9\u00df\u0142\u2013\u03a9")
                .ofMinLength(1)
                .ofMaxLength(40);
        Arbitrary<Text> texts = Combinators.combine(
                        words,
                        places,
                        Arbitraries.doubles().between(1, 60),
                        Arbitraries.doubles().between(-7, 7))
                .as(Text::new);
        Arbitrary<Drawn> drawn = Combinators.combine(
                        strokes.list().ofMaxSize(12), texts.list().ofMaxSize(4))
                .as(Drawn::new);
        return Combinators.combine(
                        papers,
                        Arbitraries.doubles().between(0, 20),
                        Arbitraries.doubles().between(0.5, 4),
                        drawn,
                        drawn)
                .as((paper, margin, weight, pattern, frame) ->
                        new Page(2, 3, paper, margin, weight, spread(pattern, paper), spread(frame, paper)));
    }

    /** What is drawn on a square of 1 mm, all over a paper. */
    private static Drawn spread(Drawn drawn, Paper paper) {
        UnaryOperator<Point> place = at -> new Point(at.x() * paper.width(), at.y() * paper.height());
        return new Drawn(
                drawn.strokes().stream()
                        .map(stroke -> new Stroke(
                                stroke.style(),
                                stroke.points().stream().map(place).toList(),
                                stroke.before()))
                        .toList(),
                drawn.texts().stream()
                        .map(text -> new Text(text.words(), place.apply(text.at()), text.size(), text.angle()))
                        .toList());
    }

    @Property(seed = "61", tries = 100, edgeCases = EdgeCasesMode.NONE)
    void bothWritersDrawThePageWithinAHundredthOfAMillimetre(@ForAll("pages") Page page) throws Exception {
        SvgInk.read(SvgPage.write(page)).assertIs(Ink.meant(page));
        try (PDDocument pdf = Loader.loadPDF(PdfPages.write(List.of(page), "random"))) {
            PdfInk read = PdfInk.read(pdf.getPage(0));
            read.ink().assertIs(Ink.meant(page));
            for (Box clip : read.clips()) {
                Box printable = page.printable();
                assertEquals(0, clip.left() - printable.left(), 0.01);
                assertEquals(0, clip.top() - printable.top(), 0.01);
                assertEquals(0, clip.right() - printable.right(), 0.01);
                assertEquals(0, clip.bottom() - printable.bottom(), 0.01);
            }
            long withWords = page.layers().values().stream()
                    .filter(layer -> !layer.texts().isEmpty())
                    .count();
            assertEquals(withWords, read.clips().size());
        }
    }

    /** ISO 32000-1, 8.11: one group for a layer in use on any page, in drawing order, each shown. */
    @Test
    void layersInUseCanBeHiddenByTheirNames() throws IOException {
        Printed printed = tunic("a4");
        Set<Layer> inUse = new TreeSet<>();
        printed.all().forEach(page -> inUse.addAll(page.layers().keySet()));
        assertTrue(inUse.size() > 3);
        try (PDDocument pdf = Loader.loadPDF(Printing.pdf(printed))) {
            var layers = pdf.getDocumentCatalog().getOCProperties();
            assertEquals(
                    inUse.stream().map(Layer::words).toList(),
                    layers.getOptionalContentGroups().stream()
                            .map(group -> group.getName())
                            .toList());
            for (String name : layers.getGroupNames()) {
                assertTrue(layers.isGroupEnabled(name), name);
            }
        }
    }

    @Test
    void wordsAreTextInOneFontOfWhichOnlyWhatIsUsedIsThere() throws IOException {
        Printed printed = tunic("a4");
        try (PDDocument pdf = Loader.loadPDF(Printing.pdf(printed))) {
            Set<Object> fonts = new HashSet<>();
            for (int i = 0; i < pdf.getNumberOfPages(); i++) {
                for (COSName name : pdf.getPage(i).getResources().getFontNames()) {
                    PDFont font = pdf.getPage(i).getResources().getFont(name);
                    fonts.add(font.getCOSObject());
                    assertTrue(font.isEmbedded());
                    assertTrue(font.getName().matches("[A-Z]{6}\\+LiberationSans"), font.getName());
                    long length = font.getFontDescriptor().getFontFile2().getLength();
                    assertTrue(length > 0 && length < 40_000, "the whole font has 410 712 bytes, this " + length);
                }
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(i + 1);
                stripper.setEndPage(i + 1);
                String said = stripper.getText(pdf).replaceAll("\\s+", "");
                for (Text text : printed.all().get(i).frame().texts()) {
                    assertTrue(said.contains(text.words().replace(" ", "")), text.words() + " is not in " + said);
                }
            }
            assertEquals(1, fonts.size());
        }
    }

    /** A page without words needs no font, and no other is looked for. */
    @Test
    void noWordsNoFont() throws IOException {
        Page page = page(
                Paper.A4,
                new Drawn(
                        List.of(Stroke.of(Style.CUTTING, new Point(20, 20), new Point(50, 60))),
                        List.of(new Text("", new Point(20, 20), 5, 0))));
        try (PDDocument pdf = Loader.loadPDF(PdfPages.write(List.of(page), "no words"))) {
            assertFalse(pdf.getPage(0).getResources().getFontNames().iterator().hasNext());
            assertEquals(List.of(), PdfInk.read(pdf.getPage(0)).ink().words());
        }
    }

    /**
     * An emoji, a Chinese name, a control character and half a character are beyond the font: each is its box, and as wide as the page model and the SVG have
     * it. Combining accents stand one by one.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {"Ida \ud83e\uddf5 x", "\u674e\u5a1c", "e\u0301 a\u0308", "a\u0001b", "a\ud83eb", "\u200b", " "})
    void charactersBeyondTheFontAreBoxesOfTheSameWidth(String words) throws Exception {
        Page page = saying(words);
        try (PDDocument pdf = Loader.loadPDF(PdfPages.write(List.of(page), "beyond"))) {
            Ink.Word read = PdfInk.read(pdf.getPage(0)).ink().words().get(0);
            Ink.Word svg = SvgInk.read(SvgPage.write(page)).words().get(0);
            assertEquals(words.codePointCount(0, words.length()), read.words().length());
            assertEquals(0, svg.at().distanceTo(read.at()), 0.01);
            assertEquals(0, svg.end().distanceTo(read.end()), 0.01);
            for (int i = 0; i < read.words().length(); i++) {
                int character = words.codePoints().toArray()[i];
                assertEquals(Type.glyph(character) == 0, read.words().charAt(i) == '\uFFFD');
            }
        }
        assertEquals(2 * Type.width("\u674e", 5), Type.width("\u674e\ud83e\uddf5", 5), 1e-9);
    }

    /** Unicode annex 9: Hebrew runs from right to left, the number in it from left to right; the reader turns it back. */
    @Test
    void wordsThatRunFromRightToLeftAreSetSo() throws IOException {
        String hebrew = "\u05e9\u05dc\u05d5\u05dd";
        Page page = saying("for " + hebrew + ", size 40", hebrew + " 12 " + hebrew);
        try (PDDocument pdf = Loader.loadPDF(PdfPages.write(List.of(page), "right to left"))) {
            String turned = new StringBuilder(hebrew).reverse().toString();
            List<Ink.Word> words = PdfInk.read(pdf.getPage(0)).ink().words();
            assertEquals("for " + turned + ", size 40", words.get(0).words());
            assertEquals(turned + " 12 " + turned, words.get(1).words());
            assertTrue(new PDFTextStripper().getText(pdf).contains(hebrew));
        }
    }

    @Test
    void aReaderIsToldToPrintTrueToScaleAndOnOneSide() throws IOException {
        Printed printed = tunic("a4");
        try (PDDocument pdf = Loader.loadPDF(Printing.pdf(printed))) {
            var preferences = pdf.getDocumentCatalog().getViewerPreferences();
            assertEquals("None", preferences.getPrintScaling());
            assertEquals("Simplex", preferences.getDuplex());
            assertTrue(preferences.displayDocTitle());
            assertEquals("en", pdf.getDocumentCatalog().getLanguage());
            assertEquals("Test tunic, size 40", pdf.getDocumentInformation().getTitle());
            assertNull(pdf.getDocumentInformation().getCreationDate());
            assertNull(pdf.getDocumentInformation().getModificationDate());
            assertEquals(1.7f, pdf.getVersion());
        }
    }

    @Test
    void aTitleMayBeInAnyScript() throws IOException {
        String title = "\u674e\u5a1c \ud83e\uddf5 \u05e9";
        try (PDDocument pdf = Loader.loadPDF(PdfPages.write(List.of(saying("one")), title))) {
            assertEquals(title, pdf.getDocumentInformation().getTitle());
        }
    }

    @Test
    void theSameBytesAgainAndInAnyLocale() {
        Printed printed = tunic("a4");
        byte[] expected = Printing.pdf(printed);
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("en", "tr-TR", "ar-EG-u-nu-arab", "de", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertArrayEquals(expected, Printing.pdf(printed), tag);
            }
        } finally {
            Locale.setDefault(before);
        }
        assertFalse(Arrays.equals(expected, PdfPages.write(printed.all().subList(1, 3), printed.title())));
    }

    /** ISO 32000-1, 14.4: a file's identifier is its own, also where two have the same title. */
    @Test
    void otherPagesHaveAnotherIdentifier() throws IOException {
        try (PDDocument one = Loader.loadPDF(PdfPages.write(List.of(saying("one")), "title"));
                PDDocument two = Loader.loadPDF(PdfPages.write(List.of(saying("two")), "title"))) {
            assertNotEquals(
                    one.getDocument().getDocumentID().get(0).toString(),
                    two.getDocument().getDocumentID().get(0).toString());
        }
    }

    @Test
    void theFileIsSmall() {
        int bytes = Printing.pdf(tunic("a4")).length;
        assertTrue(bytes < 60_000, bytes + " bytes");
    }

    @Test
    void qpdfFindsNoFault() throws Exception {
        Renderers.need("qpdf");
        Path file = Files.write(folder.resolve("pages.pdf"), Printing.pdf(tunic("a4")));
        String said = Renderers.run("qpdf", "--check", file.toString());
        assertTrue(said.contains("No syntax or stream encoding errors found"), said);
    }

    /** All pages together are written or none, the PDF with them. */
    @Test
    void thePdfIsWrittenBesideThePages() throws IOException {
        Printed printed = tunic("a4");
        Printing.write(printed, folder.resolve("out"));
        assertArrayEquals(Printing.pdf(printed), Files.readAllBytes(folder.resolve("out/pages.pdf")));
        assertTrue(Files.exists(folder.resolve("out/pages/1.1.svg")));
    }
}
