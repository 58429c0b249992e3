package slipway.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.CaseFiles;
import slipway.care.visit.Visit;
import slipway.care.visit.VisitPlan;

/** A whole plan of three glides with 512 draws and the search of their ranges, on all cores. Run from the root. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
@Fork(1)
public class PlanBenchmark {
    private CaseFile file = read();

    private static CaseFile read() {
        Path path = Path.of("examples", "low-irritability-stiff.yaml");
        try {
            return CaseFiles.read(Files.readAllBytes(path), path.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** From the case to the plan. */
    @Benchmark
    public VisitPlan plan() {
        return Visit.plan(file, "benchmark");
    }
}
