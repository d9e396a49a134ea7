package dev.hingepoint.svg.print;

import dev.hingepoint.curve.Box;
import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Vector;
import dev.hingepoint.svg.page.Drawn;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** Columns on leaf after leaf, that sections are set into one after the other. A heading is never parted from what follows it. */
final class Columns {
    private static final double GUTTER = 6;

    /** The narrowest column that is worth setting words in, and the widest that is easily read, in mm. */
    private static final double NARROWEST = 60;

    private static final double WIDEST = 112;

    /** A section of less height in mm is not parted. */
    private static final double MOST_KEPT = 120;

    private final List<Box> more;
    private final List<Drawn> leaves = new ArrayList<>();
    private final List<Box> open = new ArrayList<>();
    private double y;

    /** How far down words reach on the last leaf. */
    private double reached;

    /**
     * @param first the columns of the first leaf, in reading order
     * @param more those of every further leaf
     */
    Columns(Drawn firstLeaf, List<Box> first, List<Box> more) {
        this.more = List.copyOf(more);
        leaves.add(firstLeaf);
        open.addAll(first);
        y = first.isEmpty() ? 0 : first.get(0).top();
    }

    /** A box parted into columns; none where it is too small for any. */
    static List<Box> in(Box box) {
        if (box.width() < NARROWEST || box.height() < 2 * Section.HEADING + Section.TYPE) {
            return List.of();
        }
        int count = (int) Math.max(1, Math.ceil((box.width() + GUTTER) / (WIDEST + GUTTER)));
        double each = (box.width() + GUTTER) / count - GUTTER;
        return IntStream.range(0, count)
                .mapToObj(i -> {
                    double left = box.left() + i * (each + GUTTER);
                    return new Box(left, box.top(), left + each, box.bottom());
                })
                .toList();
    }

    /** A short section is kept whole, of a longer one each entry, with the heading the first. */
    void add(Section section) {
        if (open.isEmpty()) {
            next();
        }
        if (height(section.rows(width())) <= MOST_KEPT) {
            findRoom(() -> section.rows(width()));
        }
        for (int i = 0; i < section.entries().size(); i++) {
            int number = i;
            findRoom(() -> section.block(number, width())).forEach(this::set);
        }
    }

    private double width() {
        return open.get(0).width();
    }

    private static double height(List<Section.Row> rows) {
        return rows.stream().mapToDouble(Section.Row::height).sum();
    }

    /**
     * Goes on to the next column that has room, or, where none ever has, to a whole one.
     *
     * @param set the rows as they are set in the column that is open
     */
    private List<Section.Row> findRoom(Supplier<List<Section.Row>> set) {
        List<Section.Row> rows = set.get();
        for (int tried = 0; y + height(rows) > open.get(0).bottom() && tried <= open.size() + more.size(); tried++) {
            next();
            rows = set.get();
        }
        return rows;
    }

    /** A leaf of its own for something that is drawn. */
    void add(Drawn leaf) {
        open.clear();
        leaves.add(leaf);
        reached = Double.POSITIVE_INFINITY;
    }

    private void next() {
        if (!open.isEmpty()) {
            open.remove(0);
        }
        if (open.isEmpty()) {
            leaves.add(Drawn.NOTHING);
            open.addAll(more);
            reached = 0;
        }
        y = open.get(0).top();
    }

    private void set(Section.Row row) {
        int last = leaves.size() - 1;
        Motion place = Motion.shift(new Vector(open.get(0).left(), y));
        leaves.set(last, leaves.get(last).and(row.drawn().moved(place)));
        y += row.height();
        reached = Math.max(reached, y);
    }

    /** How far down in mm words reach on the last leaf; all of it where there is only the first, which the squares stand on. */
    double reached() {
        return leaves.size() > 1 ? reached : Double.POSITIVE_INFINITY;
    }

    /** Every leaf, in order. */
    List<Drawn> leaves() {
        return List.copyOf(leaves);
    }
}
