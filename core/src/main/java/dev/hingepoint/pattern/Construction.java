package dev.hingepoint.pattern;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How the pieces of a size are put together: by the card, or, where a size is made up in its own way, for that size alone.
 *
 * @param finishes how seams and free edges are finished, by the edge of their first side
 * @param labels by piece: what else its label tells the person who sews
 */
public record Construction(
        List<Seam> seams,
        Allowances allowances,
        List<Opening> openings,
        Map<EdgeRef, String> finishes,
        Map<String, List<String>> labels) {
    /** Of a card that says nothing. */
    public static final Construction NONE =
            new Construction(List.of(), new Allowances(Map.of()), List.of(), Map.of(), Map.of());

    public Construction {
        seams = List.copyOf(seams);
        openings = List.copyOf(openings);
        finishes = Collections.unmodifiableMap(new LinkedHashMap<>(finishes));
        labels = Collections.unmodifiableMap(new LinkedHashMap<>(labels));
    }

    public Construction withSeams(List<Seam> changed) {
        return new Construction(changed, allowances, openings, finishes, labels);
    }

    public Construction withSeam(Seam more) {
        return withSeams(Stream.concat(seams.stream(), Stream.of(more)).toList());
    }

    public Construction withOpenings(List<Opening> changed) {
        return new Construction(seams, allowances, changed, finishes, labels);
    }

    public Construction withAllowance(EdgeRef edge, Length allowance) {
        return new Construction(seams, allowances.with(edge.toString(), allowance), openings, finishes, labels);
    }

    public Construction withFinish(EdgeRef edge, String finish) {
        Map<EdgeRef, String> changed = new LinkedHashMap<>(finishes);
        changed.put(edge, finish);
        return new Construction(seams, allowances, openings, changed, labels);
    }

    /** The same with what a piece's label says of one of its edges, instead of what it said. */
    public Construction withLabelOn(String piece, String edge, String words) {
        Map<String, List<String>> changed = new LinkedHashMap<>(labels);
        List<String> all = new ArrayList<>(labels.getOrDefault(piece, List.of()));
        all.removeIf(line -> line.startsWith(edge + ": "));
        all.add(edge + ": " + words);
        changed.put(piece, List.copyOf(all));
        return new Construction(seams, allowances, openings, finishes, changed);
    }

    /** The same where what a piece's label says of an edge stands on another piece that has the edge now. */
    public Construction withLabelsOf(String piece, String other, Predicate<String> isMoved) {
        Map<Boolean, List<String>> lines = labels.getOrDefault(piece, List.of()).stream()
                .collect(Collectors.partitioningBy(
                        line -> line.contains(": ") && isMoved.test(line.substring(0, line.indexOf(": ")))));
        if (lines.get(true).isEmpty()) {
            return this;
        }
        Map<String, List<String>> changed = new LinkedHashMap<>(labels);
        changed.put(piece, List.copyOf(lines.get(false)));
        return new Construction(seams, allowances, openings, finishes, changed).withLabel(other, lines.get(true));
    }

    /** The same with more lines on a piece's label; a line that stands there already is not written twice. */
    public Construction withLabel(String piece, List<String> lines) {
        Map<String, List<String>> changed = new LinkedHashMap<>(labels);
        List<String> all = new ArrayList<>(labels.getOrDefault(piece, List.of()));
        lines.stream().filter(line -> !all.contains(line)).forEach(all::add);
        changed.put(piece, List.copyOf(all));
        return new Construction(seams, allowances, openings, finishes, changed);
    }
}
