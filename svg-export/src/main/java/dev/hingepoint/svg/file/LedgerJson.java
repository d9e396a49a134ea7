package dev.hingepoint.svg.file;

import dev.hingepoint.check.Ledger;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/**
 * Writes a ledger as JSON: lengths in mm, to a ten-thousandth.
 *
 * <p>What is written holds to the schema beside this class, {@code dev/hingepoint/svg/file/ledger.schema.json} (JSON Schema 2020-12).
 */
public final class LedgerJson {
    private LedgerJson() {}

    public static String write(Ledger ledger) {
        return "{\"pattern\": " + text(ledger.pattern()) + ", \"size\": " + text(ledger.size())
                + ",\n \"alterations\": " + list(ledger.alterations(), LedgerJson::entry)
                + ",\n \"make\": " + list(ledger.make(), LedgerJson::entry)
                + ",\n \"seams\": " + list(ledger.seams(), LedgerJson::seam) + "}\n";
    }

    private static String entry(Ledger.Entry entry) {
        return "{\"name\": " + text(entry.name()) + ", \"amounts\": " + amounts(entry.amounts())
                + ",\n   \"steps\": "
                + list(
                        entry.steps(),
                        step -> "{\"caption\": " + text(step.caption()) + ", \"piece\": " + text(step.piece()) + "}")
                + ",\n   \"edges\": "
                + list(
                        entry.edges(),
                        edge -> "{\"piece\": " + text(edge.piece()) + ", \"edge\": " + text(edge.edge())
                                + ", \"before\": " + number(edge.before()) + ", \"after\": " + number(edge.after())
                                + "}")
                + ",\n   \"girths\": "
                + list(
                        entry.girths(),
                        girth -> "{\"level\": " + text(girth.level()) + ", \"before\": " + number(girth.before())
                                + ", \"after\": " + number(girth.after()) + "}")
                + ",\n   \"notes\": " + list(entry.notes(), LedgerJson::text) + "}";
    }

    private static String seam(Ledger.SeamLine seam) {
        return "{\"join\": " + text(seam.join()) + ", \"to\": " + text(seam.to()) + ", \"difference\": "
                + number(seam.difference()) + ", \"ease\": [" + number(seam.easeFrom()) + ", " + number(seam.easeTo())
                + "], \"matches\": " + seam.matches() + "}";
    }

    private static String amounts(Map<String, Object> amounts) {
        return "{"
                + String.join(
                        ", ",
                        amounts.entrySet().stream()
                                .map(entry -> text(entry.getKey()) + ": "
                                        + (entry.getValue() instanceof Double amount
                                                ? number(amount)
                                                : text(entry.getValue().toString())))
                                .toList())
                + "}";
    }

    private static <T> String list(List<T> items, Function<T, String> write) {
        return items.isEmpty()
                ? "[]"
                : "[\n   " + String.join(",\n   ", items.stream().map(write).toList()) + "]";
    }

    private static String number(double number) {
        return Numbers.of(number);
    }

    /** A JSON string (RFC 8259, section 7). */
    public static String text(String text) {
        StringBuilder json = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                json.append('\\').appendCodePoint(c);
            } else if (c < 0x20) {
                json.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                json.appendCodePoint(c);
            }
        });
        return json.append('"').toString();
    }
}
