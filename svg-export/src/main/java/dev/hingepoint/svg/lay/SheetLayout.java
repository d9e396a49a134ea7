package dev.hingepoint.svg.lay;

import dev.hingepoint.curve.Motion;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Lays shapes on a sheet that is cut into pages, so that few pages are needed: the fewest that it finds, not the fewest there are.
 *
 * <p>Guarantees: shapes keep {@code apart} from each other; each lies one of the ways that it may lie; what fits on one page lies whole on one. They keep as far from the
 * sheet's edges, but for a shape that fits on a page only nearer to them. Never more pages than for the shapes in one row where that row keeps to all of this. The same
 * shapes always lie the same way.
 */
public final class SheetLayout {
    /** Sheets wider than this are no easier to tape together, and no emptier. */
    private static final int MOST_COLUMNS = 8;

    /** The pages of a row are the bits of one word, with some to spare for those before and after it. */
    private static final int WIDEST = 60;

    /** How many times {@link Fineness#EFFORT} may be looked at in all, with what improves the best that was found. */
    private static final int IMPROVING = 2;

    /** So many beginnings are followed where there are few shapes: more find nothing better. */
    private static final int BEGINNINGS = 30;

    private final List<Shape> shapes;
    private final List<List<Lying>> ways;
    private final PageGrid grid;
    private final SheetSearch search;

    private SheetLayout(List<Shape> shapes, PageGrid grid) {
        this.shapes = shapes;
        this.grid = grid;
        this.ways = shapes.stream().map(shape -> Lying.of(shape, grid)).toList();
        this.search = new SheetSearch(ways, grid);
    }

    /** Width in mm of the widest shape that can be laid on pages. */
    public static double widest(Pages pages, double apart) {
        return WIDEST * pages.stepAcross() + pages.overlap() - 2 * apart - pages.stepAcross();
    }

    /**
     * @param apart how far in mm shapes keep from each other and from the sheet's edges, at least
     * @throws IllegalArgumentException for a shape wider than 60 pages
     */
    public static Laid laid(List<Shape> shapes, Pages pages, double apart) {
        if (shapes.isEmpty()) {
            return new Laid(List.of(), 0, 0);
        }
        Optional<Laid> onOnePage = onOnePage(shapes, pages, apart);
        if (onOnePage.isPresent()) {
            return onOnePage.get();
        }
        SheetLayout layout = new SheetLayout(shapes, PageGrid.of(pages, apart, Fineness.square(shapes.size())));
        SheetSearch.Found best = layout.search.improved(layout.best(), IMPROVING * Fineness.EFFORT);
        Laid laid = layout.laid(best.spots());
        return layout.row()
                .filter(row -> pages.needed(shapes, row) < best.pages())
                .orElse(laid);
    }

    private static Optional<Laid> onOnePage(List<Shape> shapes, Pages pages, double apart) {
        return Optional.of(pages.width())
                .filter(width -> StripLayout.narrowest(shapes, apart) <= width)
                .map(width -> StripLayout.laid(shapes, width, apart))
                .filter(laid -> laid.height() <= pages.height());
    }

    private SheetSearch.Found best() {
        List<List<Integer>> orders =
                Orders.largestFirst(ways.stream().map(way -> way.get(0).shape()).toList());
        List<Integer> columns = columns();
        SheetSearch.Found best = search.laidAtOnce(orders.get(0), columns.get(0));
        long once = search.effort();
        int beginnings = (int) Math.max(1, Math.min(BEGINNINGS, Fineness.EFFORT / (3 * once)));
        for (int across : columns) {
            for (List<Integer> order : orders) {
                if (search.effort() + once * beginnings > Fineness.EFFORT) {
                    return best;
                }
                SheetSearch.Found found =
                        beginnings > 1 ? search.laid(order, across, beginnings) : search.laidAtOnce(order, across);
                if (found.isBetterThan(best)) {
                    best = found;
                }
            }
        }
        return best;
    }

    /** Widths of sheets in pages that hold every shape, those first that make the sheet about square. */
    private List<Integer> columns() {
        double area = ways.stream()
                .map(way -> way.get(0).shape())
                .mapToDouble(shape -> shape.width() * shape.height())
                .sum();
        double square = Math.sqrt(area) / grid.pages().stepAcross();
        int fewest = 1;
        while (!holdsAll(fewest)) {
            fewest++;
        }
        if (fewest > WIDEST) {
            throw new IllegalArgumentException("a sheet is at most " + WIDEST + " pages wide, not " + fewest);
        }
        return IntStream.rangeClosed(fewest, Math.max(fewest, MOST_COLUMNS))
                .boxed()
                .sorted(Comparator.comparingDouble(columns -> Math.abs(columns - square)))
                .toList();
    }

    private boolean holdsAll(int columns) {
        double width = Sheet.width(grid, columns);
        return ways.stream().allMatch(way -> way.stream().anyMatch(lying -> lying.places(width) > 0));
    }

    private Laid laid(List<Spot> spots) {
        List<Motion> places = new ArrayList<>();
        double right = 0;
        double bottom = 0;
        for (Spot spot : spots) {
            places.add(spot.motion());
            right = Math.max(right, spot.right());
            bottom = Math.max(bottom, spot.lower());
        }
        return new Laid(places, right, bottom);
    }

    /** The shapes beside one another, where each keeps to one page that can. */
    private Optional<Laid> row() {
        Pages pages = grid.pages();
        List<Motion> places = new ArrayList<>();
        double left = grid.apart();
        double bottom = 0;
        for (List<Lying> way : ways) {
            Turned turned = way.get(0).shape();
            double page = Math.floor(left / pages.stepAcross()) * pages.stepAcross();
            boolean isWhole = turned.width() <= pages.width() && turned.height() <= pages.height();
            if (isWhole
                    && (left + turned.width() > page + pages.width()
                            || grid.apart() + turned.height() > pages.height())) {
                return Optional.empty();
            }
            places.add(turned.to(left, grid.apart()));
            left += turned.width() + grid.apart();
            bottom = Math.max(bottom, turned.height() + 2 * grid.apart());
        }
        return Optional.of(new Laid(places, left, bottom));
    }
}
