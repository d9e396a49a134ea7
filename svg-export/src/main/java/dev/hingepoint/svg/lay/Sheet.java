package dev.hingepoint.svg.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A sheet so many pages wide, and what lies on it. */
final class Sheet {
    /** What stands where a number of pages would: it was not asked for yet; none of the places is wanted any more. */
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

    /** A place for each choice of pages on which a shape needs the fewest pages more. */
    List<Spot> choices(List<Lying> ways) {
        Choices choices = new Choices();
        for (Lying lying : ways) {
            search(lying, 0, choices);
        }
        return choices.spots.stream()
                .filter(spot -> spot.fresh() == choices.fewest)
                .toList();
    }

    /** What a search looks for. */
    private interface Wanted {
        /** A place that needs more pages need not be looked at. */
        int most(int bottom);

        /** Takes a place that does not need too many, and says whether no other on the same pages is wanted. */
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
            spot = other;
            return false;
        }
    }

    private static final class Choices implements Wanted {
        private final List<Spot> spots = new ArrayList<>();
        private int fewest = TAKEN - 1;

        @Override
        public int most(int bottom) {
            return fewest;
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
        if (places > 0) {
            new Search(lying, places, from, wanted).run();
        }
    }

    /** Looks for places of a shape that lies one way round, row by row of squares. */
    private final class Search {
        private final Lying lying;
        private final Footprint footprint;
        private final int places;
        private final int from;
        private final int end;
        private final Wanted wanted;
        private final long[] shut;
        private final long[] closed;

        /** How many pages more each pattern needs from each page on, as far as that was asked. */
        private final int[] fresh;

        Search(Lying lying, int places, int from, Wanted wanted) {
            this.lying = lying;
            this.footprint = lying.footprint();
            this.places = places;
            this.from = from;
            this.end = board.depth() + footprint.down();
            this.wanted = wanted;
            this.shut = lying.shut(places);
            this.closed = new long[shut.length];
            int pageRows = end / footprint.down() - from / footprint.down() + 1;
            this.fresh = new int[pageRows * columns * footprint.patterns().size()];
            Arrays.fill(fresh, NOT_ASKED);
        }

        void run() {
            for (int y = from; y <= end; y++) {
                int most = wanted.most(y + lying.mask().rows());
                if (most < 0) {
                    return;
                }
                // pages are soon counted, and most places need too many
                if (lying.isGoodDown()[y % footprint.down()]
                        && isAnyOpened(y, most)
                        && board.close(lying.mask(), y, places, closed)) {
                    takeOpen(y);
                }
            }
        }

        /** Opens the places of a row that need few enough pages, and closes all others. */
        private boolean isAnyOpened(int y, int most) {
            int across = footprint.across();
            int[] runs = footprint.runs()[y % footprint.down()];
            boolean isAny = false;
            Arrays.fill(closed, -1);
            for (int column = 0; column < columns; column++) {
                for (int i = 0; i < runs.length; i += 2) {
                    int left = column * across + runs[i];
                    int right = column * across + (i + 2 < runs.length ? runs[i + 2] : across);
                    if (left < places && fresh(runs[i + 1], column, y) <= most) {
                        BitRows.change(closed, 0, left, Math.min(places, right), BitRows.OFF);
                        isAny = true;
                    }
                }
            }
            for (int i = 0; i < shut.length; i++) {
                closed[i] |= shut[i];
            }
            return isAny;
        }

        private void takeOpen(int y) {
            for (int x = open(0); x < places; x = open(x + 1)) {
                int number = footprint.number(x, y);
                int column = x / footprint.across();
                int needed = fresh(number, column, y);
                if (needed <= wanted.most(y + lying.mask().rows()) && wanted.take(new Spot(lying, x, y, needed))) {
                    fresh[index(number, column, y)] = TAKEN;
                }
            }
        }

        private int open(int x) {
            return BitRows.nextOff(closed, 0, closed.length, x);
        }

        private int fresh(int number, int column, int y) {
            int index = index(number, column, y);
            if (fresh[index] == NOT_ASKED) {
                fresh[index] = pages.fresh(footprint.patterns().get(number), column, y / footprint.down());
            }
            return fresh[index];
        }

        private int index(int number, int column, int y) {
            int pageRow = y / footprint.down() - from / footprint.down();
            return (pageRow * columns + column) * footprint.patterns().size() + number;
        }
    }
}
