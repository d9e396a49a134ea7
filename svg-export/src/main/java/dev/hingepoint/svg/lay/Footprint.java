package dev.hingepoint.svg.lay;

import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The pages that a turned shape is drawn on, for each place that it may have on its first page. A page counts from where the strip ends that it shares with the one
 * before it: each point of the sheet counts for one page.
 *
 * @param across how many squares a page's step has across
 * @param numbers of the pattern for each place, row by row
 * @param runs for each row, where along it the number changes, and to which
 * @param patterns rows of bits: pages from the one before the first
 */
record Footprint(int across, int down, int[] numbers, int[][] runs, List<long[]> patterns) {
    /**
     * @param left where a shape's bounds begin on a sheet when its first column is at 0, in mm
     */
    static Footprint of(Turned shape, Pages pages, double left, double top, int across, int down) {
        double width = pages.stepAcross() / across;
        double height = pages.stepDown() / down;
        // the lines of the grid lie where pages begin to count
        double gridLeft = pages.overlap() - left - width * Math.floor((pages.overlap() - left) / width) - width;
        double gridTop = pages.overlap() - top - height * Math.floor((pages.overlap() - top) / height) - height;
        int jointAcross = (int) Math.rint((pages.overlap() - left - gridLeft) / width);
        int jointDown = (int) Math.rint((pages.overlap() - top - gridTop) / height);
        Squares ink = new Squares(
                new Squares.Grid(gridLeft, gridTop, width, height),
                (int) Math.ceil(shape.width() / width) + 2,
                (int) Math.ceil(shape.height() / height) + 2);
        for (List<Point> ring : shape.grounds()) {
            // what only touches where a page begins does not need it
            ink.draw(ring, -Tolerance.COINCIDENT);
        }
        int[][] sums = sums(ink);
        int[] numbers = new int[across * down];
        List<long[]> patterns = new ArrayList<>();
        Map<Long, List<Integer>> known = new HashMap<>();
        for (int y = 0; y < down; y++) {
            int[] rows = borders(ink.rows, y - jointDown, down);
            for (int x = 0; x < across; x++) {
                long[] pattern = pattern(sums, borders(ink.columns, x - jointAcross, across), rows);
                numbers[y * across + x] = number(pattern, patterns, known);
            }
        }
        int[][] runs = new int[down][];
        for (int y = 0; y < down; y++) {
            runs[y] = runs(numbers, y * across, across);
        }
        return new Footprint(across, down, numbers, runs, patterns);
    }

    private static int[] runs(int[] numbers, int from, int across) {
        return IntStream.range(0, across)
                .filter(x -> x == 0 || numbers[from + x] != numbers[from + x - 1])
                .flatMap(x -> IntStream.of(x, numbers[from + x]))
                .toArray();
    }

    /** The pages that are needed when the first column and row are at a place. */
    long[] pattern(int x, int y) {
        return patterns.get(number(x, y));
    }

    /** The number of that pattern. */
    int number(int x, int y) {
        return numbers[y % down * across + x % across];
    }

    private static int number(long[] pattern, List<long[]> patterns, Map<Long, List<Integer>> known) {
        List<Integer> same = known.computeIfAbsent((long) Arrays.hashCode(pattern), any -> new ArrayList<>());
        for (int number : same) {
            if (Arrays.equals(patterns.get(number), pattern)) {
                return number;
            }
        }
        patterns.add(pattern);
        same.add(patterns.size() - 1);
        return patterns.size() - 1;
    }

    /** How many squares are on above and left of each corner of the grid. */
    private static int[][] sums(Squares ink) {
        int[][] sums = new int[ink.rows + 1][ink.columns + 1];
        for (int row = 0; row < ink.rows; row++) {
            int inRow = 0;
            for (int column = 0; column < ink.columns; column++) {
                inRow += ink.isOn(row, column) ? 1 : 0;
                sums[row + 1][column + 1] = sums[row][column + 1] + inRow;
            }
        }
        return sums;
    }

    /** Where pages begin among so many squares, from the page before the first, whose beginning is taken for 0. */
    private static int[] borders(int squares, int offset, int step) {
        int last = Math.max(1, Math.floorDiv(squares - 1 + offset, step) + 1);
        int[] borders = new int[last + 2];
        for (int page = 1; page <= last + 1; page++) {
            borders[page] = Math.max(0, Math.min(squares, (page - 1) * step - offset));
        }
        return borders;
    }

    private static long[] pattern(int[][] sums, int[] columns, int[] rows) {
        long[] pattern = new long[rows.length - 1];
        for (int row = 0; row < pattern.length; row++) {
            int[] above = sums[rows[row]];
            int[] below = sums[rows[row + 1]];
            for (int column = 0; column < columns.length - 1; column++) {
                int from = columns[column];
                int to = columns[column + 1];
                if (below[to] - below[from] - above[to] + above[from] > 0) {
                    pattern[row] |= 1L << column;
                }
            }
        }
        return pattern;
    }
}
