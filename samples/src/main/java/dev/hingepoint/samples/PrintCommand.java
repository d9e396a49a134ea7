package dev.hingepoint.samples;

import dev.hingepoint.pattern.Draft;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.page.PrintOptions;
import dev.hingepoint.svg.page.Printed;
import dev.hingepoint.svg.page.Printing;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code print}: the pieces of one size at true scale, on pages to tape together. */
@Command(
        name = "print",
        mixinStandardHelpOptions = true,
        description = "Draws the pieces of one size at true scale, with seam allowance, on pages to tape together.",
        footer = {
            "",
            "Writes pages.pdf, the same pages one by one as pages/1.1.svg, pages/1.2.svg, ..., and map.svg, which shows",
            "how they go together.",
            "Print the first page alone first, at 100 %%, and measure its squares before you cut.",
            "",
            "Example: hingepoint print altered/altered.yaml --size 40 --paper a4 --out altered"
        })
final class PrintCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CARD.yaml", description = "The pattern's card.")
    private Path card;

    @Option(names = "--size", required = true, paramLabel = "S", description = "The size to print.")
    private String size;

    @Option(
            names = "--paper",
            defaultValue = "a4",
            paramLabel = "PAPER",
            description = "a4 or letter. Default: ${DEFAULT-VALUE}.")
    private String paper;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path folder;

    @Option(names = "--front", paramLabel = "NAME", description = "A second front, where one is drawn.")
    private String front;

    @Option(names = "--for", paramLabel = "NAME", description = "Who it is for: printed on every piece.")
    private String whoFor;

    @Option(names = "--date", paramLabel = "DATE", description = "A date: printed on every piece.")
    private String date;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintOptions options =
                PrintOptions.of(Paper.named(paper)).forWhom(whoFor == null ? "" : whoFor, date == null ? "" : date);
        PatternFiles.LoadedPattern loaded = PatternFiles.read(card);
        Draft draft = Pieces.of(loaded, card, size, Optional.ofNullable(front));
        Printed printed = Pieces.named(card, () -> Printing.print(draft, options));
        Printing.write(printed, folder);
        loaded.notes().forEach(note -> out.println("note: " + note));
        printed.notes().forEach(note -> out.println("note: " + note));
        out.println(printed.pages().size() + " pages of " + options.paper().name() + " written to "
                + folder.resolve("pages") + "; map.svg shows how they go together");
        out.println("Print page " + printed.pages().get(0).name()
                + " alone first, at 100 %, and measure its squares: 100 mm and 4 in.");
        out.println("Sew a toile before you cut good cloth.");
        return Hingepoint.DONE;
    }
}
