package slipway.benchmarks;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import slipway.mechanics.cable.CableSolver;
import slipway.mechanics.pathway.KernelProblem;

/** Writes the benchmark's problem as numbers for the C kernel, with the kernel's own solution to check it by. */
public final class DumpProblem {
    private DumpProblem() {}

    /** Takes the file to write. */
    public static void main(String[] args) throws IOException {
        KernelProblem problem = SolveBenchmark.problem();
        int nodes = problem.tree().nodes();
        int lanes = SolveBenchmark.LANES;
        double[][] slides = new double[nodes][lanes];
        int steps = new CableSolver(problem.tree(), problem.tissue()).solve(problem.bedElongation(), slides);
        try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(Path.of(args[0])))) {
            out.println(nodes + " " + lanes + " " + steps);
            for (int i = 0; i < nodes; i++) {
                out.println(problem.tree().parent(i) + " "
                        + (i == 0 ? 1 : problem.tree().edgeLengthM(i)));
            }
            for (double[][] rows : new double[][][] {
                problem.tissue().axialStiffness(), problem.tissue().holdPerM(), problem.bedElongation(), slides
            }) {
                for (double[] row : rows) {
                    write(out, row);
                }
            }
            write(out, problem.tissue().toeMidpoint());
            write(out, problem.tissue().toeWidth());
            write(out, problem.tissue().slackSlope());
        }
    }

    private static void write(PrintWriter out, double[] row) {
        var line = new StringBuilder();
        for (double value : row) {
            line.append(value).append(' ');
        }
        out.println(line.toString().strip());
    }
}
