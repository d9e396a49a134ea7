package dev.hingepoint.fit;

import dev.hingepoint.alter.Order;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Draft;
import java.util.List;
import java.util.Optional;

/**
 * What a fitter would do to make a pattern fit a body.
 *
 * @param size the size to cut
 * @param front the second front, where that one is chosen
 * @param lines what to do and why, in a fitter's order
 * @param alterations in the order in which they are done
 * @param before the ease of the size as it is drawn
 * @param after the ease when all is done, measured on the altered pieces
 * @param problems what the plan cannot put right, or what the body is outside of; empty where all is well
 * @param drafted the size as the chart speaks of it
 * @param planned the size with all that is planned done to it
 */
public record Plan(
        String size,
        Optional<String> front,
        List<PlanLine> lines,
        List<AlterationRequest> alterations,
        List<Ease> before,
        List<Ease> after,
        List<String> problems,
        Draft drafted,
        Draft planned) {
    public Plan {
        lines = List.copyOf(lines);
        alterations = List.copyOf(alterations);
        before = List.copyOf(before);
        after = List.copyOf(after);
        problems = List.copyOf(problems);
    }

    public Order order() {
        return new Order(size, front, alterations);
    }

    public boolean holdsUp() {
        return problems.isEmpty();
    }
}
