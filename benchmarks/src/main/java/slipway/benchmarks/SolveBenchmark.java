package slipway.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.cable.CableSolver;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.KernelProblem;

/** One posture solved from the reference state in one thread, per draw: batched kernel, scalar Java, general library. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SolveBenchmark {
    /** As many draws as the program solves together. */
    static final int LANES = 128;

    static final String POSTURE = "hip 60 knee 10 ankle 10 neck 10";

    private KernelProblem problem = problem();
    private CableSolver kernel = new CableSolver(problem.tree(), problem.tissue());
    private double[][] slides = new double[problem.tree().nodes()][LANES];
    private ScalarSolver scalar = new ScalarSolver(problem);
    private LibrarySolver library = new LibrarySolver(problem);
    private ScalarSolver.Draw[] draws = new ScalarSolver.Draw[LANES];
    private double[] slide = new double[problem.tree().nodes()];

    static KernelProblem problem() {
        var draws = FittedParameters.bundled().draws(LANES, 1).vectors();
        return KernelProblem.of(Person.STANDARD, draws, Posture.parse(POSTURE));
    }

    /** Lays the draws out one by one for the solvers that want them so. */
    @Setup
    public void layOut() {
        for (int l = 0; l < LANES; l++) {
            draws[l] = new ScalarSolver.Draw(problem, l);
        }
    }

    /** The kernel of the program, all draws of a block together. */
    @Benchmark
    @OperationsPerInvocation(LANES)
    public int batched() {
        for (double[] row : slides) {
            java.util.Arrays.fill(row, 0);
        }
        return kernel.solve(problem.bedElongation(), slides);
    }

    /** One draw after the other. */
    @Benchmark
    @OperationsPerInvocation(LANES)
    public int scalar() {
        int steps = 0;
        for (int l = 0; l < LANES; l++) {
            java.util.Arrays.fill(slide, 0);
            steps += scalar.solve(draws[l], slide);
        }
        return steps;
    }

    /** One draw with dense matrices. */
    @Benchmark
    public int library() {
        java.util.Arrays.fill(slide, 0);
        return library.solve(draws[0], slide);
    }
}
