package dev.hingepoint.samples;

import dev.hingepoint.Message;
import dev.hingepoint.Reason;
import dev.hingepoint.Refusal;
import dev.hingepoint.Where;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.BodyReader;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.print.Calibration;
import dev.hingepoint.svg.print.ClothWidths;
import dev.hingepoint.svg.print.PrintOptions;
import dev.hingepoint.svg.print.Printed;
import dev.hingepoint.svg.print.Printing;
import dev.hingepoint.svg.print.Scale;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code print}: the pieces of one size, or of several, at true scale, on pages to tape together. */
@Command(
        name = "print",
        mixinStandardHelpOptions = true,
        description = "Draws the pieces of one size at true scale, with seam allowance, on pages to tape together.",
        footer = {
            "",
            "Writes pages.pdf, all pages in order; the same pages one by one, pages/0.1.svg (to read first),",
            "pages/1.1.svg, ...; and map.svg, which shows how they go together.",
            "Print the first page alone first, at 100 %%, and measure its squares before you cut.",
            "Lengths are in mm where no unit is written.",
            "",
            "Example: hingepoint print altered/altered.yaml --size 40 --paper a4 --out altered",
            "A printer that makes the 100 mm square 98.5 mm wide and 99 mm high:  --measured 98.5x99.0mm",
            "Several sizes in one another:         --size 38,40,42",
            "With the lines as they were drawn:    --original larkfield.yaml",
            "A copy shop's roll, or a projector:   --paper \"roll 914 mm\" or --paper projector",
            "For a class, at half size:            --scale 1:2"
        })
