package dev.hingepoint.svg.lesson;

import dev.hingepoint.check.Ledger;
import java.util.List;
import java.util.stream.Stream;

/**
 * What was measured before and after, in mm: an edge as it is sewn, or a girth of the whole body.
 *
 * @param names of what it is, cell by cell: a piece and an edge, or a level
 * @param told the same in a line
 */
record Measurement(List<String> names, String told, double before, double after) {
    static List<Measurement> ofEdges(Ledger.Entry entry) {
        return entry.edges().stream()
                .map(edge -> new Measurement(
                        List.of(edge.piece(), edge.edge()),
                        edge.piece() + ", " + edge.edge(),
                        edge.before(),
                        edge.after()))
                .toList();
    }

    static List<Measurement> ofGirths(Ledger.Entry entry) {
        return entry.girths().stream()
                .map(girth -> new Measurement(
                        List.of(girth.level()), girth.level() + " round the body", girth.before(), girth.after()))
                .toList();
    }

    /** Edges, then girths. */
    static List<Measurement> of(Ledger.Entry entry) {
        return Stream.concat(ofEdges(entry).stream(), ofGirths(entry).stream()).toList();
    }

    double difference() {
        return after - before;
    }

    boolean isChanged() {
        return Math.abs(difference()) > Lengths.UNCHANGED;
    }
}
