package dev.hingepoint.samples;

import dev.hingepoint.check.Measurements;
import dev.hingepoint.fit.Body;
import dev.hingepoint.fit.Ease;
import dev.hingepoint.fit.FitCheck;
import dev.hingepoint.fit.FitRules;
import dev.hingepoint.fit.GettingIn;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Length;
import dev.hingepoint.pattern.Unit;
import dev.hingepoint.svg.file.BodyReader;
import dev.hingepoint.svg.file.MeasurementsJson;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.print.EaseChart;
import dev.hingepoint.svg.print.MeasuringSheet;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code measure}: the finished garment, from the geometry of its pieces. */
@Command(
        name = "measure",
        mixinStandardHelpOptions = true,
        description =
                "Shows the finished measurements, darts closed; with a body, the ease; and whether one can get in.",
        footer = {
            "",
            "Examples: hingepoint measure larkfield.yaml --unit cm",
            "          hingepoint measure larkfield.yaml --size 40 --body ida.yaml --chart ease.svg",
            "          hingepoint measure --sheet sheet.svg    # a form to print and write a body on",
            "Exit 1 where one cannot get into the garment."
        })
final class MeasureCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "CARD.yaml", description = "The pattern's card.")
    private Path card;

    @Option(names = "--size", paramLabel = "S", description = "One size. Default: all sizes.")
    private String size;

    @Option(names = "--front", paramLabel = "NAME", description = "A second front, where one is drawn.")
    private String front;

    @Option(names = "--body", paramLabel = "BODY.yaml", description = "A body: shows the ease at each level.")
    private Path bodyFile;

    @Option(
            names = "--unit",
            defaultValue = "mm",
            converter = Units.class,
            paramLabel = "UNIT",
            description = "mm, cm or in. Default: ${DEFAULT-VALUE}.")
    private Unit unit;

    @Option(names = "--json", description = "Prints JSON, in mm.")
    private boolean json;

    @Option(names = "--chart", paramLabel = "FILE", description = "Draws the ease as SVG; needs --body and --size.")
    private Path chart;

    @Option(names = "--sheet", paramLabel = "FILE", description = "Writes a measuring sheet to print.")
    private Path sheet;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (card == null && sheet == null) {
            throw wrong("name a card to measure, or --sheet FILE");
        }
        if (chart != null && (bodyFile == null || size == null)) {
            throw wrong("--chart needs --body and --size");
        }
        int code = card == null ? Hingepoint.DONE : measured(out);
        if (sheet != null) {
            Pieces.write(sheet, MeasuringSheet.svg());
            if (!json) {
                out.println("measuring sheet written to " + sheet);
            }
        }
        return code;
    }

    private ParameterException wrong(String what) {
        return new ParameterException(spec.commandLine(), what);
    }

    private int measured(PrintWriter out) {
        PatternFiles.LoadedPattern loaded = PatternFiles.readWithNotes(card);
        Optional<Body> body = Optional.ofNullable(bodyFile).map(file -> BodyReader.read(file));
        Map<String, Draft> drafts = new LinkedHashMap<>();
        for (String one : size == null ? loaded.pattern().sizes() : List.of(size)) {
            drafts.put(one, Pieces.of(loaded, card, one, Optional.ofNullable(front)));
        }
        Map<String, List<Ease>> ease = new LinkedHashMap<>();
        Map<String, List<GettingIn.Narrow>> narrow = new LinkedHashMap<>();
        drafts.forEach((one, draft) -> {
            Body wearer = body.orElseGet(() -> FitCheck.charted(loaded.pattern(), one));
            narrow.put(one, GettingIn.into(draft, wearer, FitRules.USUAL));
            body.ifPresent(given ->
                    ease.put(one, Pieces.named(card, () -> FitCheck.ease(draft, given, FitRules.USUAL))));
        });
        if (json) {
            out.print(MeasurementsJson.write(loaded.pattern().card().name(), drafts, ease, narrow));
        } else {
            loaded.notes().forEach(note -> out.println("note: " + note));
            table(out, loaded.pattern().card().name(), drafts, ease);
            gettingIn(out, narrow);
        }
        if (chart != null) {
            String title = loaded.pattern().card().name() + ", size " + size + ": ease";
            Pieces.write(chart, EaseChart.svg(title, ease.get(size), unit));
            if (!json) {
                out.println("ease drawn in " + chart);
            }
        }
        boolean canGetIn = narrow.values().stream().flatMap(List::stream).allMatch(GettingIn.Narrow::isWideEnough);
        return canGetIn ? Hingepoint.DONE : Hingepoint.DOES_NOT_HOLD_UP;
    }

    private void table(PrintWriter out, String pattern, Map<String, Draft> drafts, Map<String, List<Ease>> ease) {
        Table table = new Table(drafts.keySet());
        Map<String, Map<String, Double>> finished = new LinkedHashMap<>();
        Set<String> names = new LinkedHashSet<>();
        drafts.forEach((one, draft) -> {
            finished.put(one, Measurements.of(draft));
            names.addAll(finished.get(one).keySet());
        });
        for (String name : names) {
            table.row(
                    name,
                    drafts.keySet().stream()
                            .map(one -> shown(finished.get(one).get(name)))
                            .toList());
        }
        out.println(pattern + ": finished measurements, whole garment, darts closed");
        table.print(out);
        if (!ease.isEmpty()) {
            Table easeTable = new Table(drafts.keySet());
            for (String level : FitCheck.LEVELS) {
                List<String> row = new ArrayList<>();
                ease.values()
                        .forEach(rows -> row.add(rows.stream()
                                .filter(one -> one.level().equals(level))
                                .map(one -> shown(one.ease()) + (one.isShort() ? " !" : ""))
                                .findFirst()
                                .orElse("-")));
                if (!row.stream().allMatch("-"::equals)) {
                    easeTable.row(level + " ease", row);
                }
            }
            out.println();
            out.println("ease on this body; ! where it is less than it should be");
            easeTable.print(out);
        }
    }

    private String shown(Double mm) {
        return mm == null ? "-" : new Length(mm).shownIn(unit);
    }

    private static void gettingIn(PrintWriter out, Map<String, List<GettingIn.Narrow>> narrow) {
        List<String> tooNarrow = new ArrayList<>();
        narrow.forEach((one, places) -> places.stream()
                .filter(place -> !place.isWideEnough())
                .forEach(place -> tooNarrow.add("size " + one + ": " + place.sentence())));
        out.println();
        if (narrow.values().stream().allMatch(List::isEmpty)) {
            out.println("Getting in: nothing can be told without a front, a back and their necklines.");
        } else if (tooNarrow.isEmpty()) {
            out.println("Getting in: one can.");
        }
        tooNarrow.forEach(line -> out.println("Getting in, " + line));
    }
}
