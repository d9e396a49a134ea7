package dev.hingepoint.pattern;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The seam allowance of each edge, in mm.
 *
 * @param byName keys are {@code default}, {@code hem} (every edge of that kind), an edge's name or {@code piece/edge}; the most
 *     particular one holds
 */
public record Allowances(Map<String, Length> byName) {
    /** What home sewing adds where nothing is said: 5/8 in, about 1.5 cm. */
    public static final Length HOME_SEWING = Length.ofMillimetres(15);

    public Allowances {
        byName = Collections.unmodifiableMap(new LinkedHashMap<>(byName));
    }

    /** The allowance of a seam that nothing more particular is said of. */
    public Length usual() {
        return byName.getOrDefault("default", HOME_SEWING);
    }

    /** The allowance of an edge: none on a fold and on a bound edge. */
    public Length of(Piece piece, Edge edge) {
        if (!edge.kind().takesAllowance()) {
            return Length.ZERO;
        }
        Length plain = usual();
        Length byKind = edge.kind() == Edge.Kind.HEM ? byName.getOrDefault("hem", plain) : plain;
        Length byEdge = byName.getOrDefault(edge.name(), byKind);
        return byName.getOrDefault(piece.name() + "/" + edge.name(), byEdge);
    }

    public Allowances with(String key, Length allowance) {
        Map<String, Length> changed = new LinkedHashMap<>(byName);
        changed.put(key, allowance);
        return new Allowances(changed);
    }
}
