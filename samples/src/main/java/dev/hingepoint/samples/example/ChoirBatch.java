package dev.hingepoint.samples.example;

import de.siegmar.fastcsv.writer.CsvWriter;
import dev.hingepoint.Refusal;
import dev.hingepoint.alter.Fitting;
import dev.hingepoint.check.Ledger;
import dev.hingepoint.fit.Plan;
import dev.hingepoint.fit.Planner;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.svg.file.LedgerJson;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.file.WholeFiles;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A dress for everyone on a list: each body is planned for, the pattern altered for it and written to a folder of its own, several at a time. A body that is
 * refused is told, and stops nobody else's dress. Progress goes to the standard error, {@code summary.csv} is written row by row as the dresses are done, and
 * a table ends it; memory stays flat however long the list is.
 *
 * <p>Run it in the repository's top folder: {@code java -cp samples/target/hingepoint.jar dev.hingepoint.samples.example.ChoirBatch dresses}
 */
public final class ChoirBatch {
    private static final int TOLD_EVERY = 20;

    private final Pattern pattern;
    private final Path folder;

    private ChoirBatch(Pattern pattern, Path folder) {
        this.pattern = pattern;
        this.folder = folder;
    }

    /**
     * @param arguments the folder to write to, the list, and the pattern's card
     * @throws IOException where the summary cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments.length == 0 ? "dresses" : arguments[0]);
        Path list = Path.of(arguments.length < 2 ? "samples/patterns/choir.csv" : arguments[1]);
        Path card = Path.of(arguments.length < 3 ? "samples/patterns/larkfield.yaml" : arguments[2]);
        run(folder, list, card, System.out, System.err);
    }

    /** The same with its table and its progress going elsewhere. */
    static void run(Path folder, Path list, Path card, PrintStream table, PrintStream progress) throws IOException {
        ChoirBatch choir = new ChoirBatch(PatternFiles.read(card), folder);
        Batch batch = new Batch(Runtime.getRuntime().availableProcessors());
        Summary summary = new Summary();
        Files.createDirectories(folder);
        try (CsvWriter rows = CsvWriter.builder().build(folder.resolve("summary.csv"))) {
            rows.writeRecord(Outcome.COLUMNS);
            Singer.each(
                    list,
                    singers -> batch.run(singers, choir::dress, outcome -> {
                        rows.writeRecord(outcome.cells());
                        summary.add(outcome);
                        if (summary.all() % TOLD_EVERY == 0) {
                            progress.println(summary.all() + " done");
                        }
                    }));
        }
        summary.lines().forEach(table::println);
    }

    /** What became of one singer's dress: only what the summary needs, so that pattern and drawings can go. */
    record Outcome(
            Singer singer,
            String size,
            int alterations,
            List<String> look,
            List<String> notes,
            int brokenSeams,
            Optional<String> refused) {
        static final List<String> COLUMNS = List.of(
                "singer", "voice", "size", "alterations", "look", "notes", "seams that no longer match", "refused");

        static Outcome refused(Singer singer, Refusal refusal) {
            String why = refusal.reason().sentence();
            return new Outcome(singer, "", 0, List.of(), List.of(), 0, Optional.of(why));
        }

        List<String> cells() {
            return List.of(
                    singer.number(),
                    singer.voice(),
                    size,
                    Integer.toString(alterations),
                    String.join("; ", look),
                    String.join("; ", notes),
                    Integer.toString(brokenSeams),
                    refused.orElse(""));
        }
    }

    private Outcome dress(Singer singer) {
        try {
            Plan plan = Planner.plan(pattern, singer.body());
            Fitting fitting = Fitting.of(pattern, plan.order());
            Map<String, String> files =
                    new LinkedHashMap<>(PatternFiles.contents(fitting.after().pattern(), "altered"));
            files.put("ledger.json", LedgerJson.write(fitting.ledger()));
            WholeFiles.writeAll(folder.resolve(singer.folder()), files);
            List<Ledger.SeamLine> broken = fitting.brokenSeams();
            return new Outcome(
                    singer,
                    plan.size(),
                    plan.alterations().size(),
                    plan.problems(),
                    fitting.notes(),
                    broken.size(),
                    Optional.empty());
        } catch (Refusal refusal) {
            return Outcome.refused(singer, refusal);
        }
    }

    /** Counts, and why what was refused was. */
    private static final class Summary {
        private final Map<String, Integer> counts = new LinkedHashMap<>();
        private final List<String> refused = new ArrayList<>();
        private int all;

        Summary() {
            List.of("done", "done, with something to look at", "refused", "seams that no longer match")
                    .forEach(line -> counts.put(line, 0));
        }

        void add(Outcome outcome) {
            all++;
            outcome.refused()
                    .ifPresent(why -> refused.add("  " + outcome.singer().number() + ": " + why));
            String line = outcome.refused().isPresent()
                    ? "refused"
                    : outcome.look().isEmpty() ? "done" : "done, with something to look at";
            counts.merge(line, 1, Integer::sum);
            counts.merge("seams that no longer match", outcome.brokenSeams(), Integer::sum);
        }

        int all() {
            return all;
        }

        List<String> lines() {
            List<String> lines = new ArrayList<>(List.of(all + " singers"));
            counts.forEach((line, count) -> lines.add(String.format(Locale.ROOT, "%-32s %5d", line, count)));
            lines.add("refused, and why:");
            lines.addAll(refused);
            return lines;
        }
    }
}
