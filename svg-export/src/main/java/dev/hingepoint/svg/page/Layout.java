package dev.hingepoint.svg.page;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Vector;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where the drawings of the first page and of the pieces lie on the sheet.
 *
 * @param shifts how each moves
 */
record Layout(List<Drawn> drawings, List<Vector> shifts, PrintOptions options) {
    private static final int MOST_COLUMNS = 8;

    /** How far in mm a piece keeps from the sheet's edges, where its line would run along a page's frame, and from the room of the next. */
    private static final double APART = 3;

    Layout {
        drawings = List.copyOf(drawings);
        shifts = List.copyOf(shifts);
    }

    static Layout of(List<Drawn> drawings, List<dev.hingepoint.pattern.Lays.Way> ways, PrintOptions options) {
        List<Box> rooms =
                drawings.stream().map(piece -> piece.bounds().grownBy(APART)).toList();
        double widest = rooms.stream().mapToDouble(Box::width).max().orElseThrow();
        return IntStream.rangeClosed(1, MOST_COLUMNS)
                .filter(columns -> columns == MOST_COLUMNS || width(columns, options) >= widest)
                .boxed()
                .flatMap(columns -> Stream.of(new WholeOnAPage(options), Packing.Grid.FREE)
                        .map(grid -> Packing.shifts(rooms, Math.max(width(columns, options), widest), grid)))
                .map(shifts -> new Layout(drawings, shifts, options))
                .min(Comparator.comparingInt(layout -> Tiling.count(layout.sheet(), options)))
                .orElseThrow();
    }

    Motion place(int i) {
        return Motion.shift(shifts.get(i));
    }

    private static double width(int columns, PrintOptions options) {
        return columns * options.stepAcross() + options.overlap();
    }

    /** The same places with other drawings. */
    Layout with(List<Drawn> others) {
        return new Layout(others, shifts, options);
    }

    Drawn sheet() {
        return IntStream.range(0, drawings.size())
                .mapToObj(this::laid)
                .reduce(Drawn::and)
                .orElseThrow();
    }

    /** One of the drawings in its place. */
    Drawn laid(int number) {
        return drawings.get(number).moved(Motion.shift(shifts.get(number)));
    }

    /** The strips across one of the drawings where pages will be joined, as it lies before it moves. */
    List<Box> jointsOn(int number) {
        Box box = laid(number).bounds();
        Vector back = shifts.get(number).negated();
        List<Box> joints = new ArrayList<>();
        for (double left = options.stepAcross(); left < box.right(); left += options.stepAcross()) {
            joints.add(new Box(left, box.top(), left + options.overlap(), box.bottom()).moved(back));
        }
        for (double top = options.stepDown(); top < box.bottom(); top += options.stepDown()) {
            joints.add(new Box(box.left(), top, box.right(), top + options.overlap()).moved(back));
        }
        return joints;
    }

    /** What is small enough for one page is not laid over a joint. */
    private record WholeOnAPage(PrintOptions options) implements Packing.Grid {
        @Override
        public double left(double left, double boxWidth) {
            return whole(left, boxWidth, options.stepAcross(), options.printableWidth());
        }

        @Override
        public double top(double top, double boxHeight) {
            return whole(top, boxHeight, options.stepDown(), options.printableHeight());
        }

        private static double whole(double from, double size, double step, double page) {
            double begun = Math.floor(from / step) * step;
            return size > page || from + size <= begun + page ? from : begun + step;
        }
    }
}
