package dev.hingepoint.svg.print;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Layer;
import dev.hingepoint.svg.page.Page;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;

/** What a reader finds drawn on a page, in mm from its upper left corner, whatever it was written in. */
record Ink(List<Line> lines, List<Word> words) {
    /** Both writers agree with the page, and with one another, within this many mm. */
    private static final double NEAR = 0.01;

    /**
     * A stroke.
     *
     * @param layer by its name for a person
     */
    record Line(String layer, List<Point> points, double width, List<Double> dashes, double phase) {
        private boolean is(Line other) {
            return layer.equals(other.layer)
                    && points.size() == other.points.size()
                    && dashes.size() == other.dashes.size()
                    && Math.abs(width - other.width) < NEAR
                    && apart(points, other.points) < NEAR
                    && isNear(dashes, other.dashes)
                    && (dashes.isEmpty() || isSamePhase(other));
        }

        /** A phase of nothing is one of the whole length, but for rounding. */
        private boolean isSamePhase(Line other) {
            double length = dashes.stream().mapToDouble(d -> d).sum();
            double apart = Math.abs(phase - other.phase) % length;
            return Math.min(apart, length - apart) < NEAR;
        }
    }

    /** A line of text, and where it ends as set. */
    record Word(String layer, String words, Point at, Point end, double size) {
        private boolean is(Word other) {
            return layer.equals(other.layer)
                    && words.equals(other.words)
                    && Math.abs(size - other.size) < NEAR
                    && at.distanceTo(other.at) < NEAR
                    && end.distanceTo(other.end) < NEAR;
        }
    }

    /** A line without words draws nothing, whether or not it is written. */
    Ink {
        words = words.stream().filter(word -> !word.words().isEmpty()).toList();
    }

    private static double apart(List<Point> some, List<Point> others) {
        double most = 0;
        for (int i = 0; i < some.size(); i++) {
            most = Math.max(most, some.get(i).distanceTo(others.get(i)));
        }
        return most;
    }

    private static boolean isNear(List<Double> some, List<Double> others) {
        for (int i = 0; i < some.size(); i++) {
            if (Math.abs(some.get(i) - others.get(i)) > NEAR) {
                return false;
            }
        }
        return true;
    }

    /** What the page model says is on a page. */
    static Ink meant(Page page) {
        List<Line> lines = new ArrayList<>();
        List<Word> words = new ArrayList<>();
        for (Map.Entry<Layer, Drawn> layer : page.layers().entrySet()) {
            String name = layer.getKey().words();
            for (Stroke stroke : layer.getValue().strokes()) {
                List<Double> dashes = stroke.style().dashes().stream()
                        .map(length -> length * page.weight())
                        .toList();
                lines.add(new Line(
                        name, stroke.points(), stroke.style().width() * page.weight(), dashes, stroke.before()));
            }
            for (Text text : layer.getValue().texts()) {
                Point end = text.at().plus(Vector.ofAngle(text.angle()).times(text.width()));
                words.add(new Word(name, text.words(), text.at(), end, text.size()));
            }
        }
        return new Ink(lines, words);
    }

    /** The same strokes and words, each once, in any order within a layer. */
    void assertIs(Ink expected) {
        assertSame(expected.lines, lines, Line::is);
        assertSame(expected.words, words, Word::is);
    }

    private static <T> void assertSame(List<T> expected, List<T> found, BiPredicate<T, T> same) {
        List<T> left = new ArrayList<>(found);
        for (T one : expected) {
            boolean isThere = false;
            for (int i = 0; i < left.size() && !isThere; i++) {
                isThere = same.test(one, left.get(i));
                if (isThere) {
                    left.remove(i);
                }
            }
            assertTrue(isThere, one + " is not among " + left);
        }
        assertTrue(left.isEmpty(), "not on the page: " + left);
    }
}
