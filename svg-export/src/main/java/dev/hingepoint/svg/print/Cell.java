package dev.hingepoint.svg.print;

import java.util.Comparator;

/** The place of a page on the sheet, from 0. */
record Cell(int row, int column) implements Comparable<Cell> {
    private static final Comparator<Cell> ORDER =
            Comparator.comparingInt(Cell::row).thenComparingInt(Cell::column);

    Cell right() {
        return new Cell(row, column + 1);
    }

    Cell left() {
        return new Cell(row, column - 1);
    }

    Cell below() {
        return new Cell(row + 1, column);
    }

    Cell above() {
        return new Cell(row - 1, column);
    }

    /** The name of the page there: row and column from 1. */
    String name() {
        return (row + 1) + "." + (column + 1);
    }

    @Override
    public int compareTo(Cell other) {
        return ORDER.compare(this, other);
    }
}
