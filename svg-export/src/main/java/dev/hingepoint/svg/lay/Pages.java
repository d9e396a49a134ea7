package dev.hingepoint.svg.lay;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Point;
import dev.hingepoint.curve.Tolerance;
import java.util.List;

/**
 * The pages that a sheet is cut into. The page in row r and column c, from 0, shows the sheet's box of {@code width} x {@code height} from (c stepAcross, r stepDown);
 * neighbours share a strip.
 *
 * @param width of what a page shows, in mm
 * @param height of what a page shows, in mm
 * @param overlap width in mm of the strip that neighbours share
 */
public record Pages(double width, double height, double overlap) {
    public Pages {
        if (!(overlap >= 0 && 2 * overlap < width && 2 * overlap < height)
                || width + height == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(
                    "pages of " + width + " x " + height + " mm cannot share a strip of " + overlap + " mm");
        }
    }

    /** How far in mm a page lies from the one beside it. */
    public double stepAcross() {
        return width - overlap;
    }

    /** How far in mm a page lies from the one above it. */
    public double stepDown() {
        return height - overlap;
    }

    /** How many pages are needed for shapes that are laid: those on which something is drawn outside the strips that they share with the pages before and above them. */
    public int needed(List<Shape> shapes, Laid laid) {
        // squares as large as a page's step, from where a page begins to count; the first of them is a part of the
        // first page
        Squares drawn = new Squares(
                new Squares.Grid(overlap - stepAcross(), overlap - stepDown(), stepAcross(), stepDown()),
                (int) Math.ceil(laid.width() / stepAcross()) + 2,
                (int) Math.ceil(laid.height() / stepDown()) + 2);
        for (int i = 0; i < shapes.size(); i++) {
            Motion place = laid.places().get(i);
            for (List<Point> ring : shapes.get(i).grounds()) {
                drawn.draw(place.of(ring), -Tolerance.COINCIDENT);
            }
        }
        return drawn.countJoined();
    }
}
