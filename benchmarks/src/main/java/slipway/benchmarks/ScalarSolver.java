package slipway.benchmarks;

import java.util.Arrays;
import slipway.mechanics.pathway.KernelProblem;

/** The same two passes as the kernel, one draw at a time in plain scalar Java: what batching is held against. */
final class ScalarSolver {
    private static final double TOLERANCE_M = 1e-6;
    private static final int MAX_STEPS = 60;

    private final int nodes;
    private final int[] parent;
    private final double[] perM;
    private final double[] force;
    private final double[] diagonal;
    private final double[] share;
    private final double[] own;
    private final double[] step;

    ScalarSolver(KernelProblem problem) {
        nodes = problem.tree().nodes();
        parent = new int[nodes];
        perM = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            parent[i] = problem.tree().parent(i);
            perM[i] = i == 0 ? 0 : 1 / problem.tree().edgeLengthM(i);
        }
        force = new double[nodes];
        diagonal = new double[nodes];
        share = new double[nodes];
        own = new double[nodes];
        step = new double[nodes];
    }

    /** Solves one draw in full Newton steps; the slides are overwritten. Returns the number of steps. */
    int solve(Draw draw, double[] w) {
        for (int iteration = 1; iteration <= MAX_STEPS; iteration++) {
            eliminate(draw, w);
            if (takeStep(w) <= TOLERANCE_M) {
                return iteration;
            }
        }
        throw new IllegalStateException("the scalar solver did not converge");
    }

    /** From the leaves to the root: tension and slope of each edge, and its node eliminated at once. */
    private void eliminate(Draw draw, double[] w) {
        Arrays.fill(force, 0);
        Arrays.fill(diagonal, 0);
        for (int i = nodes - 1; i > 0; i--) {
            int p = parent[i];
            double x = draw.bed[i] + (w[i] - w[p]) * perM[i] - draw.midpoint;
            double root = Math.sqrt(x * x + draw.widthSquared);
            double tension = draw.stiffness[i] * (x + draw.bend * root + draw.level);
            double slope = draw.stiffness[i] * perM[i] * (1 + draw.bend * x / root);
            double inverse = 1 / (diagonal[i] + draw.hold[i] + slope);
            share[i] = slope * inverse;
            own[i] = (force[i] - tension - draw.hold[i] * w[i]) * inverse;
            force[p] += tension + slope * own[i];
            diagonal[p] += slope - slope * share[i];
        }
        own[0] = (force[0] - draw.hold[0] * w[0]) / (diagonal[0] + draw.hold[0]);
    }

    private double takeStep(double[] w) {
        step[0] = own[0];
        w[0] += own[0];
        double largest = Math.abs(own[0]);
        for (int i = 1; i < nodes; i++) {
            step[i] = own[i] + share[i] * step[parent[i]];
            w[i] += step[i];
            largest = Math.max(largest, Math.abs(step[i]));
        }
        return largest;
    }

    /** One lane of a problem, laid out by node; the curve of tension over strain as the kernel has it. */
    static final class Draw {
        /** E, b and c of the tension {@code E (x + b r + c)}. */
        final double[] stiffness;

        final double bend;
        final double level;
        final double midpoint;
        final double widthSquared;
        final double[] hold;
        final double[] bed;

        Draw(KernelProblem problem, int lane) {
            int n = problem.tree().nodes();
            double slack = problem.tissue().slackSlope()[lane];
            double width = problem.tissue().toeWidth()[lane];
            stiffness = column(problem.tissue().axialStiffness(), lane, n, 0.5 * (1 + slack));
            bend = (1 - slack) / (1 + slack);
            midpoint = problem.tissue().toeMidpoint()[lane];
            widthSquared = width * width;
            level = midpoint - bend * Math.sqrt(midpoint * midpoint + widthSquared);
            hold = column(problem.tissue().holdPerM(), lane, n, 1);
            bed = column(problem.bedElongation(), lane, n, 1);
        }

        private static double[] column(double[][] rows, int lane, int n, double times) {
            double[] column = new double[n];
            for (int i = 0; i < n; i++) {
                column[i] = rows[i][lane] * times;
            }
            return column;
        }
    }
}
