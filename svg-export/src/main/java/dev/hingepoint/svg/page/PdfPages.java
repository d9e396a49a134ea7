package dev.hingepoint.svg.page;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.zip.CRC32;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDPageLabelRange;
import org.apache.pdfbox.pdmodel.common.PDPageLabels;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Writes pages as one PDF at true scale (ISO 32000-1), in their order and each of its own size, with the strokes, dashes and words that {@link SvgPage} writes of them. Each
 * {@link Layer} in use is an optional content group (8.11), shown at first. Words are text, in the font that ships with the library, of which what is used is
 * embedded; no font of the machine is looked for. A character that the font lacks is its box for such, as wide as {@link Text#width} has it, where a browser that
 * draws the SVG may find the character in a font of its own.
 *
 * <p>The same pages are the same bytes, in any locale and at any time; what is compressed in them is so by the Java that runs, and one with another zlib may pack the same
 * content otherwise.
 */
public final class PdfPages {
    private PdfPages() {}

    /**
     * One PDF of all pages.
     *
     * @param title shown by a reader in place of the file's name
     * @throws IllegalArgumentException for no pages
     */
    public static byte[] write(List<Page> pages, String title) {
        if (pages.isEmpty()) {
            throw new IllegalArgumentException("a PDF needs a page");
        }
        try (PDDocument document = new PDDocument()) {
            PDResources resources = new PDResources();
            layers(document, pages, resources);
            font(document, pages, resources);
            PDPageLabels labels = new PDPageLabels(document);
            CRC32 sum = new CRC32();
            for (Page page : pages) {
                byte[] content = PdfContent.of(page).getBytes(StandardCharsets.US_ASCII);
                sum.update(content);
                PDPageLabelRange label = new PDPageLabelRange();
                label.setPrefix(page.name());
                labels.setLabelItem(document.getNumberOfPages(), label);
                document.addPage(sheet(document, page.paper(), resources, content));
            }
            document.getDocumentCatalog().setPageLabels(labels);
            describe(document, title);
            // otherwise the clock would be in the file's identifier (14.4)
            document.setDocumentId(sum.getValue());
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            document.save(file);
            return file.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static void layers(PDDocument document, List<Page> pages, PDResources resources) {
        Set<Layer> inUse = EnumSet.noneOf(Layer.class);
        pages.forEach(page -> inUse.addAll(page.layers().keySet()));
        PDOptionalContentProperties layers = new PDOptionalContentProperties();
        for (Layer layer : inUse) {
            PDOptionalContentGroup group = new PDOptionalContentGroup(layer.words());
            layers.addGroup(group);
            resources.put(COSName.getPDFName(layer.name()), group);
        }
        document.getDocumentCatalog().setOCProperties(layers);
    }

    private static void font(PDDocument document, List<Page> pages, PDResources resources) throws IOException {
        int[] used = pages.stream()
                .flatMap(page -> page.layers().values().stream())
                .flatMap(drawn -> drawn.texts().stream())
                .flatMapToInt(text -> text.words().codePoints())
                .distinct()
                .sorted()
                .toArray();
        if (used.length == 0) {
            return;
        }
        PDType0Font font = PDType0Font.load(document, Type.file());
        for (int character : used) {
            font.addToSubset(character);
        }
        // where all that is used is beyond the font: to some readers, a font that maps nothing is damaged
        font.addToSubset(' ');
        font.subset();
        font.getDescendantFont().getCOSObject().setItem(COSName.W, widths(used));
        resources.put(COSName.getPDFName(PdfContent.FONT), font);
    }

    /** Exact widths (9.7.4.3): those that PDFBox writes are rounded to a thousandth of the em, which adds up along a line. */
    private static COSArray widths(int[] used) {
        COSArray widths = new COSArray();
        for (int glyph : IntStream.of(used).map(Type::glyph).distinct().sorted().toArray()) {
            // from this glyph to this glyph
            widths.add(COSInteger.get(glyph));
            widths.add(COSInteger.get(glyph));
            widths.add(new COSFloat((float) (1000 * Type.ems(glyph))));
        }
        return widths;
    }

    private static PDPage sheet(PDDocument document, Paper paper, PDResources resources, byte[] content)
            throws IOException {
        PDRectangle box = new PDRectangle(
                (float) (paper.width() * PdfContent.POINTS), (float) (paper.height() * PdfContent.POINTS));
        PDPage sheet = new PDPage(box);
        sheet.setCropBox(box);
        sheet.setTrimBox(box);
        sheet.setResources(resources);
        sheet.setContents(new PDStream(document, new ByteArrayInputStream(content), COSName.FLATE_DECODE));
        return sheet;
    }

    private static void describe(PDDocument document, String title) {
        document.getDocumentInformation().setTitle(title);
        PDViewerPreferences preferences = new PDViewerPreferences();
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        preferences.setDuplex(PDViewerPreferences.DUPLEX.Simplex);
        preferences.setDisplayDocTitle(true);
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setViewerPreferences(preferences);
        catalog.setLanguage("en");
        document.setVersion(1.7f);
    }
}
