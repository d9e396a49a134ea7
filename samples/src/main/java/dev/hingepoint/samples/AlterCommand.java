package dev.hingepoint.samples;

import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.alter.Fitting;
import dev.hingepoint.check.Ledger;
import dev.hingepoint.make.MadeUp;
import dev.hingepoint.svg.file.LedgerJson;
import dev.hingepoint.svg.file.OrderReader;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.file.WholeFiles;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code alter}: a pattern altered to order. */
@Command(
        name = "alter",
        mixinStandardHelpOptions = true,
        description = "Alters one size of a pattern as an order says, and tells what changed.",
        footer = {
            "",
            "Writes altered.svg and altered.yaml, a pattern that can be printed or altered again, and ledger.json, what changed.",
            "",
            "Example: hingepoint alter concert-order.yaml --out altered",
            "An order is a short text:",
            "  pattern: larkfield.yaml",
            "  size: \"40\"",
            "  alterations:",
            "    - full bust: {spread: 20 mm}   # for each half front; or girth: +40 mm round the body",
            "    - hip blend: {hip: \"44\"}       # size 40 down to the waist, 44 from the hip down",
            "    - sway back: {wedge: 12 mm}    # out of centre back at the waist",
            "  make:                            # how to make it up, once it is altered",
            "    - facing: {edge: neckline, depth: 60 mm}   # or binding, band, yoke, sleeveless, centre back, finish, cloth"
        })
final class AlterCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "ORDER.yaml", description = "The order: which pattern, which size, which alterations.")
    private Path order;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path folder;

    @Override
    public Integer call() {
        OrderReader.ReadOrder read = OrderReader.read(order);
        PatternFiles.LoadedPattern loaded = PatternFiles.readWithNotes(read.card());
        Fitting fitting = fitting(loaded, read);
        Map<String, String> files =
                new LinkedHashMap<>(PatternFiles.contents(fitting.after().pattern(), "altered"));
        files.put("ledger.json", LedgerJson.write(fitting.ledger()));
        WholeFiles.writeAll(folder, files);
        tell(loaded, fitting);
        return fitting.brokenSeams().isEmpty() ? Hingepoint.DONE : Hingepoint.DOES_NOT_HOLD_UP;
    }

    private Fitting fitting(PatternFiles.LoadedPattern loaded, OrderReader.ReadOrder read) {
        try {
            return MadeUp.of(loaded.pattern(), read.order(), read.make());
        } catch (Refusal refusal) {
            throw refusal.in(order.getFileName().toString());
        }
    }

    private void tell(PatternFiles.LoadedPattern loaded, Fitting fitting) {
        PrintWriter out = spec.commandLine().getOut();
        Ledger ledger = fitting.ledger();
        out.println(ledger.pattern() + ", size " + ledger.size() + ": what changed");
        for (Ledger.Entry entry : Stream.concat(ledger.alterations().stream(), ledger.make().stream())
                .toList()) {
            out.println();
            out.println(entry.name());
            entry.steps().forEach(step -> out.println("  " + step.piece() + ": " + step.caption()));
            for (Ledger.EdgeLine edge : entry.edges()) {
                changed(out, edge.piece() + "/" + edge.edge(), edge.before(), edge.after());
            }
            for (Ledger.GirthLine girth : entry.girths()) {
                changed(out, girth.level() + " girth", girth.before(), girth.after());
            }
        }
        out.println();
        loaded.notes().forEach(note -> out.println("note: " + note));
        fitting.notes().forEach(note -> out.println("note: " + note));
        fitting.brokenSeams()
                .forEach(seam -> out.println("this seam no longer matches: " + seam.join() + " to " + seam.to() + ", "
                        + Reason.millimetres(seam.difference()) + " longer on the first side"));
        out.println("written to " + folder + ": altered.svg, altered.yaml, ledger.json");
        out.println("Sew a toile before you cut good cloth.");
    }

    private static void changed(PrintWriter out, String what, double before, double after) {
        if (Math.abs(after - before) >= 0.05) {
            out.println(String.format(
                    Locale.ROOT, "    %-24s %8.1f mm to %8.1f mm (%+.1f)", what, before, after, after - before));
        }
    }
}
