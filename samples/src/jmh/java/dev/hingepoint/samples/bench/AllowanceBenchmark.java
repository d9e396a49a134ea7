package dev.hingepoint.samples.bench;

import dev.hingepoint.allowance.AllowancePlan;
import dev.hingepoint.allowance.CuttingLine;
import dev.hingepoint.pattern.JtsBridge;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.pattern.Piece;
import dev.hingepoint.svg.file.PatternFiles;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The allowance of one piece, against JTS's mitred buffer of the same outline flattened to the same tolerance. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class AllowanceBenchmark {
    @Param({"front", "back", "sleeve"})
    private String name;

    private Piece piece;
    private AllowancePlan plan;

    @Setup
    public void read() {
        Path patterns = Path.of(System.getProperty(Benchmarks.MODULE), "patterns");
        Pattern pattern = PatternFiles.read(patterns.resolve("larkfield.yaml"));
        piece = pattern.in("40").piece(name);
        plan = AllowancePlan.of(pattern.card().allowances(), piece);
    }

    @Benchmark
    public CuttingLine cuttingLine() {
        return CuttingLine.of(piece, plan);
    }

    @Benchmark
    public Geometry jtsMitredBuffer() {
        BufferParameters mitred = new BufferParameters(8, BufferParameters.CAP_ROUND, BufferParameters.JOIN_MITRE, 10);
        mitred.setSimplifyFactor(0);
        return new BufferOp(JtsBridge.polygon(piece), mitred).getResultGeometry(15);
    }
}
