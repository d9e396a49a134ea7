package dev.hingepoint.samples.bench;

import java.io.IOException;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** A long batch in one go: what the heap holds after a collection, told as the dresses are done, does not grow with them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
public class MemoryBenchmark {
    private static final int TOLD = 5;

    @Param("5000")
    private int dresses;

    private Dresses batch;

    @Setup
    public void read() throws IOException {
        batch = new Dresses();
    }

    @Benchmark
    public void heap() {
        Duration before = processorTime();
        batch.written(dresses, number -> {
            if ((number + 1) % (dresses / TOLD) == 0) {
                System.gc();
                Runtime runtime = Runtime.getRuntime();
                long used = (runtime.totalMemory() - runtime.freeMemory()) / 1_000_000;
                System.out.print(" [" + (number + 1) + " dresses: " + used + " MB]");
            }
        });
        long each = processorTime().minus(before).dividedBy(dresses).toMillis();
        System.out.print(" [" + each + " ms of processor time each] ");
    }

    /** What this process alone has used: how long it takes on a shared machine says more of the others. */
    private static Duration processorTime() {
        return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
    }

    @TearDown
    public void delete() throws IOException {
        batch.delete();
    }
}
