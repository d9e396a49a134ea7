package dev.hingepoint.svg.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Looks for ways to lay shapes on sheets so that few pages are needed: shape after shape, following the most promising beginnings side by side.
 *
 * @see <a href="https://en.wikipedia.org/wiki/Beam_search">Beam search</a> (Lowerre, 1976)
 */
final class SheetSearch {
    /** Where each shape lies, in the order in which they were given. */
    record Found(List<Spot> spots, int pages) {
        double right() {
            return spots.stream().mapToDouble(Spot::right).max().orElse(0);
        }

        double bottom() {
            return spots.stream().mapToDouble(Spot::lower).max().orElse(0);
        }

        boolean isBetterThan(Found other) {
            return pages < other.pages || pages == other.pages && right() * bottom() < other.right() * other.bottom();
        }
    }

    /** The places of some shapes: of all before, and of one more. */
    private record Branch(Optional<Branch> before, int number, Spot spot, int pages, int depth) {
        List<Branch> stem() {
            List<Branch> stem = new ArrayList<>(before.map(Branch::stem).orElse(List.of()));
            stem.add(this);
            return stem;
        }
    }

    private final List<List<Lying>> shapes;
    private final PageGrid grid;
    private long effort;

    SheetSearch(List<List<Lying>> shapes, PageGrid grid) {
        this.shapes = shapes;
        this.grid = grid;
    }

    /** How many rows of squares were looked at so far. */
    long effort() {
        return effort;
    }

    /**
     * Lays the shapes in an order.
     *
     * @param columns width of the sheet in pages
     * @param most how many beginnings are followed
     */
    Found laid(List<Integer> order, int columns, int most) {
        List<Branch> branches = List.of();
        for (int i = 0; i < order.size(); i++) {
            boolean isLast = i == order.size() - 1;
            List<Branch> longer = new ArrayList<>();
            if (i == 0) {
                grow(Optional.empty(), order.get(i), columns, isLast, longer);
            }
            for (Branch branch : branches) {
                grow(Optional.of(branch), order.get(i), columns, isLast, longer);
            }
            branches = longer.stream()
                    .sorted(Comparator.comparingInt(Branch::pages).thenComparingInt(Branch::depth))
                    .limit(most)
                    .toList();
        }
        Branch best = branches.get(0);
        return new Found(
                best.stem().stream()
                        .sorted(Comparator.comparingInt(Branch::number))
                        .map(Branch::spot)
                        .toList(),
                best.pages());
    }

    private void grow(Optional<Branch> branch, int number, int columns, boolean isLast, List<Branch> longer) {
        Sheet sheet = new Sheet(grid, columns);
        branch.ifPresent(before -> before.stem().forEach(part -> sheet.put(part.spot())));
        int pages = sheet.pageCount();
        List<Spot> spots = isLast ? List.of(sheet.best(shapes.get(number), 0)) : sheet.choices(shapes.get(number), 0);
        spots.forEach(spot -> longer.add(
                new Branch(branch, number, spot, pages + spot.fresh(), Math.max(sheet.depth(), spot.bottom()))));
        effort += sheet.effort();
    }
}
