package dev.hingepoint.svg.lay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Looks for ways to lay shapes on sheets so that few pages are needed: shape after shape, following the most promising beginnings side by side.
 *
 * @see <a href="https://en.wikipedia.org/wiki/Beam_search">Beam search</a> (Lowerre, 1976)
 */
final class SheetSearch {
    /**
     * Where each shape lies, in the order in which they were given.
     *
     * @param columns width of the sheet in pages
     */
    record Found(List<Spot> spots, int columns, int pages) {
        double right() {
            return spots.stream().mapToDouble(Spot::right).max().orElse(0);
        }

        double bottom() {
            return spots.stream().mapToDouble(Spot::lower).max().orElse(0);
        }

        /** Fewer pages, or as many on a sheet that a table holds more easily. */
        boolean isBetterThan(Found other) {
            return pages < other.pages || pages == other.pages && right() + bottom() < other.right() + other.bottom();
        }
    }

    /** The places of some shapes: of all before, and of one more. */
    private record Branch(Optional<Branch> before, int number, Spot spot, int pages, int depth) {
        /** Its own shape and those before, the last first. */
        List<Branch> stem() {
            return Stream.iterate(Optional.of(this), Optional::isPresent, part -> part.get().before)
                    .map(Optional::get)
                    .toList();
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
        List<Optional<Branch>> branches = List.of(Optional.empty());
        for (int number : order.subList(0, order.size() - 1)) {
            branches = grown(branches, sheet -> sheet.choices(shapes.get(number)), number, columns)
                    .limit(most)
                    .map(Optional::of)
                    .toList();
        }
        int last = order.get(order.size() - 1);
        Branch best = grown(branches, sheet -> List.of(sheet.best(shapes.get(last), 0)), last, columns)
                .findFirst()
                .orElseThrow();
        return new Found(
                best.stem().stream()
                        .sorted(Comparator.comparingInt(Branch::number))
                        .map(Branch::spot)
                        .toList(),
                columns,
                best.pages());
    }

    /** Every branch with one more shape, in each of the places that are chosen for it: those first that need the fewest pages, and of them those that reach least far down. */
    private Stream<Branch> grown(
            List<Optional<Branch>> branches, Function<Sheet, List<Spot>> chosen, int number, int columns) {
        List<Branch> longer = new ArrayList<>();
        for (Optional<Branch> branch : branches) {
            Sheet sheet = new Sheet(grid, columns);
            branch.ifPresent(before -> before.stem().forEach(part -> sheet.put(part.spot())));
            int pages = sheet.pageCount();
            chosen.apply(sheet)
                    .forEach(spot -> longer.add(new Branch(
                            branch, number, spot, pages + spot.fresh(), Math.max(sheet.depth(), spot.bottom()))));
            effort += sheet.effort();
        }
        return longer.stream().sorted(Comparator.comparingInt(Branch::pages).thenComparingInt(Branch::depth));
    }

    /** Lays the shapes in an order, each at once where it is best among what lies lowest: as many times the work for as many times the shapes. */
    Found laidAtOnce(List<Integer> order, int columns) {
        Sheet sheet = new Sheet(grid, columns);
        Spot[] spots = new Spot[shapes.size()];
        int window = Fineness.window(shapes.stream().flatMap(List::stream).map(Lying::mask));
        for (int number : order) {
            spots[number] = sheet.best(shapes.get(number), Math.max(0, sheet.depth() - window));
            sheet.put(spots[number]);
        }
        effort += sheet.effort();
        return new Found(List.of(spots), columns, sheet.pageCount());
    }

    /** Takes each shape out and lays it anew where it needs the fewest pages, as long as that saves any and no more is looked at than allowed. */
    Found improved(Found found, long most) {
        Sheet sheet = new Sheet(grid, found.columns());
        Spot[] spots = found.spots().toArray(Spot[]::new);
        for (Spot spot : spots) {
            sheet.put(spot);
        }
        int before = Integer.MAX_VALUE;
        while (sheet.pageCount() < before) {
            before = sheet.pageCount();
            for (int i = 0; i < spots.length && effort + sheet.effort() < most; i++) {
                sheet.take(spots[i]);
                spots[i] = sheet.best(shapes.get(i), 0);
                sheet.put(spots[i]);
            }
        }
        effort += sheet.effort();
        return new Found(List.of(spots), found.columns(), sheet.pageCount());
    }
}
