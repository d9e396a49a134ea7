package dev.hingepoint.samples.bench;

import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Runs the benchmarks, each in a process of its own with 256 MB: once and briefly as a smoke test, or properly. */
public final class Benchmarks {
    /** The system property that says where the samples module lies. */
    static final String MODULE = "hingepoint.samples";

    private static final String COLD = "(PrintBenchmark|MemoryBenchmark).*";

    /** How many dresses are enough to see that the benchmark of memory runs. */
    private static final String FEW = "200";

    private Benchmarks() {}

    /** @param arguments the folder of the samples module, then {@code smoke} or {@code full} */
    public static void main(String[] arguments) throws RunnerException {
        boolean isSmoke = arguments.length > 1 && arguments[1].equals("smoke");
        ChainedOptionsBuilder warm = options(arguments[0], ".*").exclude(COLD);
        warm = isSmoke
                ? warm.warmupIterations(0).measurementIterations(1).measurementTime(TimeValue.milliseconds(100))
                : warm.warmupIterations(4)
                        .warmupTime(TimeValue.seconds(1))
                        .measurementIterations(5)
                        .measurementTime(TimeValue.seconds(1));
        new Runner(warm.build()).run();
        // as a process meets it: once, with nothing warm
        ChainedOptionsBuilder cold =
                options(arguments[0], COLD).warmupIterations(0).measurementIterations(1);
        new Runner((isSmoke ? cold.param("dresses", FEW) : cold).build()).run();
    }

    private static ChainedOptionsBuilder options(String module, String included) {
        return new OptionsBuilder()
                .include("dev\\.hingepoint\\.samples\\.bench\\." + included)
                .threads(1)
                .forks(1)
                .jvmArgs("-Xmx256m", "-D" + MODULE + "=" + module);
    }
}
