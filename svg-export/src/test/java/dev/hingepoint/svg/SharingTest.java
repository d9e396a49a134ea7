package dev.hingepoint.svg;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.svg.file.LedgerJson;
import dev.hingepoint.svg.file.OrderReader;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.print.PrintOptions;
import dev.hingepoint.svg.print.Printing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** One pattern, one order and one set of options, shared by eight threads: all of them get the same bytes. */
class SharingTest {
    private static final int THREADS = 8;
    private static final Path PATTERNS = Path.of("../samples/patterns");

    private record Written(Map<String, String> pattern, String ledger, byte[] pdf) {}

    private static Written written(Pattern pattern, Order order, PrintOptions options) {
        Fitting fitting = Fitting.of(pattern, order);
        return new Written(
                PatternFiles.contents(fitting.after().pattern(), "altered"),
                LedgerJson.write(fitting.ledger()),
                Printing.pdf(Printing.print(fitting.after(), options)));
    }

    @Test
    void theSameOrderFromEightThreadsGivesTheSameBytes() throws Exception {
        OrderReader.ReadOrder read = OrderReader.read(PATTERNS.resolve("concert-order.yaml"));
        PrintOptions options = PrintOptions.of(Paper.A4);
        Written alone = written(PatternFiles.read(read.card()), read.order(), options);
        assertTrue(alone.pdf().length > 10_000, "a PDF of " + alone.pdf().length + " bytes");

        // read afresh, so that what is found late is looked for by all of them at once
        Pattern shared = PatternFiles.read(read.card());
        CyclicBarrier together = new CyclicBarrier(THREADS);
        Callable<Written> job = () -> {
            together.await();
            return written(shared, read.order(), options);
        };
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        List<Future<Written>> all = new ArrayList<>();
        for (int i = 0; i < THREADS; i++) {
            all.add(threads.submit(job));
        }
        threads.shutdown();
        for (Future<Written> one : all) {
            assertEquals(alone.pattern(), one.get().pattern());
            assertEquals(alone.ledger(), one.get().ledger());
            assertArrayEquals(alone.pdf(), one.get().pdf());
        }
    }
}
