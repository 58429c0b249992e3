package slipway.benchmarks;

import slipway.mechanics.pathway.KernelProblem;

/** The same Newton steps as the kernel, one draw at a time in plain scalar Java: what batching is held against. */
final class ScalarSolver {
    private static final double TOLERANCE_M = 1e-6;
    private static final int MAX_STEPS = 60;

    private final int nodes;
    private final int[] parent;
    private final double[] perM;
    private final double[] slope;
    private final double[] force;
    private final double[] diagonal;
    private final double[] step;

    ScalarSolver(KernelProblem problem) {
        nodes = problem.tree().nodes();
        parent = new int[nodes];
        perM = new double[nodes];
        for (int i = 0; i < nodes; i++) {
            parent[i] = problem.tree().parent(i);
            perM[i] = i == 0 ? 0 : 1 / problem.tree().edgeLengthM(i);
        }
        slope = new double[nodes];
        force = new double[nodes];
        diagonal = new double[nodes];
        step = new double[nodes];
    }

    /** Solves one draw in full Newton steps; the slides are overwritten. Returns the number of steps. */
    int solve(Draw draw, double[] w) {
        for (int iteration = 1; iteration <= MAX_STEPS; iteration++) {
            assemble(draw, w);
            if (eliminate(w) <= TOLERANCE_M) {
                return iteration;
            }
        }
        throw new IllegalStateException("the scalar solver did not converge");
    }

    private void assemble(Draw draw, double[] w) {
        for (int i = 0; i < nodes; i++) {
            force[i] = -draw.hold[i] * w[i];
            diagonal[i] = draw.hold[i];
        }
        double taut = 1 - draw.slack;
        for (int i = 1; i < nodes; i++) {
            int p = parent[i];
            double strain = draw.bed[i] + (w[i] - w[p]) * perM[i];
            double x = strain - draw.midpoint;
            double root = Math.sqrt(x * x + draw.width * draw.width);
            double tension = draw.stiffness[i] * (draw.slack * strain + taut * (0.5 * (x + root) - draw.rampAtZero));
            double edge = draw.stiffness[i] * perM[i] * (draw.slack + taut * 0.5 * (1 + x / root));
            slope[i] = edge;
            force[i] -= tension;
            force[p] += tension;
            diagonal[i] += edge;
            diagonal[p] += edge;
        }
    }

    private double eliminate(double[] w) {
        for (int i = nodes - 1; i > 0; i--) {
            double share = slope[i] / diagonal[i];
            diagonal[parent[i]] -= slope[i] * share;
            force[parent[i]] += share * force[i];
        }
        step[0] = force[0] / diagonal[0];
        double largest = Math.abs(step[0]);
        w[0] += step[0];
        for (int i = 1; i < nodes; i++) {
            step[i] = (force[i] + slope[i] * step[parent[i]]) / diagonal[i];
            w[i] += step[i];
            largest = Math.max(largest, Math.abs(step[i]));
        }
        return largest;
    }

    /** One lane of a problem, laid out by node. */
    static final class Draw {
        final double[] stiffness;
        final double[] hold;
        final double[] bed;
        final double midpoint;
        final double width;
        final double slack;
        final double rampAtZero;

        Draw(KernelProblem problem, int lane) {
            int n = problem.tree().nodes();
            stiffness = column(problem.tissue().axialStiffness(), lane, n);
            hold = column(problem.tissue().holdPerM(), lane, n);
            bed = column(problem.bedElongation(), lane, n);
            midpoint = problem.tissue().toeMidpoint()[lane];
            width = problem.tissue().toeWidth()[lane];
            slack = problem.tissue().slackSlope()[lane];
            rampAtZero = 0.5 * (Math.sqrt(midpoint * midpoint + width * width) - midpoint);
        }

        private static double[] column(double[][] rows, int lane, int n) {
            double[] column = new double[n];
            for (int i = 0; i < n; i++) {
                column[i] = rows[i][lane];
            }
            return column;
        }
    }
}
