package dev.hingepoint.svg.lay;

import java.util.Arrays;

/** The squares that are taken so far, on a strip of so many columns that is as long as it needs to be. */
final class Board {
    /** After so many rows it is looked whether any place is left. */
    private static final int LOOKED = 4;

    private final int columns;
    private final int words;
    private long[] bits;
    private int depth;
    private long effort;

    Board(int columns) {
        this.columns = columns;
        this.words = BitRows.words(columns);
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
                BitRows.change(bits, (y + row) * words, x + mask.from()[run], x + mask.to()[run], BitRows.FLIPPED);
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
                    && looked++ % LOOKED == 0
                    && isClosed(closed)) {
                return false;
            }
        }
        return !isClosed(closed);
    }

    private boolean closeRow(Mask mask, int firstRun, int endRun, int row, int places, long[] closed) {
        int base = row * words;
        int from = BitRows.nextOn(bits, base, base + words, 0);
        boolean isAny = from < columns;
        while (from < columns) {
            int to = BitRows.nextOff(bits, base, base + words, from);
            for (int run = firstRun; run < endRun; run++) {
                int left = Math.max(0, from - mask.to()[run] + 1);
                BitRows.change(closed, 0, left, Math.min(places, to - mask.from()[run]), BitRows.ON);
            }
            from = BitRows.nextOn(bits, base, base + words, to);
        }
        return isAny;
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
