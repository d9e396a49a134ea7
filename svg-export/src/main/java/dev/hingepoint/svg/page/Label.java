package dev.hingepoint.svg.page;

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
import dev.hingepoint.svg.file.CuttingText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What is written on a piece: what it is, for whom, how to cut it, and what was done to it. */
final class Label {
    private Label() {}

    /** The lines, the most important first; the second is the piece's name. */
    static List<String> lines(Draft draft, Piece piece, int number, int pieces, PrintOptions options) {
        Card card = draft.pattern().card();
        List<AlterationRequest> alterations = card.altered()
                .filter(altered -> altered.size().equals(draft.size()))
                .map(Card.Altered::alterations)
                .orElse(List.of());
        Construction construction = draft.construction();
        List<String> lines = new ArrayList<>();
        lines.add(card.name());
        lines.add(piece.name().toUpperCase(Locale.ROOT)
                + piece.front().map(front -> ", " + front).orElse("") + "  " + number + " of " + pieces);
        String who = options.whoFor().isBlank() ? "" : "for " + options.whoFor();
        String when = options.date().isBlank() ? "" : options.date();
        String both = String.join(
                ", ",
                List.of(who, when).stream().filter(text -> !text.isEmpty()).toList());
        if (!both.isEmpty()) {
            lines.add(both);
        }
        lines.add("size " + size(draft.size(), alterations));
        piece.cuttings().forEach(cutting -> lines.add("cut " + CuttingText.write(cutting)));
        lines.addAll(construction.labels().getOrDefault(piece.name(), List.of()));
        lines.addAll(allowances(construction.allowances(), piece));
        alterations.forEach(request -> lines.add(told(request)));
        return lines;
    }

    /** "40, hip 44". */
    private static String size(String size, List<AlterationRequest> alterations) {
        List<String> parts = new ArrayList<>(List.of(size));
        alterations.stream()
                .filter(request -> request.name().equals("hip blend"))
                .forEach(request -> request.options().forEach((level, value) -> parts.add(level + " " + value)));
        return String.join(", ", parts);
    }

    private static List<String> allowances(Allowances card, Piece piece) {
        Map<Length, List<String>> byWidth = new LinkedHashMap<>();
        for (Edge edge : piece.edges()) {
            byWidth.computeIfAbsent(card.of(piece, edge), width -> new ArrayList<>())
                    .add(edge.name());
        }
        List<String> lines = new ArrayList<>(List.of("seam allowance included:"));
        byWidth.forEach((width, edges) ->
                lines.add("  " + (width.mm() == 0 ? "none" : width.toString()) + ": " + String.join(", ", edges)));
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
