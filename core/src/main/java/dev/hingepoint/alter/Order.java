package dev.hingepoint.alter;

import dev.hingepoint.pattern.AlterationRequest;
import java.util.List;
import java.util.Optional;

/**
 * What is to be done to a pattern.
 *
 * @param front the name of a second front, where that one is sewn
 * @param alterations in the order in which they are done
 */
public record Order(String size, Optional<String> front, List<AlterationRequest> alterations) {
    public Order {
        alterations = List.copyOf(alterations);
    }
}
