package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Text;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** What holds of the words of every drawing: readable, upright, on no line, on no other word, on the piece or beside it. */
final class ClearWords {
    private ClearWords() {}

    /** The drawing, once it has been looked at. */
    static Drawn of(PieceDrawing drawing, double smallest) {
        Drawn drawn = drawing.drawn(List.of()).drawn();
        Geometry cut = area(drawing.cutting());
        List<Geometry> lines = drawn.strokes().stream()
                .map(stroke -> (Geometry) JtsBridge.lineString(Path.through(stroke.points())))
                .toList();
        List<Polygon> rooms = drawn.texts().stream().map(ClearWords::room).toList();
        for (int i = 0; i < rooms.size(); i++) {
            Text text = drawn.texts().get(i);
            Polygon room = rooms.get(i);
            assertTrue(text.size() >= smallest, text + " is too small to read");
            assertTrue(Math.abs(text.angle()) <= StrictMath.PI / 2 + 1e-9, text + " stands on its head");
            assertTrue(cut.contains(room) || cut.disjoint(room), text + " lies across the cutting line");
            for (int k = 0; k < lines.size(); k++) {
                assertFalse(
                        room.intersects(lines.get(k)),
                        text + " on a line: " + drawn.strokes().get(k));
            }
            for (int k = 0; k < i; k++) {
                assertFalse(
                        room.intersects(rooms.get(k)),
                        text + " on " + drawn.texts().get(k));
            }
        }
        return drawn;
    }

    /** What lies within closed lines, one within another being a hole. */
    static Geometry area(List<List<Point>> rings) {
        return rings.stream()
                .map(ring -> (Geometry) JtsBridge.polygon(ring))
                .reduce(Geometry::symDifference)
                .orElseThrow();
    }

    static Polygon room(Text text) {
        return JtsBridge.polygon(text.corners());
    }

    static List<String> words(Drawn drawn) {
        return drawn.texts().stream().map(Text::words).toList();
    }
}
