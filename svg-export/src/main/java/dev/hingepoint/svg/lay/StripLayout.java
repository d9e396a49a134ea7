package dev.hingepoint.svg.lay;

import dev.hingepoint.curve.Motion;
import dev.hingepoint.curve.Tolerance;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Lays shapes on a strip of a given width, so that the strip is short: the shortest that it finds, not the shortest there is. */
public final class StripLayout {
    /** A shape that lies one way round on the squares of the strip; its bounds begin {@code apart} from the strip's edges when its first square is at (0, 0). */
    private record Item(Turned shape, Mask mask) {}

    /** Where a shape lies. */
    private record Place(Item item, int x, int y) {
        /** The row below its lowest. */
        int end() {
            return y + item.mask().rows();
        }

        /** How far down its shape reaches, without what it keeps from the strip's beginning. */
        double bottom(double square) {
            return y * square + item.shape().height();
        }
    }

    private final List<List<Item>> shapes;
    private final double width;
    private final double apart;
    private final double square;
    private final int beyond;
    private long effort;

    private StripLayout(List<Shape> shapes, double width, double apart) {
        this.width = width;
        this.apart = apart;
        this.square = Fineness.square(shapes.size());
        this.beyond = (int) Math.ceil(apart / 2 / square) + 1;
        this.shapes = shapes.stream()
                .map(shape -> Turned.of(shape).stream()
                        .filter(turned -> turned.width() + 2 * apart <= width + Tolerance.COINCIDENT)
                        .map(this::item)
                        .toList())
                .toList();
    }

    private Item item(Turned shape) {
        double edge = -apart - beyond * square;
        Squares squares = new Squares(
                new Squares.Grid(edge, edge, square, square),
                (int) Math.ceil((shape.width() + 2 * apart) / square) + 2 * beyond,
                (int) Math.ceil((shape.height() + 2 * apart) / square) + 2 * beyond);
        squares.cover(shape.grounds(), apart / 2);
        return new Item(shape, Mask.of(squares));
    }

    /**
     * @param width of the strip in mm
     * @param apart how far in mm shapes keep from each other and from the strip's edges, at least
     * @return where they lie, and the length that they take as the height
     * @throws IllegalArgumentException for a strip that is not as wide as {@link #narrowest}
     */
    public static Laid laid(List<Shape> shapes, double width, double apart) {
        if (shapes.isEmpty()) {
            return new Laid(List.of(), width, 0);
        }
        if (narrowest(shapes, apart) > width + Tolerance.COINCIDENT) {
            throw new IllegalArgumentException(
                    "a strip of " + width + " mm is too narrow; the shapes need " + narrowest(shapes, apart) + " mm");
        }
        return new StripLayout(shapes, width, apart).best();
    }

    /** The width in mm of the narrowest strip that all the shapes can lie on. */
    public static double narrowest(List<Shape> shapes, double apart) {
        return shapes.stream()
                        .mapToDouble(shape -> Turned.of(shape).stream()
                                .mapToDouble(Turned::width)
                                .min()
                                .orElseThrow())
                        .max()
                        .orElse(0)
                + 2 * apart;
    }

    private Laid best() {
        List<List<Integer>> orders = Orders.largestFirst(
                shapes.stream().map(ways -> ways.get(0).shape()).toList());
        List<Integer> order = orders.get(0);
        Place[] best = laid(order);
        long once = effort;
        for (List<Integer> other : orders.subList(1, orders.size())) {
            if (effort + once > Fineness.EFFORT) {
                break;
            }
            Place[] places = laid(other);
            if (length(places) < length(best)) {
                best = places;
                order = other;
            }
        }
        best = shortened(best, order, once);
        List<Motion> motions = Arrays.stream(best)
                .map(place -> place.item().shape().to(apart + place.x() * square, apart + place.y() * square))
                .toList();
        return new Laid(motions, width, length(best) + 2 * apart);
    }

    /** Each shape in turn is laid earlier or later than it was, as long as that makes the strip shorter. */
    private Place[] shortened(Place[] laid, List<Integer> firstOrder, long once) {
        Place[] best = laid;
        List<Integer> order = firstOrder;
        int tried = 0;
        int count = order.size();
        // every shape to every place; from the start again when the strip became shorter
        while (tried < count * count && effort + once <= Fineness.EFFORT) {
            List<Integer> other = new ArrayList<>(order);
            other.add(tried % count, other.remove(tried / count));
            tried++;
            Place[] places = laid(other);
            if (length(places) < length(best)) {
                best = places;
                order = other;
                tried = 0;
            }
        }
        return best;
    }

    private double length(Place[] places) {
        return Arrays.stream(places)
                .mapToDouble(place -> place.bottom(square))
                .max()
                .orElse(0);
    }

    /** Each as high up as it can lie, and then as far left. */
    private Place[] laid(List<Integer> order) {
        Board board = new Board((int) Math.ceil(width / square) + 2 * beyond);
        Place[] places = new Place[shapes.size()];
        int window = Fineness.window(shapes.stream().flatMap(List::stream).map(Item::mask));
        for (int number : order) {
            int from = Math.max(0, board.depth() - window);
            Place best = shapes.get(number).stream()
                    .map(item -> highest(board, item, from))
                    .min(Comparator.comparingInt(Place::end))
                    .orElseThrow();
            board.toggle(best.item().mask(), best.x(), best.y());
            places[number] = best;
        }
        effort += board.effort();
        return places;
    }

    private Place highest(Board board, Item item, int from) {
        int free = (int) ((width - item.shape().width() - 2 * apart + Tolerance.COINCIDENT) / square) + 1;
        long[] closed = new long[BitRows.words(free)];
        for (int y = from; ; y++) {
            Arrays.fill(closed, -1);
            BitRows.change(closed, 0, 0, free, BitRows.OFF);
            // below all that lies there already there is room
            if (board.close(item.mask(), y, free, closed)) {
                return new Place(item, BitRows.nextOff(closed, 0, closed.length, 0), y);
            }
        }
    }
}
