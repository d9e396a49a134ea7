package dev.hingepoint.svg.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A sheet so many pages wide, and what lies on it. */
final class Sheet {
    private static final int NOT_ASKED = -1;
    private static final int TAKEN = Integer.MAX_VALUE;

    private final int columns;
    private final double width;
    private final Board board;
    private final PagesInUse pages;

    Sheet(PageGrid grid, int columns) {
        this.columns = columns;
        this.width = width(grid, columns);
        this.board = new Board((int) Math.ceil(width / grid.width()) + 2 * grid.beyond());
        this.pages = new PagesInUse(columns + 1);
    }

    /** Width in mm of so many pages. */
    static double width(PageGrid grid, int columns) {
        return columns * grid.pages().stepAcross() + grid.pages().overlap();
    }

    int pageCount() {
        return pages.count();
    }

    int depth() {
        return board.depth();
    }

    /** How many rows of squares were looked at so far. */
    long effort() {
        return board.effort();
    }

    void put(Spot spot) {
        board.toggle(spot.lying().mask(), spot.x(), spot.y());
        pages.add(spot.pattern(), spot.column(), spot.row());
    }

    void take(Spot spot) {
        board.toggle(spot.lying().mask(), spot.x(), spot.y());
        pages.remove(spot.pattern(), spot.column(), spot.row());
    }

    /** Where a shape needs the fewest pages more; of such places, where it reaches least far down, and then left. */
    Spot best(List<Lying> ways, int from) {
        Best best = new Best();
        for (Lying lying : ways) {
            search(lying, from, best);
        }
        return best.spot;
    }

    /** A place for each choice of pages that a shape may lie on and that needs no more than {@code slack} pages beyond the fewest. */
    List<Spot> choices(List<Lying> ways, int slack) {
        Choices choices = new Choices(slack);
        for (Lying lying : ways) {
            search(lying, 0, choices);
        }
        return choices.spots.stream()
                .filter(spot -> spot.fresh() <= choices.fewest + slack)
                .toList();
    }

    /** What a search looks for. */
    private interface Wanted {
        /** A place that needs more pages need not be looked at. */
        int most(int bottom);

        /** Takes a place, and says whether no other on the same pages is wanted. */
        boolean take(Spot spot);
    }

    private static final class Best implements Wanted {
        private Spot spot;

        @Override
        public int most(int bottom) {
            return spot == null ? TAKEN - 1 : bottom < spot.bottom() ? spot.fresh() : spot.fresh() - 1;
        }

        @Override
        public boolean take(Spot other) {
            if (other.fresh() <= most(other.bottom())) {
                spot = other;
            }
            return false;
        }
    }

    private static final class Choices implements Wanted {
        private final int slack;
        private final List<Spot> spots = new ArrayList<>();
        private int fewest = TAKEN;

        Choices(int slack) {
            this.slack = slack;
        }

        @Override
        public int most(int bottom) {
            return spots.isEmpty() ? TAKEN - 1 : fewest + slack;
        }

        @Override
        public boolean take(Spot spot) {
            spots.add(spot);
            fewest = Math.min(fewest, spot.fresh());
            return true;
        }
    }

    private void search(Lying lying, int from, Wanted wanted) {
        int places = lying.places(width);
        if (places == 0) {
            return;
        }
        Footprint footprint = lying.footprint();
        int across = footprint.across();
        int down = footprint.down();
        int numbers = footprint.patterns().size();
        int end = board.depth() + down;
        int[] fresh = new int[(end / down + 1) * columns * numbers];
        Arrays.fill(fresh, NOT_ASKED);
        long[] shut = lying.shut(places);
        long[] closed = new long[shut.length];
        for (int y = from; y <= end; y++) {
            int most = wanted.most(y + lying.mask().rows());
            if (most < 0) {
                return;
            }
            if (!lying.isGoodDown()[y % down]) {
                continue;
            }
            // pages are soon counted; most places need too many
            Arrays.fill(closed, -1);
            boolean isAny = false;
            int[] runs = footprint.runs()[y % down];
            for (int column = 0; column < columns && column * across < places; column++) {
                int base = (y / down * columns + column) * numbers;
                for (int i = 0; i < runs.length; i += 2) {
                    int left = column * across + runs[i];
                    if (left >= places) {
                        break;
                    }
                    int at = base + runs[i + 1];
                    if (fresh[at] == NOT_ASKED) {
                        fresh[at] = pages.fresh(footprint.patterns().get(runs[i + 1]), column, y / down);
                    }
                    if (fresh[at] <= most) {
                        int stop = i + 2 < runs.length ? column * across + runs[i + 2] : (column + 1) * across;
                        Squares.clear(closed, left, Math.min(places, stop));
                        isAny = true;
                    }
                }
            }
            if (!isAny) {
                continue;
            }
            for (int i = 0; i < shut.length; i++) {
                closed[i] |= shut[i];
            }
            if (!board.close(lying.mask(), y, places, closed)) {
                continue;
            }
            for (int x = Squares.nextClear(closed, 0); x < places; x = Squares.nextClear(closed, x + 1)) {
                int at = (y / down * columns + x / across) * numbers
                        + footprint.numbers()[y % down * across + x % across];
                if (fresh[at] <= wanted.most(y + lying.mask().rows())
                        && wanted.take(new Spot(lying, x, y, fresh[at]))) {
                    fresh[at] = TAKEN;
                }
            }
        }
    }
}
