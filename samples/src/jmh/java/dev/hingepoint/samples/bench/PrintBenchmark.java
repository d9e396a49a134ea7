package dev.hingepoint.samples.bench;

import dev.hingepoint.pattern.Draft;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.svg.file.PatternFiles;
import dev.hingepoint.svg.page.Paper;
import dev.hingepoint.svg.print.PrintOptions;
import dev.hingepoint.svg.print.Printed;
import dev.hingepoint.svg.print.Printing;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Printing a whole wardrobe in one go, in 512 MB, cold: the time a page must not grow with the pages. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx512m")
public class PrintBenchmark {
    @Param({"10", "20", "40"})
    private int pieces;

    @Param({"1", "10"})
    private int sizes;

    private List<Draft> drafts;

    @Setup
    public void read() {
        Path patterns = Path.of(System.getProperty(Benchmarks.MODULE), "patterns");
        Pattern dress = PatternFiles.read(patterns.resolve("larkfield.yaml"));
        drafts = LargePattern.of(dress, pieces, sizes);
    }

    @Benchmark
    public int printing() {
        Printed printed = Printing.print(drafts, PrintOptions.of(Paper.A4));
        int bytes = Printing.contents(printed).size() + Printing.pdf(printed).length;
        System.out.print(" [" + printed.pages().size() + " pages, PDF of " + bytes / 1000 + " kB] ");
        return bytes;
    }
}
