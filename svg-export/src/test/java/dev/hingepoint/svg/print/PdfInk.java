package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Point;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** Reads what a page of a PDF draws, by PDFBox's own reading of the operators: every stroke and word with the optional content that it is in. */
final class PdfInk extends PDFGraphicsStreamEngine {
    private static final double POINTS = 72 / 25.4;

    private final List<Ink.Line> lines = new ArrayList<>();
    private final List<Ink.Word> words = new ArrayList<>();
    private final List<Box> clips = new ArrayList<>();
    private final List<List<Point>> path = new ArrayList<>();
    private final StringBuilder shown = new StringBuilder();
    private final List<Matrix> places = new ArrayList<>();
    private Matrix end;
    private boolean clipsNext;
    private double phase;
    private String layer = "none";

    private PdfInk(PDPage page) {
        super(page);
    }

    static PdfInk read(PDPage page) throws IOException {
        PdfInk reader = new PdfInk(page);
        reader.processPage(page);
        return reader;
    }

    Ink ink() {
        return new Ink(lines, words);
    }

    /** To what each layer's words are cut off. */
    List<Box> clips() {
        return clips;
    }

    private Point millimetres(double x, double y) {
        return new Point(x / POINTS, (getPage().getMediaBox().getHeight() - y) / POINTS);
    }

    private double millimetres(double length) {
        Matrix matrix = getGraphicsState().getCurrentTransformationMatrix();
        return length * matrix.getScalingFactorX() / POINTS;
    }

    /** The graphics state keeps whole numbers of a phase only. */
    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        if (operator.getName().equals("d")) {
            phase = ((COSNumber) operands.get(1)).floatValue();
        }
        super.processOperator(operator, operands);
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
        assertEquals("OC", tag.getName());
        assertEquals(COSName.OCG, properties.getCOSName(COSName.TYPE));
        layer = properties.getString(COSName.NAME);
    }

    @Override
    public void endMarkedContentSequence() {
        layer = "none";
    }

    @Override
    public void moveTo(float x, float y) {
        path.add(new ArrayList<>(List.of(millimetres(x, y))));
    }

    @Override
    public void lineTo(float x, float y) {
        path.get(path.size() - 1).add(millimetres(x, y));
    }

    @Override
    public void strokePath() {
        assertEquals(1, getGraphicsState().getLineJoin(), "round joins");
        assertEquals(0, getGraphicsState().getLineCap(), "butt caps");
        List<Double> dashes = new ArrayList<>();
        for (float dash : getGraphicsState().getLineDashPattern().getDashArray()) {
            dashes.add(millimetres(dash));
        }
        double width = millimetres(getGraphicsState().getLineWidth());
        path.forEach(points -> lines.add(new Ink.Line(layer, points, width, dashes, millimetres(phase))));
        path.clear();
    }

    @Override
    public void appendRectangle(Point2D first, Point2D second, Point2D third, Point2D fourth) {
        Rectangle2D bounds = new Rectangle2D.Double(first.getX(), first.getY(), 0, 0);
        List.of(second, third, fourth).forEach(bounds::add);
        Point top = millimetres(bounds.getMinX(), bounds.getMaxY());
        Point bottom = millimetres(bounds.getMaxX(), bounds.getMinY());
        clips.add(new Box(top.x(), top.y(), bottom.x(), bottom.y()));
    }

    @Override
    public void clip(int windingRule) {
        clipsNext = true;
    }

    @Override
    public void endPath() {
        assertEquals(true, clipsNext, "a path that neither draws nor cuts off");
        clipsNext = false;
    }

    @Override
    public void showTextString(byte[] string) throws IOException {
        shown.setLength(0);
        places.clear();
        super.showTextString(string);
        if (places.isEmpty()) {
            return;
        }
        Matrix first = places.get(0);
        words.add(new Ink.Word(
                layer,
                shown.toString(),
                millimetres(first.getTranslateX(), first.getTranslateY()),
                millimetres(end.getTranslateX(), end.getTranslateY()),
                first.getScalingFactorX() / POINTS));
    }

    @Override
    protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement) throws IOException {
        places.add(matrix);
        end = Matrix.getTranslateInstance(displacement.getX(), displacement.getY())
                .multiply(matrix);
        shown.append(code == 0 ? "\uFFFD" : font.toUnicode(code));
    }

    @Override
    public void drawImage(PDImage image) {
        throw new AssertionError("a picture among lines");
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        throw new AssertionError("the page model has straight lines only");
    }

    @Override
    public void closePath() {
        throw new AssertionError("a closed line has its first point at its end");
    }

    @Override
    public Point2D getCurrentPoint() {
        return new Point2D.Double();
    }

    @Override
    public void fillPath(int windingRule) {
        throw new AssertionError("nothing is filled");
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        fillPath(windingRule);
    }

    @Override
    public void shadingFill(COSName name) {
        fillPath(0);
    }
}
