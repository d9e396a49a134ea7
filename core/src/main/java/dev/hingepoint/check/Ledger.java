package dev.hingepoint.check;

import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Seam;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What changed: the account of an order, alteration by alteration and choice by choice, and how every seam walks at the end. Lengths in mm, sewn;
 * girths of the whole body, finished.
 */
public record Ledger(String pattern, String size, List<Entry> alterations, List<Entry> make, List<SeamLine> seams) {
    /** One alteration, or one choice of how to make up: its amounts in mm or words, its steps, and what it changed. */
    public record Entry(
            String name,
            Map<String, Object> amounts,
            List<StepLine> steps,
            List<EdgeLine> edges,
            List<GirthLine> girths,
            List<String> notes) {
        public Entry {
            amounts = Collections.unmodifiableMap(new LinkedHashMap<>(amounts));
            steps = List.copyOf(steps);
            edges = List.copyOf(edges);
            girths = List.copyOf(girths);
            notes = List.copyOf(notes);
        }

        /** Step by step, as a card remembers them. */
        public List<String> sentences() {
            return steps.stream()
                    .map(step -> Card.Altered.step(name, step.piece(), step.caption()))
                    .toList();
        }
    }

    /** A fitter's step, in words. */
    public record StepLine(String caption, String piece) {}

    /** The sewn length of an edge before and after. */
    public record EdgeLine(String piece, String edge, double before, double after) {}

    /** The finished girth at a level before and after. */
    public record GirthLine(String level, double before, double after) {}

    /** How a seam walks: how much longer the first side is, and how much longer it may be. */
    public record SeamLine(
            String join, String to, double difference, double easeFrom, double easeTo, boolean matches) {}

    public Ledger {
        alterations = List.copyOf(alterations);
        make = List.copyOf(make);
        seams = List.copyOf(seams);
    }

    /** Every edge of every piece that both drafts have and that differs between them. */
    public static List<EdgeLine> edges(Draft before, Draft after) {
        List<EdgeLine> lines = new ArrayList<>();
        for (Piece piece : after.pieces()) {
            before.find(piece.name()).filter(old -> !old.equals(piece)).ifPresent(old -> {
                for (Edge edge : piece.edges()) {
                    if (old.hasEdge(edge.name())) {
                        lines.add(new EdgeLine(
                                piece.name(), edge.name(), old.sewnLength(edge.name()), piece.sewnLength(edge.name())));
                    }
                }
            });
        }
        return lines;
    }

    /** The girth at every level that both drafts draw. */
    public static List<GirthLine> girths(Draft before, Draft after) {
        return after.levels().stream()
                .filter(before.levels()::contains)
                .map(level -> new GirthLine(level, before.girth(level), after.girth(level)))
                .toList();
    }

    /** The seams that matched before and no longer do. */
    public static List<SeamLine> broken(Draft before, Draft after) {
        List<SeamLine> matched =
                seams(before).stream().filter(SeamLine::matches).toList();
        return seams(after).stream()
                .filter(seam -> !seam.matches())
                .filter(seam -> matched.stream()
                        .anyMatch(old ->
                                old.join().equals(seam.join()) && old.to().equals(seam.to())))
                .toList();
    }

    /** Every seam whose pieces are drawn. */
    public static List<SeamLine> seams(Draft draft) {
        return SeamWalk.all(draft).stream()
                .map(walked -> new SeamLine(
                        Seam.nameOf(walked.seam().join()),
                        Seam.nameOf(walked.seam().to()),
                        walked.difference(),
                        walked.seam().easeFrom(),
                        walked.seam().easeTo(),
                        walked.lengthMatches()))
                .toList();
    }
}
