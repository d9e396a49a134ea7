package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Line;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Path;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Drawn;
import dev.hingepoint.svg.page.Stroke;
import dev.hingepoint.svg.page.Style;
import dev.hingepoint.svg.page.Text;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Words beside a piece that has no room for them, each with a leader line to what it names. A leader ends in a dot, as one does that ends within an outline (drawing
 * practice after ISO 128, from memory).
 */
final class Beside {
    /** How far the words stand from the piece, and the rows from one another, in mm, times the distance that words keep. */
    private static final double GAP = 8;

    private static final double BETWEEN = 4;

    private static final double DOT = 0.6;

    /** From how many places of a row's edge a leader may begin. */
    private static final int STARTS = 5;

    private Beside() {}

    /**
     * Lines that belong together.
     *
     * @param targets the places at which a leader line may end, of what they name
     */
    record Row(List<String> lines, List<Point> targets) {
        Row {
            lines = List.copyOf(lines);
            targets = List.copyOf(targets);
        }

        Vector room(double size) {
            return new Vector(Block.of(lines).width(size), Block.of(lines).height(size));
        }
    }

    /**
     * The rows beside the longer side of a piece, so that the leaders are short: to its right, or below it.
     *
     * @param onPiece the words that a leader should not run through
     */
    static Drawn of(Box piece, List<Row> rows, List<Text> onPiece, TypeSizes types) {
        double gap = GAP * types.clear();
        double between = BETWEEN * types.clear();
        Vector all = rows.stream()
                .map(row -> row.room(types.beside()).plus(new Vector(between, between)))
                .reduce(new Vector(-between, -between), Vector::plus);
        boolean isRight = piece.height() >= piece.width();
        double middle = rows.stream()
                .map(row -> row.targets().get(0))
                .mapToDouble(at -> isRight ? at.y() : at.x())
                .average()
                .orElseThrow();
        Point corner = isRight
                ? new Point(piece.right() + gap, within(piece.top(), piece.bottom(), middle, all.y()))
                : new Point(within(piece.left(), piece.right(), middle, all.x()), piece.bottom() + gap);
        List<Line> leaders = new ArrayList<>();
        List<Text> texts = new ArrayList<>();
        Comparator<Row> order = Comparator.comparingDouble(
                row -> isRight ? row.targets().get(0).y() : row.targets().get(0).x());
        for (Row row : rows.stream().sorted(order).toList()) {
            Vector size = row.room(types.beside());
            Motion place = Motion.shift(corner.minus(new Point(0, 0)).plus(size.times(0.5)));
            Block.of(row.lines()).set(types.beside(), 0).forEach(text -> texts.add(text.moved(place)));
            Point from = corner;
            List<Point> starts = IntStream.rangeClosed(1, STARTS)
                    .mapToObj(i -> size.times((double) i / (STARTS + 1)))
                    .map(part -> from.plus(isRight ? new Vector(-1, part.y()) : new Vector(part.x(), -1)))
                    .toList();
            leaders.add(leader(starts, row.targets(), onPiece, leaders));
            corner = corner.plus(isRight ? new Vector(0, size.y() + between) : new Vector(size.x() + between, 0));
        }
        double dot = DOT * types.signs();
        return new Drawn(
                leaders.stream().flatMap(leader -> strokes(leader, dot)).toList(), texts);
    }

    /** Where a run of a size begins that lies round a middle, within two ends where it can. */
    private static double within(double from, double to, double middle, double size) {
        return Math.max(from, Math.min(to - size, middle - size / 2));
    }

    /** The shortest that runs through no word and crosses no other leader, or no word; the shortest of all where each does. */
    private static Line leader(List<Point> starts, List<Point> targets, List<Text> onPiece, List<Line> others) {
        List<Line> leaders = starts.stream()
                .flatMap(from -> targets.stream().map(to -> new Line(from, to)))
                .sorted(Comparator.comparingDouble(Line::length))
                .toList();
        List<Line> clear = leaders.stream()
                .filter(leader -> onPiece.stream().noneMatch(text -> crosses(leader, text)))
                .toList();
        return clear.stream()
                .filter(leader -> others.stream().noneMatch(other -> crosses(leader, Path.of(other))))
                .findFirst()
                .or(() -> clear.stream().findFirst())
                .orElse(leaders.get(0));
    }

    private static Stream<Stroke> strokes(Line leader, double size) {
        List<Point> dot = IntStream.rangeClosed(0, 12)
                .mapToObj(i ->
                        leader.end().plus(Vector.ofAngle(i * StrictMath.PI / 6).times(size / 2)))
                .toList();
        return Stream.of(Stroke.of(Style.LEADER, leader.start(), leader.end()), new Stroke(Style.MARK, dot));
    }

    private static boolean crosses(Line leader, Text text) {
        return crosses(leader, Path.through(text.corners()));
    }

    private static boolean crosses(Line leader, Path other) {
        return !other.crossings(leader).isEmpty();
    }
}
