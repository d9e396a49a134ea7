package dev.hingepoint.svg.figure;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** By how much a figure differs from the average one, part by part, in heads. */
final class Differences {
    static final Differences NONE = new Differences(Map.of());

    private final Map<Part, Double> heads;

    private Differences(Map<Part, Double> heads) {
        this.heads = heads;
    }

    static Differences of(Part part, double heads) {
        return new Differences(Map.of(part, heads));
    }

    Differences and(Part part, double more) {
        return and(of(part, more));
    }

    Differences and(Differences other) {
        Map<Part, Double> sum = new EnumMap<>(Part.class);
        for (Map<Part, Double> map : List.of(heads, other.heads)) {
            map.forEach((part, more) -> sum.merge(part, more, Double::sum));
        }
        return new Differences(sum);
    }

    double at(Part part) {
        return heads.getOrDefault(part, 0.0);
    }
}
