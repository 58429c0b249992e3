package slipway.benchmarks;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import slipway.mechanics.pathway.KernelProblem;

/** The same Newton steps with the general linear algebra of a library: what knowing the tree is held against. */
final class LibrarySolver {
    private static final double TOLERANCE_M = 1e-6;
    private static final int MAX_STEPS = 60;

    private final KernelProblem problem;

    LibrarySolver(KernelProblem problem) {
        this.problem = problem;
    }

    /** Solves one draw in full Newton steps; the slides are overwritten. Returns the number of steps. */
    int solve(ScalarSolver.Draw draw, double[] w) {
        int nodes = w.length;
        for (int iteration = 1; iteration <= MAX_STEPS; iteration++) {
            RealMatrix matrix = new Array2DRowRealMatrix(nodes, nodes);
            RealVector force = new ArrayRealVector(nodes);
            assemble(draw, w, matrix, force);
            RealVector step = new LUDecomposition(matrix).getSolver().solve(force);
            for (int i = 0; i < nodes; i++) {
                w[i] += step.getEntry(i);
            }
            if (step.getLInfNorm() <= TOLERANCE_M) {
                return iteration;
            }
        }
        throw new IllegalStateException("the library solver did not converge");
    }

    private void assemble(ScalarSolver.Draw draw, double[] w, RealMatrix matrix, RealVector force) {
        for (int i = 0; i < w.length; i++) {
            force.addToEntry(i, -draw.hold[i] * w[i]);
            matrix.addToEntry(i, i, draw.hold[i]);
            if (i == 0) {
                continue;
            }
            int p = problem.tree().parent(i);
            double perM = 1 / problem.tree().edgeLengthM(i);
            double x = draw.bed[i] + (w[i] - w[p]) * perM - draw.midpoint;
            double root = Math.sqrt(x * x + draw.widthSquared);
            double tension = draw.stiffness[i] * (x + draw.bend * root + draw.level);
            double edge = draw.stiffness[i] * perM * (1 + draw.bend * x / root);
            force.addToEntry(i, -tension);
            force.addToEntry(p, tension);
            matrix.addToEntry(i, i, edge);
            matrix.addToEntry(p, p, edge);
            matrix.addToEntry(i, p, -edge);
            matrix.addToEntry(p, i, -edge);
        }
    }
}
