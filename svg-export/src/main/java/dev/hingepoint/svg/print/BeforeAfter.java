package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.pattern.Dart;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.SvgPage;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.util.ArrayList;
import java.util.List;

/** The altered lines laid over the original ones, so that a reader sees at a glance what moved. */
public final class BeforeAfter {
    private static final double MARGIN = 30;
    private static final double BETWEEN = 60;
    private static final double HEADING = 60;
    private static final double TYPE = 16;

    private BeforeAfter() {}

    /** A drawing of every piece that changed, side by side, as SVG in mm. */
    public static String svg(Draft before, Draft after) {
        List<Stroke> strokes = new ArrayList<>();
        List<Text> texts = new ArrayList<>();
        double x = MARGIN;
        double bottom = 0;
        for (Piece piece : after.pieces()) {
            Piece old = before.find(piece.name()).orElse(piece);
            if (old.equals(piece)) {
                continue;
            }
            Box box = piece.outline().bounds().union(old.outline().bounds());
            Motion place = Motion.shift(new Vector(x - box.left(), MARGIN + HEADING - box.top()));
            lines(old, Style.BEFORE, place, strokes);
            lines(piece, Style.AFTER, place, strokes);
            texts.add(new Text(piece.name(), new Point(x, MARGIN + HEADING - 12), TYPE, 0));
            x += box.width() + BETWEEN;
            bottom = Math.max(bottom, MARGIN + HEADING + box.height());
        }
        String heading = after.pattern().card().name() + ", size " + after.size();
        texts.add(new Text(heading, new Point(MARGIN, MARGIN), TYPE * 1.3, 0));
        double legend = MARGIN + Math.max(Type.width(heading, TYPE * 1.3) + 40, 380);
        legend(strokes, texts, legend);
        double width = Math.max(x - BETWEEN, legend + 330) + MARGIN;
        double height = bottom + MARGIN;
        return SvgPage.write(width, height, new Drawn(strokes, texts), "before and after");
    }

    private static void legend(List<Stroke> strokes, List<Text> texts, double x) {
        strokes.add(Stroke.of(Style.BEFORE, new Point(x, MARGIN - 5), new Point(x + 50, MARGIN - 5)));
        texts.add(new Text("as drawn", new Point(x + 56, MARGIN), TYPE, 0));
        strokes.add(Stroke.of(Style.AFTER, new Point(x + 160, MARGIN - 5), new Point(x + 210, MARGIN - 5)));
        texts.add(new Text("altered", new Point(x + 216, MARGIN), TYPE, 0));
    }

    private static void lines(Piece piece, Style style, Motion place, List<Stroke> strokes) {
        List<Path> paths = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            paths.add(edge.path());
        }
        piece.marks(Dart.class).forEach(dart -> paths.addAll(dart.legs()));
        piece.marks(Level.class).forEach(level -> paths.add(level.path()));
        paths.forEach(path -> strokes.add(new Stroke(style, path.moved(place).flatten(Tolerance.FLATTENING))));
    }
}
