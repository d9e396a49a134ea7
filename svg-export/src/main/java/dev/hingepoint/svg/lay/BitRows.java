package dev.hingepoint.svg.lay;

/** Rows of bits in long words, each row beginning with a word of its own. */
final class BitRows {
    private BitRows() {}

    /** How many words hold a row of so many bits, and at least one bit more, which is always off. */
    static int words(int columns) {
        return columns / Long.SIZE + 1;
    }

    /** What is done to a word, given the bits of it that are meant. */
    interface Change {
        long of(long word, long bits);
    }

    static final Change ON = (word, bits) -> word | bits;
    static final Change OFF = (word, bits) -> word & ~bits;
    static final Change FLIPPED = (word, bits) -> word ^ bits;

    /**
     * Changes the bits from one column up to another.
     *
     * @param base the row's first word
     */
    static void change(long[] words, int base, int from, int to, Change change) {
        for (int column = from; column < to; ) {
            int end = Math.min(to, (column / Long.SIZE + 1) * Long.SIZE);
            int word = base + column / Long.SIZE;
            words[word] = change.of(words[word], -1L >>> Long.SIZE - (end - column) << column);
            column = end;
        }
    }

    /**
     * The first column, from one on, whose bit is on; the end of the row's words where there is none.
     *
     * @param base the row's first word
     * @param end the word after its last
     */
    static int nextOn(long[] words, int base, int end, int from) {
        return next(words, base, end, from, 0);
    }

    /** The first column, from one on, whose bit is off. */
    static int nextOff(long[] words, int base, int end, int from) {
        return next(words, base, end, from, -1);
    }

    private static int next(long[] words, int base, int end, int from, long flip) {
        int word = base + from / Long.SIZE;
        if (word >= end) {
            return (end - base) * Long.SIZE;
        }
        long rest = (words[word] ^ flip) & -1L << from;
        while (rest == 0) {
            if (++word == end) {
                return (end - base) * Long.SIZE;
            }
            rest = words[word] ^ flip;
        }
        return (word - base) * Long.SIZE + Long.numberOfTrailingZeros(rest);
    }
}
