package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Lays;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Polygon;

class LayoutTest {
    private static final Path DRESS = Path.of("../samples/patterns/larkfield.yaml");
    private static final PrintOptions A4 = PrintOptions.of(Paper.A4);

    private static List<PieceDrawing> pieces(PrintOptions options) {
        Draft dress = PatternFiles.read(DRESS).in("40");
        return PieceDrawing.of(List.of(dress), options);
    }

    private static List<Drawn> drawn(List<PieceDrawing> pieces) {
        return pieces.stream().map(piece -> piece.drawn(List.of()).drawn()).toList();
    }

    private static Layout laid(List<PieceDrawing> pieces, PrintOptions options) {
        return Layout.of(
                drawn(pieces),
                pieces.stream().map(PieceDrawing::cutting).toList(),
                pieces.stream().map(PieceDrawing::way).toList(),
                options);
    }

    /** Each beside the last, 3 mm apart, tops in line at the top of the sheet. */
    private static Drawn row(List<Drawn> drawings) {
        Drawn row = Drawn.NOTHING;
        double left = 3;
        for (Drawn drawing : drawings) {
            Box box = drawing.bounds();
            row = row.and(drawing.moved(Motion.shift(new Vector(left - box.left(), 3 - box.top()))));
            left += box.width() + 3;
        }
        return row;
    }

    /** Source: derived: the pages of the same drawings side by side, counted in the same way. */
    @Test
    void theConcertDressTakesFifteenPerCentFewerPagesThanSideBySide() {
        List<PieceDrawing> pieces = pieces(A4);
        assertEquals(3, pieces.size());
        int sideBySide = Tiling.count(row(drawn(pieces)), List.of(), A4);
        int nested = Tiling.count(laid(pieces, A4).sheet(), List.of(), A4);
        assertTrue(nested <= 0.85 * sideBySide, nested + " pages, side by side " + sideBySide);
    }

    /** Source: derived. */
    @ParameterizedTest
    @CsvSource({"a4, UPRIGHT", "a4, LYING", "letter, UPRIGHT", "letter, LYING", "a3, UPRIGHT", "a3, LYING"})
    void neverMorePagesThanSideBySide(String name, String lies) {
        Paper paper = Paper.named(name);
        PrintOptions options = PrintOptions.of(lies.equals("LYING") ? paper.turned() : paper);
        List<PieceDrawing> pieces = pieces(options);
        assertTrue(Tiling.count(laid(pieces, options).sheet(), List.of(), options)
                <= Tiling.count(row(drawn(pieces)), List.of(), options));
    }

    /** Source: derived, JTS's polygons of the cutting lines. */
    @ParameterizedTest
    @CsvSource({"a4", "a0", "roll 914 mm", "projector"})
    void piecesKeepApart(String paper) {
        PrintOptions options = PrintOptions.of(Paper.named(paper));
        Layout layout = laid(pieces(options), options);
        List<Polygon> cut = IntStream.range(0, 3)
                .mapToObj(i -> layout.rings().get(i).get(0).stream()
                        .map(layout.place(i)::of)
                        .toList())
                .map(JtsBridge::polygon)
                .toList();
        assertEquals(3, cut.size());
        for (int i = 0; i < cut.size(); i++) {
            for (int k = 0; k < i; k++) {
                assertTrue(cut.get(i).distance(cut.get(k)) >= 3 - 1e-9);
            }
        }
    }

    /** Source: derived: what a joint covers of a drawing before it moves is what it covers after it. */
    @Test
    void jointsLieOnATurnedDrawingWhereThePagesAreJoined() {
        Drawn box = new Drawn(
                List.of(Stroke.of(
                        Style.CUTTING,
                        new Point(0, 0),
                        new Point(300, 0),
                        new Point(300, 80),
                        new Point(0, 80),
                        new Point(0, 0))),
                List.of());
        for (Motion turn : List.of(
                Motion.STAY,
                new Motion(-1, 0, 0, -1, 0, 0),
                new Motion(0, -1, 1, 0, 0, 0),
                new Motion(0, 1, -1, 0, 0, 0))) {
            Motion place = turn.then(Motion.shift(new Vector(400, 500)));
            List<Box> joints = new Layout(List.of(box), List.of(List.of()), List.of(place), A4).jointsOn(0);
            for (Box joint : joints) {
                Box onSheet = Box.of(
                        place.of(new Point(joint.left(), joint.top())),
                        place.of(new Point(joint.right(), joint.bottom())));
                boolean isAcross = Math.abs(onSheet.width() - 10) < 1e-9 && onSheet.left() % 180 < 1e-9;
                boolean isDown = Math.abs(onSheet.height() - 10) < 1e-9 && onSheet.top() % 267 < 1e-9;
                assertTrue(isAcross || isDown, onSheet.toString());
            }
            assertFalse(joints.isEmpty());
        }
    }

    /** Source: derived: words that move beside a piece may come to lie where another piece is laid. */
    @Test
    void wordsBesideAPieceHaveNoRoomWhereTheyWereNotWhenItWasLaid() {
        Stroke outline = Stroke.of(
                Style.CUTTING,
                new Point(0, 0),
                new Point(100, 0),
                new Point(100, 400),
                new Point(0, 400),
                new Point(0, 0));
        Drawn first = new Drawn(List.of(outline), List.of(new Text("beside", new Point(110, 50), 5, 0)));
        Drawn inside = new Drawn(List.of(outline), List.of(new Text("inside", new Point(10, 300), 5, 0)));
        Drawn lower = new Drawn(List.of(outline), List.of(new Text("beside", new Point(110, 350), 5, 0)));
        Layout layout = Layout.of(List.of(first), List.of(List.of(outline.points())), List.of(Lays.Way.ONE_WAY), A4);
        assertTrue(layout.hasRoomFor(0, first));
        assertTrue(layout.hasRoomFor(0, inside));
        assertFalse(layout.hasRoomFor(0, lower));
    }

    /** Source: derived: a light's page is as wide as the cloth that it is thrown on, or as the widest piece. */
    @Test
    void aProjectionIsAboutAsWideAsTheCloth() {
        PrintOptions projected = PrintOptions.of(Paper.named("projector"));
        assertTrue(laid(pieces(projected), projected).sheet().bounds().width() <= 1400);
    }
}
