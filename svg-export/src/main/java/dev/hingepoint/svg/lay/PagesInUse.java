package dev.hingepoint.svg.lay;

import java.util.Arrays;

/** Which pages of a sheet are needed so far, and by how many shapes. */
final class PagesInUse {
    private final int columns;
    private int[] uses;
    private long[] needed = new long[16];
    private int count;

    PagesInUse(int columns) {
        this.columns = columns;
        this.uses = new int[needed.length * columns];
    }

    int count() {
        return count;
    }

    /** How many pages more a shape would need. */
    int fresh(long[] pattern, int column, int row) {
        int fresh = 0;
        for (int page = row == 0 ? 1 : 0; page < pattern.length; page++) {
            int at = row + page - 1;
            long used = at < needed.length ? needed[at] : 0;
            fresh += Long.bitCount(onSheet(pattern, page, column, row) & ~used);
        }
        return fresh;
    }

    /** One row of a pattern. The strip before the first page counts for the first page. */
    private static long onSheet(long[] pattern, int page, int column, int row) {
        long bits = (row == 0 && page == 1 ? pattern[0] | pattern[1] : pattern[page]) << column;
        return bits >>> 1 | bits & 1;
    }

    void add(long[] pattern, int column, int row) {
        use(pattern, column, row, 1);
    }

    void remove(long[] pattern, int column, int row) {
        use(pattern, column, row, -1);
    }

    private void use(long[] pattern, int column, int row, int times) {
        if (row + pattern.length > needed.length) {
            needed = Arrays.copyOf(needed, 2 * (row + pattern.length));
            uses = Arrays.copyOf(uses, needed.length * columns);
        }
        for (int page = row == 0 ? 1 : 0; page < pattern.length; page++) {
            int at = row + page - 1;
            for (long rest = onSheet(pattern, page, column, row); rest != 0; rest &= rest - 1) {
                int across = Long.numberOfTrailingZeros(rest);
                boolean was = uses[at * columns + across] > 0;
                uses[at * columns + across] += times;
                boolean is = uses[at * columns + across] > 0;
                if (was != is) {
                    needed[at] ^= 1L << across;
                    count += times;
                }
            }
        }
    }
}