final class PrintCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CARD.yaml", description = "The pattern's card.")
    private Path card;

    @Option(
            names = "--size",
            required = true,
            paramLabel = "S",
            description = "The size to print; several with commas between, or all.")
    private String size;

    @Option(
            names = "--paper",
            defaultValue = "a4",
            paramLabel = "PAPER",
            description =
                    "a4 to a0, letter, legal, tabloid, any width x height such as 320x450, a roll such as \"roll 914 mm\", "
                            + "or projector. Default: ${DEFAULT-VALUE}.")
    private String paper;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private Path folder;

    @Option(
            names = "--margin",
            defaultValue = "10 mm",
            paramLabel = "LENGTH",
            description = "What the printer cannot reach on each side. Default: ${DEFAULT-VALUE}.")
    private String margin;

    @Option(
            names = "--overlap",
            defaultValue = "10 mm",
            paramLabel = "LENGTH",
            description = "The strip that is glued. Default: ${DEFAULT-VALUE}.")
    private String overlap;

    @Option(
            names = "--measured",
            paramLabel = "WxH",
            description =
                    "What the 100 mm square measured, width x height: 98.5x99.0mm scales all pages to come out true.")
    private String measured;

    @Option(
            names = "--scale",
            defaultValue = "1:1",
            paramLabel = "SCALE",
            description = "1:2 or 1:4 for a class, not for cutting. Default: ${DEFAULT-VALUE}.")
    private String scale;

    @Option(names = "--unfold", description = "Draws pieces whole that are cut on the fold, and both of a pair.")
    private boolean unfold;

    @Option(
            names = "--original",
            paramLabel = "CARD.yaml",
            description = "The pattern before it was altered: its lines are drawn as well, dotted.")
    private Path original;

    @Option(
            names = "--cloth",
            paramLabel = "WIDTH",
            description =
                    "Width of the cloth, or of one of several, for example 150cm or lining=90cm; may be given again.")
    private List<String> cloths = List.of();

    @Option(names = "--nap", description = "The cloth has a nap: every piece is laid the same way up.")
    private boolean nap;

    @Option(
            names = "--body",
            paramLabel = "BODY.yaml",
            description = "Who it is for: body and ease stand on the first page.")
    private Path body;

    @Option(
            names = "--unit",
            defaultValue = "mm",
            converter = Units.class,
            paramLabel = "UNIT",
            description = "mm, cm or in, for what is to be measured. Default: ${DEFAULT-VALUE}.")
    private Unit unit;

    @Option(names = "--front", paramLabel = "NAME", description = "A second front, where one is drawn.")
    private String front;

    @Option(names = "--for", paramLabel = "NAME", description = "Who it is for: printed on every piece.")
    private String whoFor;

    @Option(names = "--date", paramLabel = "DATE", description = "A date: printed on every piece.")
    private String date;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintOptions options = options();
        PatternFiles.LoadedPattern loaded = PatternFiles.readWithNotes(card);
        Optional<Pattern> drawn = Optional.ofNullable(original).map(file -> original(loaded.pattern()));
        List<Draft> drafts = sizes(loaded.pattern()).stream()
                .map(one -> Pieces.of(loaded, card, one, Optional.ofNullable(front)))
                .map(draft -> drawn.map(before -> new Draft(draft.pattern(), draft.size(), draft.front(), before))
                        .orElse(draft))
                .toList();
        Printed printed = Pieces.named(card, () -> Printing.print(drafts, options));
        Printing.write(printed, folder);
        loaded.notes().forEach(note -> out.println("note: " + note));
        tell(out, printed);
        return Hingepoint.DONE;
    }

    private PrintOptions options() {
        PrintOptions options = PrintOptions.of(Paper.named(paper))
                .with(Scale.parse(scale))
                .with(unit)
                .forWhom(whoFor == null ? "" : whoFor, date == null ? "" : date)
                .with(cloths());
        options = options.withOverlap(Length.parse(overlap, Unit.MILLIMETRE).mm())
                .withMargin(Length.parse(margin, Unit.MILLIMETRE).mm());
        if (measured != null) {
            options = options.with(Calibration.parse(measured));
        }
        if (unfold) {
            options = options.with(PrintOptions.Pieces.UNFOLDED);
        }
        if (original != null) {
            options = options.with(PrintOptions.Original.SHOWN);
        }
        return body == null ? options : options.forBody(BodyReader.read(body));
    }

    /** The pattern as it was drawn, under the same name and in the sizes that are printed. */
    private Pattern original(Pattern printed) {
        Pattern drawn = PatternFiles.read(original);
        String name = printed.card().name();
        if (!drawn.card().name().equals(name)) {
            throw new Refusal(new Reason.Missing(
                    Message.of("program.another-pattern", drawn.card().name(), name),
                    Where.inFile(original.getFileName().toString())));
        }
        sizes(printed).forEach(one -> Pieces.named(original, () -> drawn.in(one)));
        return drawn;
    }

    /** "150cm" is the main cloth's width, "lining=90cm" that of another. */
    private ClothWidths cloths() {
        ClothWidths widths = nap ? ClothWidths.USUAL.with(ClothWidths.Nap.ONE_WAY) : ClothWidths.USUAL;
        for (String cloth : cloths) {
            int equals = cloth.indexOf('=');
            String name =
                    equals < 0 ? ClothWidths.MAIN : cloth.substring(0, equals).strip();
            widths = widths.with(name, Length.parse(cloth.substring(equals + 1), Unit.MILLIMETRE));
        }
        return widths;
    }

    private List<String> sizes(Pattern pattern) {
        if (pattern.hasSize(size.strip())) {
            return List.of(size.strip());
        }
        if (size.strip().equals("all")) {
            return pattern.sizes();
        }
        List<String> named = Stream.of(size.split(",")).map(String::strip).toList();
        if (named.isEmpty() || named.size() != named.stream().distinct().count()) {
            throw new Refusal(new Reason.Unreadable(Message.of("program.sizes-unreadable", size), Where.UNKNOWN));
        }
        return named;
    }

    private void tell(PrintWriter out, Printed printed) {
        PrintOptions options = printed.options();
        printed.notes().forEach(note -> out.println("note: " + note));
        String where = folder.resolve("pages.pdf") + ", and one by one to " + folder.resolve("pages");
        if (options.paper().kind() == Paper.Kind.PROJECTION) {
            out.println("1 sheet for " + options.paper().name() + " written to " + where);
        } else {
            int pages = printed.pages().size();
            String taped = pages == 1
                    ? "1 page of " + options.paper().name()
                    : pages + " pages of " + options.paper().name() + " to tape together";
            String read = printed.leaves().isEmpty()
                    ? ""
                    : ", and " + printed.leaves().size() + " to read,";
            out.println(taped + read + " written to " + where + "; map.svg shows how they go together");
            int least = printed.leastPages();
            out.println("The area of the pieces alone would fill " + (least == 1 ? "1 page." : least + " pages."));
        }
        if (options.paper().kind() == Paper.Kind.PROJECTION) {
            out.println("Measure the grid on the cloth, across and down, before you cut.");
        } else {
            printed.toMeasure()
                    .ifPresent(page -> out.println("Print page " + page.name()
                            + " alone first, at 100 %, and measure its squares: 100 mm and 4 in."));
        }
        if (options.scale() != Scale.FULL) {
            out.println("These pages are " + options.scale().words() + ", not for cutting.");
        }
        out.println("Sew a toile before you cut good cloth.");
    }
}
