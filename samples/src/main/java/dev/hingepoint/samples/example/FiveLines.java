package dev.hingepoint.samples.example;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.fit.Plan;
import dev.hingepoint.fit.Planner;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.svg.file.BodyReader;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.print.PrintOptions;
import dev.hingepoint.svg.print.Printing;
import java.nio.file.Path;

/**
 * The whole job, as the README shows it: loads a pattern, plans for a body, alters, checks, writes pages.
 *
 * <p>Run it in the repository's top folder: {@code java -cp samples/target/hingepoint.jar dev.hingepoint.samples.example.FiveLines}
 */
public final class FiveLines {
    private FiveLines() {}

    /** Takes no arguments; writes the folder {@code printed}. */
    public static void main(String[] arguments) {
        Pattern pattern = PatternFiles.read(Path.of("samples/patterns/larkfield.yaml"));
        Plan plan = Planner.plan(pattern, BodyReader.read(Path.of("samples/patterns/ida.yaml")));
        Fitting fitting = Fitting.of(pattern, plan.order());
        fitting.brokenSeams().forEach(seam -> System.out.println(seam.join() + " no longer matches"));
        Printing.write(Printing.print(fitting.after(), PrintOptions.of(Paper.A4)), Path.of("printed"));
    }
}
