package dev.hingepoint.svg.lay;

import java.util.Arrays;

/** The squares that something takes, as runs: those of row r have the numbers from {@code first[r]} up to {@code first[r + 1]}. */
record Mask(int columns, int rows, int[] first, int[] from, int[] to, int[] order) {
    /** Rows are looked at so far apart first: what hits something mostly hits it soon. */
    private static final int STRIDE = 16;

    static Mask of(Squares squares) {
        int[] first = new int[squares.rows + 1];
        int[] from = new int[16];
        int[] to = new int[16];
        int runs = 0;
        int columns = 0;
        int rows = 0;
        for (int row = 0; row < squares.rows; row++) {
            first[row] = runs;
            int column = squares.nextOn(row, 0);
            while (column < squares.columns) {
                if (runs == from.length) {
                    from = Arrays.copyOf(from, 2 * runs);
                    to = Arrays.copyOf(to, 2 * runs);
                }
                from[runs] = column;
                to[runs] = Math.min(squares.columns, squares.nextOff(row, column));
                columns = Math.max(columns, to[runs]);
                rows = row + 1;
                column = squares.nextOn(row, to[runs]);
                runs++;
            }
        }
        first[squares.rows] = runs;
        return new Mask(columns, rows, first, from, to, order(rows));
    }

    private static int[] order(int rows) {
        int[] order = new int[rows];
        int next = 0;
        for (int start = 0; start < STRIDE; start++) {
            // 0, 8, 4, 12, ...
            int begun = Integer.reverse(start) >>> Integer.SIZE - Integer.numberOfTrailingZeros(STRIDE);
            for (int row = begun; row < rows; row += STRIDE) {
                order[next++] = row;
            }
        }
        return order;
    }
}
