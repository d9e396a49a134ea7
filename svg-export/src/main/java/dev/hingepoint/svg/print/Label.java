package dev.hingepoint.svg.print;

import dev.hingepoint.Reason;
import dev.hingepoint.pattern.Allowances;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Construction;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Edge;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.pattern.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What is written on a piece: what it is, for whom, how to cut it, and what was done to it. */
final class Label {
    /** Which of the lines is the piece's name. */
    static final int NAME = 1;

    private Label() {}

    /**
     * The lines, the most important first.
     *
     * @param sizes those that the drawing shows, in the order in which they were asked for
     * @param piece in the size that all but the cutting line is drawn of
     * @param place of the piece among all: "2 of 5"
     */
    static List<String> lines(List<Draft> sizes, Draft of, Piece piece, Copy copy, String place, PrintOptions options) {
        Card card = of.pattern().card();
        Construction construction = of.construction();
        List<String> lines = new ArrayList<>();
        lines.add(card.name());
        lines.add(copy.named(piece.name().toUpperCase(Locale.ROOT))
                + piece.front().map(front -> ", " + front).orElse("") + "  " + place);
        if (options.scale() != Scale.FULL) {
            lines.add(SmallScale.warning(options.scale()));
        }
        String whoFor = ToRead.whoFor(options);
        if (!whoFor.isEmpty()) {
            lines.add(whoFor);
        }
        lines.add(
                sizes.size() == 1
                        ? "size " + size(of.size(), alterations(of, piece))
                        : "sizes "
                                + String.join(
                                        ", ", sizes.stream().map(Draft::size).toList()));
        lines.addAll(copy.cut(piece));
        lines.addAll(construction.labels().getOrDefault(piece.name(), List.of()));
        if (sizes.size() > 1) {
            lines.add("stitching lines left out");
        }
        lines.addAll(allowances(construction.allowances(), piece, copy, options));
        for (Draft size : sizes) {
            String which = sizes.size() == 1 ? "" : "size " + size.size() + ", ";
            alterations(size, piece).forEach(request -> lines.add(which + told(request)));
        }
        return lines.stream().map(line -> Length.retold(line, options.unit())).toList();
    }

    /** What was done to a piece, in its order; where the card does not tell the steps, each may have been. */
    private static List<AlterationRequest> alterations(Draft draft, Piece piece) {
        return draft.altered().stream()
                .flatMap(done -> done.alterations().stream()
                        .filter(request -> done.mayHaveChanged(request.name(), piece.name())))
                .toList();
    }

    /** "40, hip 44". */
    private static String size(String size, List<AlterationRequest> alterations) {
        List<String> parts = new ArrayList<>(List.of(size));
        alterations.stream()
                .filter(request -> request.name().equals("hip blend"))
                .forEach(request -> request.options().forEach((level, value) -> parts.add(level + " " + value)));
        return String.join(", ", parts);
    }

    private static List<String> allowances(Allowances card, Piece piece, Copy copy, PrintOptions options) {
        Map<Length, List<String>> byWidth = new LinkedHashMap<>();
        for (Edge edge : piece.edges()) {
            if (copy == Copy.UNFOLDED && edge.kind() == Edge.Kind.FOLD) {
                continue;
            }
            byWidth.computeIfAbsent(card.of(piece, edge), width -> new ArrayList<>())
                    .add(edge.name());
        }
        List<String> lines = new ArrayList<>(List.of("seam allowance included:"));
        byWidth.forEach((width, edges) ->
                lines.add("  " + (width.mm() == 0 ? "none" : options.length(width)) + ": " + String.join(", ", edges)));
        return lines;
    }

    /** An alteration by what was ordered: "sway back: wedge 12 mm". */
    static String told(AlterationRequest request) {
        return request.name() + ": " + amounts(request);
    }

    private static String amounts(AlterationRequest request) {
        List<String> parts = new ArrayList<>();
        request.options()
                .forEach((option, value) -> parts.add(
                        option.equals("spread")
                                ? bothReadings(value)
                                : option.equals("girth") ? value + " round the body" : option + " " + value));
        return String.join(", ", parts);
    }

    private static String bothReadings(Object spread) {
        double mm = Length.parse(spread.toString(), Unit.MILLIMETRE).mm();
        return Reason.millimetres(mm) + " each half front = " + Reason.millimetres(2 * mm) + " round the body";
    }
}
