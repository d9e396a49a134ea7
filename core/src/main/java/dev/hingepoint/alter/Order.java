package dev.hingepoint.alter;

import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is to be done to a pattern.
 *
 * @param front the name of a second front, where that one is sewn
 * @param alterations in the order in which they are done
 * @param body the measurements of the body that is to be fitted, by name; empty where none is named
 */
public record Order(
        String size, Optional<String> front, List<AlterationRequest> alterations, Map<String, Length> body) {
    public Order {
        alterations = List.copyOf(alterations);
        body = Map.copyOf(body);
    }

    public Order(String size, Optional<String> front, List<AlterationRequest> alterations) {
        this(size, front, alterations, Map.of());
    }

    /** Alterations of a size, with the front that is drawn without a name. */
    public static Order of(String size, AlterationRequest... alterations) {
        return new Order(size, Optional.empty(), List.of(alterations));
    }

    /** The same, and then one alteration more. */
    public Order with(AlterationRequest next) {
        List<AlterationRequest> all = new ArrayList<>(alterations);
        all.add(next);
        return new Order(size, front, all, body);
    }

    /** The same for a body of which measurements are known, by name. */
    public Order forBody(Map<String, Length> lengths) {
        return new Order(size, front, alterations, lengths);
    }
}
