package dev.hingepoint.svg.lay;

import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import java.util.List;

/** The squares of a grid, each on or off: rows of bits in long words. */
final class Squares {
    /**
     * Where a grid lies.
     *
     * @param left of the first column, in mm
     * @param top of the first row, in mm
     * @param across width of a column in mm
     * @param down height of a row in mm
     */
    record Grid(double left, double top, double across, double down) {}

    final int columns;
    final int rows;
    private final Grid grid;
    private final int words;
    private final long[] bits;

    Squares(Grid grid, int columns, int rows) {
        this.grid = grid;
        this.columns = columns;
        this.rows = rows;
        this.words = BitRows.words(columns);
        this.bits = new long[rows * words];
    }

    /** Turns on every square that comes nearer than {@code reach} mm to what lies within the rings. */
    void cover(List<List<Point>> rings, double reach) {
        for (List<Point> ring : rings) {
            // a square that no line crosses lies inside or outside as a whole, as its middle does
            fill(ring);
            draw(ring, reach);
        }
    }

    /** Turns on every square that comes nearer than {@code reach} mm to a ring's line. */
    void draw(List<Point> ring, double reach) {
        for (int i = 0; i < ring.size(); i++) {
            draw(ring.get(i), ring.get((i + 1) % ring.size()), reach);
        }
    }

    private void draw(Point from, Point to, double reach) {
        double highest = Math.min(from.y(), to.y());
        double lowest = Math.max(from.y(), to.y());
        boolean isLevel = lowest - highest <= Tolerance.COINCIDENT;
        double slope = isLevel ? 0 : (to.x() - from.x()) / (to.y() - from.y());
        int end = (int) Math.ceil((lowest + reach - grid.top) / grid.down);
        // what lies on the line between two squares is of the one before it
        int first = Math.min(end - 1, (int) Math.floor((highest - reach - grid.top) / grid.down));
        for (int row = Math.max(0, first); row < Math.min(rows, end); row++) {
            double one = from.x();
            double other = to.x();
            if (slope != 0) {
                // the part of the line that is near enough to the row
                double top = grid.top + row * grid.down - reach;
                double bottom = top + grid.down + 2 * reach;
                one = from.x() + slope * (Math.min(lowest, Math.max(highest, top)) - from.y());
                other = from.x() + slope * (Math.max(highest, Math.min(lowest, bottom)) - from.y());
            }
            int right = (int) Math.ceil((Math.max(one, other) + reach - grid.left) / grid.across);
            int left = Math.min(right - 1, (int) Math.floor((Math.min(one, other) - reach - grid.left) / grid.across));
            turnOn(row, Math.max(0, left), Math.min(columns, right));
        }
    }

    /** Turns on every square whose middle is inside: each line toggles the first middle to its right, and what is between two toggles is inside. */
    private void fill(List<Point> ring) {
        Squares toggles = new Squares(grid, columns + 1, rows);
        for (int i = 0; i < ring.size(); i++) {
            Point from = ring.get(i);
            Point to = ring.get((i + 1) % ring.size());
            int first = middleFrom(Math.min(from.y(), to.y()));
            int end = middleFrom(Math.max(from.y(), to.y()));
            for (int row = Math.max(0, first); row < Math.min(rows, end); row++) {
                double y = grid.top + (row + 0.5) * grid.down;
                double x = from.x() + (to.x() - from.x()) * (y - from.y()) / (to.y() - from.y());
                int column = (int) Math.ceil((x - grid.left) / grid.across - 0.5);
                toggles.toggle(row, Math.max(0, Math.min(columns, column)));
            }
        }
        for (int row = 0; row < rows; row++) {
            int from = toggles.nextOn(row, 0);
            while (from < columns) {
                int to = toggles.nextOn(row, from + 1);
                turnOn(row, from, Math.min(columns, to));
                from = toggles.nextOn(row, to + 1);
            }
        }
    }

    /** The first row whose middle is at {@code y} or below. */
    private int middleFrom(double y) {
        return (int) Math.ceil((y - grid.top) / grid.down - 0.5);
    }

    private void toggle(int row, int column) {
        BitRows.change(bits, row * words, column, column + 1, BitRows.FLIPPED);
    }

    private void turnOn(int row, int from, int to) {
        BitRows.change(bits, row * words, from, to, BitRows.ON);
    }

    /** How many squares are on, the first column taken for one with the second, and the first row with the second. */
    int countJoined() {
        int count = 0;
        for (int row = 1; row < rows; row++) {
            for (int column = 1; column < columns; column++) {
                boolean isOn = false;
                for (int above = row == 1 ? 0 : row; above <= row; above++) {
                    for (int before = column == 1 ? 0 : column; before <= column; before++) {
                        isOn |= isOn(above, before);
                    }
                }
                count += isOn ? 1 : 0;
            }
        }
        return count;
    }

    boolean isOn(int row, int column) {
        return (bits[row * words + column / Long.SIZE] >>> column & 1) != 0;
    }

    /** The first square of a row that is on, from a column; at least {@link #columns} where there is none. */
    int nextOn(int row, int from) {
        return BitRows.nextOn(bits, row * words, (row + 1) * words, from);
    }

    int nextOff(int row, int from) {
        return BitRows.nextOff(bits, row * words, (row + 1) * words, from);
    }
}
