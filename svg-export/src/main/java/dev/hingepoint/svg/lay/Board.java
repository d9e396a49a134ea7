package dev.hingepoint.svg.lay;

import java.util.Arrays;

/** The squares that are taken so far, on a strip of so many columns that is as long as it needs to be. */
final class Board {
    private static final int WORD = Long.SIZE;

    private final int columns;
    private final int words;
    private long[] bits;
    private int depth;
    private long effort;

    Board(int columns) {
        this.columns = columns;
        this.words = columns / WORD + 1;
        this.bits = new long[1024 * words];
    }

    /** The row below the lowest that was ever taken. */
    int depth() {
        return depth;
    }

    /** How many rows of masks were looked at so far. */
    long effort() {
        return effort;
    }

    /** Takes a mask's squares with its first at a column and row, or gives them back: a square is taken by one only. */
    void toggle(Mask mask, int x, int y) {
        depth = Math.max(depth, y + mask.rows());
        if (depth * words > bits.length) {
            bits = Arrays.copyOf(bits, 2 * depth * words);
        }
        for (int row = 0; row < mask.rows(); row++) {
            for (int run = mask.first()[row]; run < mask.first()[row + 1]; run++) {
                int end = x + mask.to()[run];
                for (int column = x + mask.from()[run]; column < end; ) {
                    int next = Math.min(end, (column / WORD + 1) * WORD);
                    bits[(y + row) * words + column / WORD] ^= Squares.run(column, next);
                    column = next;
                }
            }
        }
    }

    /**
     * Closes every place at which a mask would lie on what is taken, with its first row at {@code y}.
     *
     * @param closed bit x stands for the first column at x; those from {@code places} on are closed already
     * @return whether a place is still open
     */
    boolean close(Mask mask, int y, int places, long[] closed) {
        int[] first = mask.first();
        int looked = 0;
        effort++;
        for (int row : mask.order()) {
            effort++;
            if (y + row < depth
                    && closeRow(mask, first[row], first[row + 1], y + row, places, closed)
                    && looked++ % 4 == 0
                    && isClosed(closed)) {
                return false;
            }
        }
        return !isClosed(closed);
    }

    private boolean closeRow(Mask mask, int run, int endRun, int row, int places, long[] closed) {
        int base = row * words;
        boolean isAny = false;
        int from = next(base, 0, 0);
        while (from < columns) {
            int to = next(base, from, -1);
            for (int i = run; i < endRun; i++) {
                int left = Math.max(0, from - mask.to()[i] + 1);
                int end = Math.min(places, to - mask.from()[i]);
                while (left < end) {
                    int stop = Math.min(end, (left / WORD + 1) * WORD);
                    closed[left / WORD] |= Squares.run(left, stop);
                    left = stop;
                }
            }
            isAny = true;
            from = next(base, to, 0);
        }
        return isAny;
    }

    /** The first column from one on whose square is taken, or, with all bits flipped, is not. */
    private int next(int base, int from, long flip) {
        int word = from / WORD;
        if (word >= words) {
            return words * WORD;
        }
        long rest = (bits[base + word] ^ flip) & -1L << from;
        while (rest == 0) {
            if (++word == words) {
                return words * WORD;
            }
            rest = bits[base + word] ^ flip;
        }
        return word * WORD + Long.numberOfTrailingZeros(rest);
    }

    private static boolean isClosed(long[] closed) {
        for (long word : closed) {
            if (word != -1) {
                return false;
            }
        }
        return true;
    }
}
