package dev.hingepoint.samples.bench;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.samples.example.Batch;
import dev.hingepoint.svg.file.LedgerJson;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.file.WholeFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Dresses altered on two threads, three alterations each, no two in a row alike, and written as altered patterns with their ledgers into a folder that is deleted at the end. */
final class Dresses {
    private static final List<String> SIZES = List.of("36", "38", "40", "42", "44", "46");

    private final Pattern pattern;
    private final Path folder;

    Dresses() throws IOException {
        pattern = PatternFiles.read(Path.of(System.getProperty(Benchmarks.MODULE), "patterns", "larkfield.yaml"));
        folder = Files.createTempDirectory("dresses");
    }

    /** @param done hears of each, by its number, in order */
    void written(int many, IntConsumer done) {
        new Batch(2).run(IntStream.range(0, many).boxed().iterator(), this::write, done::accept);
    }

    private int write(int number) {
        Order order = Order.of(
                SIZES.get(number % SIZES.size()),
                AlterationRequest.of("full bust").with("spread", (10 + number % 11) + " mm"),
                AlterationRequest.of("hip blend").with("hip", "+" + (20 + number % 17) + " mm"),
                AlterationRequest.of("sway back").with("wedge", (8 + number % 7) + " mm"));
        Fitting fitting = Fitting.of(pattern, order);
        Map<String, String> files =
                new LinkedHashMap<>(PatternFiles.contents(fitting.after().pattern(), "altered"));
        files.put("ledger.json", LedgerJson.write(fitting.ledger()));
        WholeFiles.writeAll(folder.resolve(Integer.toString(number)), files);
        return number;
    }

    void delete() throws IOException {
        try (Stream<Path> written = Files.walk(folder)) {
            written.sorted(Comparator.reverseOrder()).forEach(file -> {
                try {
                    Files.delete(file);
                } catch (IOException wrong) {
                    throw new UncheckedIOException(wrong);
                }
            });
        }
    }
}
