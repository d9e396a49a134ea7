package dev.hingepoint.svg.file;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Path;
import dev.hingepoint.pattern.DoublePointedDart;
import dev.hingepoint.pattern.DrawnLine;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.EdgeDart;
import dev.hingepoint.pattern.Grain;
import dev.hingepoint.pattern.Level;
import dev.hingepoint.pattern.Mark;
import dev.hingepoint.pattern.MarkedPoint;
import dev.hingepoint.pattern.Notch;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** Writes a pattern's nest as a drawing in the form that {@link DrawingReader} reads; 1 unit = 1 mm. Curves are written as curves. */
public final class DrawingWriter {
    private static final double MARGIN = 20;

    private final StringBuilder svg = new StringBuilder();
    private final Map<String, Integer> ids = new HashMap<>();

    private DrawingWriter() {}

    public static String write(Pattern pattern) {
        return new DrawingWriter().drawing(pattern);
    }

    private String drawing(Pattern pattern) {
        Box box = pattern.nest().stream()
                .flatMap(piece -> piece.edges().stream())
                .map(edge -> asRead(edge.path()).bounds())
                .reduce(Box::union)
                .orElseThrow()
                .grownBy(MARGIN);
        String width = Numbers.of(box.width());
        String height = Numbers.of(box.height());
        svg.append(
                        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" data-form=\"1\" width=\"")
                .append(width)
                .append("mm\" height=\"")
                .append(height)
                .append("mm\" viewBox=\"")
                .append(Numbers.of(box.left()))
                .append(' ')
                .append(Numbers.of(box.top()))
                .append(' ')
                .append(width)
                .append(' ')
                .append(height)
                .append("\" fill=\"none\" stroke=\"#000\" stroke-width=\"0.4\">\n");
        text("title", pattern.card().name(), "  ");
        pattern.nest().forEach(this::piece);
        return svg.append("</svg>\n").toString();
    }

    /** What is written of a path, its points rounded: the drawing's size then comes out alike when it is read and written again. */
    private static Path asRead(Path path) {
        return PathData.parse(PathData.write(path)).get(0).path();
    }

    private void piece(Piece piece) {
        String id = piece.name() + " " + piece.size()
                + piece.front().map(front -> " " + front).orElse("");
        svg.append("  <g").append(id(id));
        attribute("data-piece", piece.name());
        attribute("data-size", piece.size());
        attribute("data-cut", CuttingText.write(piece.cuttings()));
        piece.front().ifPresent(front -> attribute("data-front", front));
        svg.append(">\n");
        for (Edge edge : piece.edges()) {
            svg.append("    <path").append(id(id + " " + edge.name()));
            attribute("data-edge", edge.name());
            attribute("data-kind", edge.kind().name().toLowerCase(Locale.ROOT));
            attribute("d", PathData.write(edge.path()));
            svg.append("/>\n");
        }
        piece.marks().forEach(mark -> mark(id, mark));
        svg.append("  </g>\n");
    }

    private void mark(String piece, Mark mark) {
        if (mark instanceof MarkedPoint point) {
            begin("circle", piece, "point", mark);
            attribute("cx", Numbers.of(point.at().x()));
            attribute("cy", Numbers.of(point.at().y()));
            attribute("r", Numbers.of(point.radius()));
        } else if (mark instanceof Level level) {
            line(piece, "level", mark, PathData.write(level.path()));
        } else if (mark instanceof Grain grain) {
            line(piece, "grain", mark, PathData.write(Path.of(grain.line())));
        } else if (mark instanceof EdgeDart dart) {
            line(piece, "dart", mark, PathData.write(dart.first().then(dart.second())));
        } else if (mark instanceof DoublePointedDart dart) {
            line(piece, "dart", mark, PathData.write(dart.closed()) + " Z");
        } else if (mark instanceof DrawnLine drawn) {
            line(piece, "line", mark, PathData.write(drawn.path()));
        } else {
            Notch notch = (Notch) mark;
            begin("path", piece, "notch", mark);
            attribute("data-count", Integer.toString(notch.count()));
            attribute("d", PathData.write(Path.of(notch.line())));
        }
        svg.append("/>\n");
    }

    private void line(String piece, String kind, Mark mark, String data) {
        begin("path", piece, kind, mark);
        attribute("d", data);
    }

    private void begin(String element, String piece, String kind, Mark mark) {
        svg.append("    <").append(element).append(id(piece + " " + mark.name()));
        attribute("data-mark", kind);
        if (!(mark instanceof Grain)) {
            attribute("data-name", mark.name());
        }
    }

    /** A valid, unique XML name made of the words. */
    private String id(String words) {
        String plain = words.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        String name = Character.isLetter(plain.charAt(0)) ? plain : "p" + plain;
        int count = ids.merge(name, 1, Integer::sum);
        return " id=\"" + (count == 1 ? name : name + "-" + count) + "\"";
    }

    private void attribute(String name, String value) {
        svg.append(' ').append(name).append("=\"").append(Xml.escaped(value)).append('"');
    }

    private void text(String element, String text, String indent) {
        svg.append(indent)
                .append('<')
                .append(element)
                .append('>')
                .append(Xml.escaped(text))
                .append("</")
                .append(element)
                .append(">\n");
    }
}
