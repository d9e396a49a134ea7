package dev.hingepoint.samples.example;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.check.Ledger;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.svg.file.LedgerJson;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.file.WholeFiles;
import dev.hingepoint.svg.print.BeforeAfter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An alteration of one's own, {@link FlaredSkirt}, ordered together with one of the catalogue: its laws are held, and it stands in the ledger and on the card as
 * any other. Nothing is registered anywhere; it is handed to the fitting that may need it.
 *
 * <p>Run it in the repository's top folder: {@code java -cp samples/target/hingepoint.jar dev.hingepoint.samples.example.OwnAlteration flared}
 */
public final class OwnAlteration {
    private OwnAlteration() {}

    /** @param arguments the folder to write to, and the pattern's card */
    public static void main(String[] arguments) {
        Path folder = Path.of(arguments.length == 0 ? "flared" : arguments[0]);
        Path card = Path.of(arguments.length < 2 ? "samples/patterns/larkfield.yaml" : arguments[1]);
        Pattern pattern = PatternFiles.read(card);
        Order order = Order.of(
                "40",
                AlterationRequest.of("sway back").with("wedge", "12 mm"),
                AlterationRequest.of("flared skirt").with("by", "40 mm"));
        Fitting fitting = Fitting.of(pattern, order, List.of(new FlaredSkirt()));
        for (Ledger.Entry entry : fitting.ledger().alterations()) {
            entry.sentences().forEach(System.out::println);
        }
        Map<String, String> files =
                new LinkedHashMap<>(PatternFiles.contents(fitting.after().pattern(), "altered"));
        files.put("ledger.json", LedgerJson.write(fitting.ledger()));
        files.put("before-after.svg", BeforeAfter.svg(fitting.before(), fitting.after()));
        WholeFiles.writeAll(folder, files);
    }
}
