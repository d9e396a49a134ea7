package dev.hingepoint.fit;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Pattern;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The bodies that a pattern's sizes are drafted for; for an altered size, the body that it now fits. In mm. */
final class SizeChart {
    /** Two sizes are equally near where their distances differ by less in mm. */
    private static final double TIE = 0.05;

    private final Card card;
    private final List<String> sizes;

    /** @throws Refusal where no drawn size has a body */
    SizeChart(Pattern pattern) {
        this.card = pattern.card();
        this.sizes = card.bodyChart().sizes().stream().filter(pattern::hasSize).toList();
        if (sizes.isEmpty()) {
            throw new Refusal(new Reason.Missing(Message.of("fit.size-chart.none"), Where.UNKNOWN));
        }
    }

    /** The sizes that are drawn and have a body, in the card's order. */
    List<String> sizes() {
        return sizes;
    }

    boolean has(String column) {
        return sizes.stream().allMatch(size -> body(size, column).isPresent());
    }

    /** What the size is drafted for, or, where it was altered, what it now fits. */
    OptionalDouble body(String size, String column) {
        Map<String, Length> chart = card.bodyChart().body(size).orElse(Map.of());
        Length length = card.altered()
                .filter(altered -> altered.size().equals(size))
                .map(altered -> altered.fits().get(column))
                .orElse(chart.get(column));
        return length == null ? OptionalDouble.empty() : OptionalDouble.of(length.mm());
    }

    /** What the size was drafted for, whatever it was altered to since. */
    OptionalDouble unaltered(String size, String column) {
        Length length = card.bodyChart().body(size).orElse(Map.of()).get(column);
        return length == null ? OptionalDouble.empty() : OptionalDouble.of(length.mm());
    }

    /** The alterations that the size has had. */
    Optional<Card.Altered> altered(String size) {
        return card.altered().filter(altered -> altered.size().equals(size));
    }

    /** The size whose body is nearest in a column; of two equally near, the larger or the smaller. */
    String nearest(String column, double value, boolean largerOnTie) {
        String nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (String size : sizes) {
            double apart = Math.abs(value - body(size, column).orElseThrow());
            boolean isTie = Math.abs(apart - least) <= TIE;
            if (isTie ? largerOnTie : apart < least) {
                nearest = size;
            }
            least = Math.min(least, apart);
        }
        return nearest;
    }

    /** Whether a value lies more than half a grade step beyond the ends of a column. */
    boolean isOutside(String column, double value) {
        List<Double> bodies = column(column);
        int last = bodies.size() - 1;
        if (last == 0) {
            return false;
        }
        return value < bodies.get(0) - (bodies.get(1) - bodies.get(0)) / 2
                || value > bodies.get(last) + (bodies.get(last) - bodies.get(last - 1)) / 2;
    }

    private List<Double> column(String column) {
        return sizes.stream()
                .map(size -> body(size, column).orElseThrow())
                .sorted()
                .toList();
    }

    /** The size next smaller, or next larger, in the card's order; empty at its end. */
    Optional<String> neighbour(String size, int steps) {
        int at = sizes.indexOf(size) + steps;
        return at >= 0 && at < sizes.size() ? Optional.of(sizes.get(at)) : Optional.empty();
    }
}
