package dev.hingepoint.svg.file;

import dev.hingepoint.pattern.BodyChart;
import dev.hingepoint.pattern.Card;
import dev.hingepoint.pattern.Construction;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Writes a card in the form that {@link CardReader} reads. */
final class CardWriter {
    private final StringBuilder yaml = new StringBuilder("form: 1\n");

    private CardWriter() {}

    /** @param drawing the name of the drawing beside the card */
    public static String write(Card card, String drawing) {
        return new CardWriter().card(card, drawing);
    }

    private String card(Card card, String drawing) {
        line("pattern", plain(card.name()));
        line("drawing", plain(drawing));
        if (!card.baseSize().isEmpty()) {
            line("base size", quoted(card.baseSize()));
        }
        card.cupDifference().ifPresent(length -> line("cup difference", ConstructionText.millimetres(length)));
        line("stretch", "{across: " + percent(card.stretchAcross()) + ", down: " + percent(card.stretchDown()) + "}");
        chart(card.bodyChart());
        ConstructionText.write(card.construction(), Construction.NONE)
                .forEach(line -> yaml.append(line).append('\n'));
        block(
                "fronts",
                card.fronts().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(entry -> plain(entry.getKey()) + ": {cup difference: "
                                + ConstructionText.millimetres(entry.getValue()) + "}")
                        .toList());
        block(
                "lay",
                card.lays().byPiece().entrySet().stream()
                        .map(entry ->
                                plain(entry.getKey()) + ": " + entry.getValue().words())
                        .toList());
        card.altered().ifPresent(altered -> altered(altered, card));
        return yaml.toString();
    }

    private void line(String key, String value) {
        yaml.append(key).append(": ").append(value).append('\n');
    }

    private void block(String key, List<String> lines) {
        if (!lines.isEmpty()) {
            yaml.append(key).append(":\n");
            lines.forEach(line -> yaml.append("  ").append(line).append('\n'));
        }
    }

    private void chart(BodyChart chart) {
        if (chart.bySize().isEmpty()) {
            return;
        }
        yaml.append("body chart:\n  unit: ").append(symbol(chart.unit())).append('\n');
        chart.bySize()
                .forEach((size, body) -> yaml.append("  ")
                        .append(quoted(size))
                        .append(": {")
                        .append(body(body, chart.unit()))
                        .append("}\n"));
    }

    private static String body(Map<String, Length> body, Unit unit) {
        return String.join(
                ", ",
                body.entrySet().stream()
                        .map(entry -> plain(entry.getKey()) + ": "
                                + Numbers.of(entry.getValue().in(unit), 3))
                        .toList());
    }

    private void altered(Card.Altered altered, Card card) {
        yaml.append("altered:\n  size: ").append(quoted(altered.size())).append('\n');
        altered.front()
                .ifPresent(
                        front -> yaml.append("  front: ").append(plain(front)).append('\n'));
        yaml.append(altered.alterations().isEmpty() ? "  alterations: []\n" : "  alterations:\n");
        altered.alterations()
                .forEach(request -> yaml.append("    - ")
                        .append(AlterationText.write(request))
                        .append('\n'));
        if (!altered.make().isEmpty()) {
            yaml.append("  make:\n");
            altered.make()
                    .forEach(request -> yaml.append("    - ")
                            .append(AlterationText.write(request))
                            .append('\n'));
        }
        if (!altered.steps().isEmpty()) {
            yaml.append("  steps:\n");
            altered.steps()
                    .forEach(step -> yaml.append("    - ").append(quoted(step)).append('\n'));
        }
        altered.construction()
                .ifPresent(own -> ConstructionText.write(own, card.construction())
                        .forEach(line -> yaml.append("  ").append(line).append('\n')));
        if (!altered.fits().isEmpty()) {
            yaml.append("fits: {")
                    .append(body(new TreeMap<>(altered.fits()), card.bodyChart().unit()))
                    .append("}\n");
        }
    }

    private static String percent(double fraction) {
        return Numbers.of(fraction * 100, 2) + " %";
    }

    private static String symbol(Unit unit) {
        return switch (unit) {
            case MILLIMETRE -> "mm";
            case CENTIMETRE -> "cm";
            case INCH -> "in";
        };
    }

    /** As it stands where YAML takes it for the same text, else in quotes. */
    static String plain(String text) {
        boolean isPlain = text.matches("[\\p{L}][\\p{L}\\p{N} _./-]*[\\p{L}\\p{N}]|[-+]?[0-9.]+ (mm|cm|in|%)")
                && !text.matches("(?i)true|false|null|yes|no|on|off|y|n|nan|inf");
        return isPlain ? text : quoted(text);
    }

    static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
            } else if (c < 0x20 || c == 0x7F || c == 0x85 || c == 0xA0 || c == 0x2028 || c == 0x2029) {
                quoted.append(String.format(Locale.ROOT, "\\u%04X", c));
            } else {
                quoted.appendCodePoint(c);
            }
        });
        return quoted.append('"').toString();
    }
}
