package dev.hingepoint.svg.lay;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Tolerance;
import java.util.Arrays;
import java.util.List;

/**
 * A shape that lies one way round on the squares of a sheet.
 *
 * @param left where its bounds begin when its first column is at 0, in mm
 * @param top where its bounds begin when its first row is at 0, in mm
 * @param isGoodAcross for each column of a page, whether it may begin there
 * @param isGoodDown for each row of a page, whether it may begin there
 */
record Lying(
        PageGrid grid,
        Turned shape,
        Mask mask,
        Footprint footprint,
        double left,
        double top,
        boolean[] isGoodAcross,
        boolean[] isGoodDown) {
    static List<Lying> of(Shape shape, PageGrid grid) {
        return Turned.of(shape).stream().map(turned -> of(turned, grid)).toList();
    }

    private static Lying of(Turned shape, PageGrid grid) {
        Pages pages = grid.pages();
        double left = grid.border(shape.width(), pages.width());
        double top = grid.border(shape.height(), pages.height());
        Squares taken = new Squares(
                new Squares.Grid(
                        -left - grid.beyond() * grid.width(),
                        -top - grid.beyond() * grid.height(),
                        grid.width(),
                        grid.height()),
                (int) Math.ceil((shape.width() + 2 * left) / grid.width()) + 2 * grid.beyond(),
                (int) Math.ceil((shape.height() + 2 * top) / grid.height()) + 2 * grid.beyond());
        taken.cover(shape.grounds(), grid.apart() / 2);
        boolean isWhole = shape.width() <= pages.width() && shape.height() <= pages.height();
        return new Lying(
                grid,
                shape,
                Mask.of(taken),
                Footprint.of(shape, pages, left, top, grid.across(), grid.down()),
                left,
                top,
                good(shape.width(), left, pages.width(), pages.stepAcross(), grid.across(), isWhole),
                good(shape.height(), top, pages.height(), pages.stepDown(), grid.down(), isWhole));
    }

    /** Where on a page something may begin: so that it does not end near a page's end, and ends on the same page where it is to lie whole on one. */
    private static boolean[] good(double size, double border, double page, double step, int squares, boolean isWhole) {
        boolean[] good = new boolean[squares];
        for (int i = 0; i < squares; i++) {
            double end = border + i * step / squares + size - Tolerance.COINCIDENT;
            double pageEnd = page + step * Math.max(0, Math.ceil((end - page) / step));
            good[i] = end <= pageEnd - border && !(isWhole && pageEnd > page);
        }
        return good;
    }

    Motion at(int column, int row) {
        return shape.to(left + column * grid.width(), top + row * grid.height());
    }

    /** At how many columns it may begin on a sheet of a width in mm. */
    int places(double width) {
        double free = width - shape.width() - 2 * left + Tolerance.COINCIDENT;
        return free < 0 ? 0 : (int) (free / grid.width()) + 1;
    }

    /** Bits of so many places, on for those where it may not begin. */
    long[] shut(int places) {
        long[] shut = new long[BitRows.words(places)];
        Arrays.fill(shut, -1);
        for (int x = 0; x < places; x++) {
            if (isGoodAcross[x % grid.across()]) {
                BitRows.change(shut, 0, x, x + 1, BitRows.OFF);
            }
        }
        return shut;
    }
}
