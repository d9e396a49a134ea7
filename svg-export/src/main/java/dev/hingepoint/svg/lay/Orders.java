package dev.hingepoint.svg.lay;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** In which orders shapes are laid: what is large has least choice, and goes first. */
final class Orders {
    private static final List<ToDoubleFunction<Turned>> SIZES =
            List.of(Turned::height, turned -> turned.height() * turned.width(), Turned::width);

    private Orders() {}

    /** The numbers of the shapes, the largest first: by height, by area, by width; each order once. */
    static List<List<Integer>> largestFirst(List<Turned> shapes) {
        return SIZES.stream()
                .map(size -> IntStream.range(0, shapes.size())
                        .boxed()
                        .sorted(Comparator.comparingDouble(i -> -size.applyAsDouble(shapes.get(i))))
                        .toList())
                .distinct()
                .toList();
    }
}
