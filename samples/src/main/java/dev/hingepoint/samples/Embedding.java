package dev.hingepoint.samples;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.print.PrintOptions;
import dev.hingepoint.svg.print.Printing;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The example of the README: load a pattern, alter it, check it, print it. Run it in the repository's top folder. */
public final class Embedding {
    private Embedding() {}

    /** Takes no arguments. */
    public static void main(String[] arguments) {
        Pattern pattern =
                PatternFiles.read(Path.of("samples/patterns/larkfield.yaml")).pattern();
        Order order = new Order(
                "40", Optional.empty(), List.of(new AlterationRequest("sway back", Map.of("wedge", "12 mm"))));
        Fitting fitting = Fitting.of(pattern, order);
        fitting.ledger().seams().forEach(seam -> System.out.println(seam.join() + " matches: " + seam.matches()));
        Printing.write(Printing.print(fitting.after(), PrintOptions.of(Paper.named("a4"))), Path.of("printed"));
    }
}
