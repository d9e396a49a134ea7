package dev.hingepoint.allowance;

import dev.hingepoint.pattern.Allowances;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Piece;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The allowance of each edge of a piece, in mm; 0 on folds and bound edges.
 */
public record AllowancePlan(Map<String, Double> byEdge) {
    public AllowancePlan {
        byEdge = Map.copyOf(byEdge);
    }

    /** What a card says. */
    public static AllowancePlan of(Allowances card, Piece piece) {
        Map<String, Double> byEdge = new LinkedHashMap<>();
        piece.edges()
                .forEach(edge -> byEdge.put(edge.name(), card.of(piece, edge).mm()));
        return new AllowancePlan(byEdge);
    }

    /** One allowance all round, except on folds and bound edges. */
    public static AllowancePlan even(Piece piece, double mm) {
        Map<String, Double> byEdge = new LinkedHashMap<>();
        piece.edges().forEach(edge -> byEdge.put(edge.name(), edge.kind().takesAllowance() ? mm : 0));
        return new AllowancePlan(byEdge);
    }

    /** The same plan with another allowance on one edge. */
    public AllowancePlan with(String edge, double mm) {
        Map<String, Double> changed = new LinkedHashMap<>(byEdge);
        changed.put(edge, mm);
        return new AllowancePlan(changed);
    }

    double of(Edge edge) {
        return byEdge.getOrDefault(edge.name(), 0.0);
    }
}
