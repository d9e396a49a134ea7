package dev.hingepoint.samples.bench;

import java.io.IOException;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** Dresses a second, in batches of 200 on two threads, written to disk. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class BatchBenchmark {
    private static final int DRESSES = 200;

    private Dresses dresses;

    @Setup
    public void read() throws IOException {
        dresses = new Dresses();
    }

    @Benchmark
    @OperationsPerInvocation(DRESSES)
    public void dressesWritten() {
        dresses.written(DRESSES, number -> {});
    }

    @TearDown
    public void delete() throws IOException {
        dresses.delete();
    }
}
