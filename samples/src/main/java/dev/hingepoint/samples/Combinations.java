package dev.hingepoint.samples;

import dev.hingepoint.Refusal;
import dev.hingepoint.alter.Alteration;
import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.check.Ledger.SeamLine;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.samples.draft.Larkfield;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Every combination of two alterations of the catalogue, each by its example, on the Larkfield dress: whether it walks, or why it is refused. */
public final class Combinations {
    static final String BROKEN = "done, but no longer walks: ";
    private static final String SIZE = "40";

    private final Pattern dress = Larkfield.dress();
    private final List<String> footnotes = new ArrayList<>();

    private Combinations() {}

    /** @param file the file to write to, {@code samples/combinations.md} */
    public static void main(String[] file) throws IOException {
        Files.writeString(Path.of(file[0]), table());
    }

    /** The table as Markdown. */
    public static String table() {
        return new Combinations().written();
    }

    private String written() {
        List<Alteration> all = Catalogue.all();
        StringBuilder text = new StringBuilder("# Two alterations on one dress\n\n"
                + "Every alteration of the catalogue after every other and after itself, in both orders, each by its example, on size "
                + SIZE
                + " of the Larkfield dress.\nRow first, then column. `+`: done, and every seam that matched before still does. A number: "
                + "refused, for the reason below.\n\n");
        text.append("| | first \\ then |");
        for (int i = 1; i <= all.size(); i++) {
            text.append(" ").append(i).append(" |");
        }
        text.append("\n|---|---|").append("---|".repeat(all.size())).append("\n");
        for (int i = 0; i < all.size(); i++) {
            Alteration first = all.get(i);
            text.append("| ")
                    .append(i + 1)
                    .append(" | `")
                    .append(example(first))
                    .append("` |");
            Pattern altered = altered(dress, first).after().pattern();
            for (Alteration then : all) {
                text.append(" ").append(outcome(altered, then)).append(" |");
            }
            text.append("\n");
        }
        for (int i = 0; i < footnotes.size(); i++) {
            text.append("\n").append(i + 1).append(". ").append(footnotes.get(i));
        }
        return text.append("\n").toString();
    }

    /** Its example, as it is written in an order. */
    public static String example(Alteration alteration) {
        return alteration.name() + ": {"
                + alteration.example().entrySet().stream()
                        .map(entry -> entry.getKey() + ": " + written(entry.getValue()))
                        .sorted()
                        .collect(Collectors.joining(", "))
                + "}";
    }

    /** As in an order: a size in quotes. */
    private static String written(Object value) {
        return value.toString().matches("\\d+") ? "\"" + value + "\"" : value.toString();
    }

    private static Fitting altered(Pattern pattern, Alteration alteration) {
        AlterationRequest request = new AlterationRequest(alteration.name(), alteration.example());
        return Fitting.of(pattern, new Order(SIZE, Optional.empty(), List.of(request)));
    }

    private String outcome(Pattern altered, Alteration then) {
        return fault(altered, then).map(this::footnote).orElse("+");
    }

    private String footnote(String reason) {
        if (!footnotes.contains(reason)) {
            footnotes.add(reason);
        }
        return String.valueOf(footnotes.indexOf(reason) + 1);
    }

    private static Optional<String> fault(Pattern altered, Alteration then) {
        try {
            List<SeamLine> broken = altered(altered, then).brokenSeams();
            return broken.isEmpty()
                    ? Optional.empty()
                    : Optional.of(BROKEN
                            + broken.stream()
                                    .map(seam -> seam.join() + " to " + seam.to())
                                    .collect(Collectors.joining(", ")));
        } catch (Refusal refusal) {
            return Optional.of(refusal.reason().sentence());
        }
    }
}
