package dev.hingepoint.svg.print;

import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.page.Style;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** One size of a piece as it lies on its drawing: everything is found on the paper, at full scale, and carried from there to each of its images. */
final class LaidSize {
    private final Draft draft;
    private final Piece piece;
    private final Style style;
    private final CuttingLine line;
    private final Unfolding unfolding;
    private final Motion place;
    private final List<List<Point>> cutting;

    /**
     * @param style of its cutting line
     * @param line its cutting line
     * @param place how its paper is carried to the drawing
     */
    LaidSize(Draft draft, Piece piece, Style style, CuttingLine line, Unfolding unfolding, Motion place) {
        this.draft = draft;
        this.piece = piece;
        this.style = style;
        this.line = line;
        this.unfolding = unfolding;
        this.place = place;
        this.cutting = rings(line.outline());
    }

    Draft draft() {
        return draft;
    }

    Piece piece() {
        return piece;
    }

    Style style() {
        return style;
    }

    CuttingLine line() {
        return line;
    }

    Unfolding unfolding() {
        return unfolding;
    }

    Motion place() {
        return place;
    }

    /** The rings to cut along. */
    List<List<Point>> cutting() {
        return cutting;
    }

    /** Whether this is cut along the same line as another size. */
    boolean isCutLike(LaidSize other) {
        return cutting.size() == other.cutting.size()
                && IntStream.range(0, cutting.size()).allMatch(i -> areClose(cutting.get(i), other.cutting.get(i)));
    }

    private static boolean areClose(List<Point> one, List<Point> other) {
        return one.size() == other.size()
                && IntStream.range(0, one.size())
                        .allMatch(i -> one.get(i).isCloseTo(other.get(i), Tolerance.LAST_DECIMAL));
    }

    /** The rings that the stitching line and the folds make. */
    List<List<Point>> stitching() {
        return rings(piece.outline().flatten(Tolerance.FLATTENING));
    }

    private List<List<Point>> rings(List<Point> ring) {
        return unfolding.rings(ring).stream().map(place::of).toList();
    }

    /** A line of the paper wherever it lies on the drawing: first as it is, then mirrored. */
    Stream<Path> images(Path path) {
        return unfolding.images().stream().map(image -> path.moved(image.then(place)));
    }

    Stream<Point> images(Point point) {
        return unfolding.images().stream().map(image -> place.of(image.of(point)));
    }
}
