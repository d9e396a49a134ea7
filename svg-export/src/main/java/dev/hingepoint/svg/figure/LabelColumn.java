package dev.hingepoint.svg.figure;

import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import dev.hingepoint.svg.page.Type;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Words in a column beside a figure, each about level with what it names, as far as there is room, and a leader line to it that ends in a dot (after ISO 128, from memory). */
final class LabelColumn {
    /** In mm: the type, the distance of its lines, of one label to the next, and of a leader to its words. */
    private static final double TYPE = 2.8;

    private static final double LINE = 3.3;
    private static final double BETWEEN = 2.5;
    private static final double CLEAR = 0.8;
    private static final double DOT = 0.35;
    private static final double MARGIN = 1;

    /** How much a leader slopes, so that it does not run along a level line of the figure. */
    private static final double OBLIQUE = 0.15;

    /** How far a base line lies below the top of its line. */
    private static final double BASE = 2.5;

    private final double left;
    private final List<Label> labels = new ArrayList<>();

    private LabelColumn(double left) {
        this.left = left;
    }

    static LabelColumn at(double left) {
        return new LabelColumn(left);
    }

    private record Label(List<String> lines, Point names) {
        double height() {
            return lines.size() * LINE;
        }
    }

    void add(String words, Point names) {
        double width = FigurePicture.WIDTH - left - CLEAR;
        labels.add(new Label(Type.wrapped(words, width, width, TYPE), names));
    }

    /** In the order in which they were added, from above: leaders do not cross where that follows the places. */
    Drawn drawn() {
        List<Stroke> strokes = new ArrayList<>();
        List<Text> texts = new ArrayList<>();
        List<Double> tops = tops();
        for (int label = 0; label < labels.size(); label++) {
            List<String> lines = labels.get(label).lines();
            double top = tops.get(label);
            for (int i = 0; i < lines.size(); i++) {
                texts.add(new Text(lines.get(i), new Point(left, top + i * LINE + BASE), TYPE, 0));
            }
            Point names = labels.get(label).names();
            Point from = new Point(left - CLEAR, top + labels.get(label).height() / 2);
            strokes.add(Stroke.of(Style.LEADER, from, names));
            strokes.add(dot(names));
        }
        return new Drawn(strokes, texts);
    }

    /** Each level with its place; those that would lie on one another share the way that they have to give, up and down. */
    private List<Double> tops() {
        List<Double> tops = new ArrayList<>();
        for (int first = 0; first < labels.size(); ) {
            int next = first + 1;
            double height = labels.get(first).height();
            double top = wished(first);
            double wishes = top;
            while (next < labels.size() && wished(next) < top + height + BETWEEN) {
                wishes += wished(next) - height - BETWEEN;
                height += BETWEEN + labels.get(next).height();
                next++;
                top = Math.max(MARGIN, wishes / (next - first));
            }
            for (; first < next; first++) {
                tops.add(top);
                top += labels.get(first).height() + BETWEEN;
            }
        }
        return tops;
    }

    private double wished(int label) {
        double height = labels.get(label).height();
        Point names = labels.get(label).names();
        double top = names.y() + (left - names.x()) * OBLIQUE - height / 2;
        return Math.max(MARGIN, Math.min(FigurePicture.HEIGHT - MARGIN - height, top));
    }

    private static Stroke dot(Point at) {
        return new Stroke(
                Style.MARK,
                IntStream.rangeClosed(0, 12)
                        .mapToObj(i ->
                                at.plus(Vector.ofAngle(i * StrictMath.PI / 6).times(DOT / 2)))
                        .toList());
    }
}
