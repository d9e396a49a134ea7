package dev.hingepoint.samples.bench;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.svg.file.OrderReader;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.print.PrintOptions;
import dev.hingepoint.svg.print.Printed;
import dev.hingepoint.svg.print.Printing;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** The main job on the Larkfield dress: reading, altering, printing. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class DressBenchmark {
    private Path card;
    private Pattern pattern;
    private Order order;
    private Draft altered;
    private Printed printed;

    @Setup
    public void read() {
        Path patterns = Path.of(System.getProperty(Benchmarks.MODULE), "patterns");
        card = patterns.resolve("larkfield.yaml");
        pattern = PatternFiles.read(card);
        order = OrderReader.read(patterns.resolve("concert-order.yaml")).order();
        altered = Fitting.of(pattern, order).after();
        printed = Printing.print(altered, PrintOptions.of(Paper.A4));
    }

    @Benchmark
    public Pattern reading() {
        return PatternFiles.read(card);
    }

    @Benchmark
    public Fitting allThreeAlterations() {
        return Fitting.of(pattern, order);
    }

    @Benchmark
    public Printed printing() {
        return Printing.print(altered, PrintOptions.of(Paper.A4));
    }

    @Benchmark
    public Map<String, String> writingSvg() {
        return Printing.contents(printed);
    }

    @Benchmark
    public byte[] writingPdf() {
        return Printing.pdf(printed);
    }

    @TearDown
    public void size() {
        System.out.print(" [A4, " + printed.all().size() + " pages: PDF of " + Printing.pdf(printed).length / 1000 + " kB] ");
    }
}
