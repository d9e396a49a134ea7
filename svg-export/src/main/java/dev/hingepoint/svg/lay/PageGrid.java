package dev.hingepoint.svg.lay;

/**
 * Squares that divide a page's step exactly, so that pages are joined along their lines.
 *
 * @param across how many squares a page's step has across
 * @param down how many squares a page's step has down
 */
record PageGrid(Pages pages, double apart, int across, int down) {
    /** More squares on a page say little more about where its joints fall. */
    private static final double MOST = 40_000;

    /** @param square size of a square in mm, about, where pages are not so large that they take too many */
    static PageGrid of(Pages pages, double apart, double square) {
        double size = Math.max(square, Math.sqrt(pages.stepAcross() * pages.stepDown() / MOST));
        return new PageGrid(
                pages, apart, (int) Math.ceil(pages.stepAcross() / size), (int) Math.ceil(pages.stepDown() / size));
    }

    double width() {
        return pages.stepAcross() / across;
    }

    double height() {
        return pages.stepDown() / down;
    }

    /** How many squares a shape's ground may reach beyond the sheet, with what it keeps round it. */
    int beyond() {
        return (int) Math.ceil(apart / 2 / Math.min(width(), height())) + 1;
    }

    /** How far in mm something of a size keeps from the edge of a page, where that page is the last: less than usual where it fits on one page only so. */
    double border(double size, double page) {
        return size <= page ? Math.min(apart, (page - size) / 2) : apart;
    }
}
