package slipway.mechanics.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Test;

/** The solver against the closed form of a uniform linear cable and against a general solver of a library. */
class CableSolverReferenceTest {
    /** Length, characteristic length and joint of the uniform cable, m. */
    private static final double LENGTH = 1.6;

    private static final double LAMBDA = 0.37;
    private static final double JOINT_FROM = 0.6;
    private static final double JOINT_TO = 0.8;
    private static final double ELONGATION = 0.04;

    /** Rounding and the last step of the iteration, twice: both solutions carry it. */
    private static final double SOLVER_M = 2 * CableSolver.ACCURACY_M;

    @Test
    void uniformLinearCableAgreesWithClosedFormAtSecondOrder() {
        double coarse = worstError(80);
        double fine = worstError(160);
        // Model difference: finite volumes, error proportional to the square of the cell. 0.1 mm of some 25 mm.
        assertThat(coarse).isLessThan(1e-4);
        assertThat(coarse / fine).isBetween(3.7, 4.3);
    }

    private static double worstError(int cells) {
        double cell = LENGTH / cells;
        int[] parent = new int[cells + 1];
        double[] length = new double[cells + 1];
        double[][] hold = new double[cells + 1][1];
        double[][] bed = new double[cells + 1][1];
        for (int i = 0; i <= cells; i++) {
            parent[i] = i - 1;
            length[i] = cell;
            hold[i][0] = (i == 0 || i == cells ? 0.5 : 1) * cell / (LAMBDA * LAMBDA);
            double middle = (i - 0.5) * cell;
            bed[i][0] = middle > JOINT_FROM && middle < JOINT_TO ? ELONGATION / (JOINT_TO - JOINT_FROM) : 0;
        }
        var solver = new CableSolver(new CableTree(parent, length), linear(cells + 1, hold));
        double[][] slide = new double[cells + 1][1];
        solver.solve(bed, slide);
        double worst = 0;
        for (int i = 0; i <= cells; i++) {
            worst = Math.max(worst, Math.abs(slide[i][0] - closedForm(i * cell)));
        }
        return worst;
    }

    /**
     * −w″ + w/λ² = e′ with w′ = 0 at both ends, e constant over the joint: w(s) = E (G(s, a) − G(s, b)) with the Green's
     * function G of the operator; derived by hand.
     */
    private static double closedForm(double s) {
        double strain = ELONGATION / (JOINT_TO - JOINT_FROM);
        return strain * (green(s, JOINT_FROM) - green(s, JOINT_TO));
    }

    private static double green(double s, double t) {
        double low = Math.min(s, t);
        double high = Math.max(s, t);
        return LAMBDA * Math.cosh(low / LAMBDA) * Math.cosh((LENGTH - high) / LAMBDA) / Math.sinh(LENGTH / LAMBDA);
    }

    private static Tissue linear(int nodes, double[][] hold) {
        double[][] stiffness = new double[nodes][1];
        for (double[] row : stiffness) {
            row[0] = 1;
        }
        return new Tissue(stiffness, hold, new double[] {0}, new double[] {0.01}, new double[] {1});
    }

    @Test
    void randomTreesAgreeWithGeneralLeastSquaresSolver() {
        for (int seed = 1; seed <= 8; seed++) {
            var tree = new RandomTree(seed, 14);
            double[][] slide = new double[14][1];
            new CableSolver(tree.tree, tree.tissue).solve(tree.bed, slide);
            double[] library = tree.solveWithLibrary();
            for (int i = 0; i < library.length; i++) {
                assertThat(slide[i][0]).as("seed %d node %d", seed, i).isCloseTo(library[i], within(SOLVER_M));
            }
        }
    }

    @Test
    void everyStartLeadsToTheSameSolution() {
        var tree = new RandomTree(99, 30);
        double[][] cold = new double[30][1];
        new CableSolver(tree.tree, tree.tissue).solve(tree.bed, cold);
        var random = new Random(7);
        for (int start = 0; start < 10; start++) {
            double[][] warm = new double[30][1];
            for (double[] row : warm) {
                row[0] = 0.2 * random.nextGaussian();
            }
            new CableSolver(tree.tree, tree.tissue).solve(tree.bed, warm);
            for (int i = 0; i < 30; i++) {
                assertThat(warm[i][0]).isCloseTo(cold[i][0], within(SOLVER_M));
            }
        }
    }

    @Test
    void lanesDoNotDisturbOneAnother() {
        var tree = new RandomTree(5, 20);
        double[][] alone = new double[20][1];
        new CableSolver(tree.tree, tree.tissue).solve(tree.bed, alone);
        double[][] together = new double[20][3];
        double[][] bed = new double[20][];
        for (int i = 0; i < 20; i++) {
            bed[i] = new double[] {0.3 * tree.bed[i][0], tree.bed[i][0], -2 * tree.bed[i][0]};
        }
        new CableSolver(tree.tree, tree.widened(3)).solve(bed, together);
        for (int i = 0; i < 20; i++) {
            assertThat(together[i][1]).isCloseTo(alone[i][0], within(SOLVER_M));
        }
    }

    /** A seeded random tree with its own, plainly written residual. */
    private static final class RandomTree {
        final CableTree tree;
        final Tissue tissue;
        final double[][] bed;

        RandomTree(int seed, int nodes) {
            var random = new Random(seed);
            int[] parent = new int[nodes];
            double[] length = new double[nodes];
            double[][] stiffness = new double[nodes][1];
            double[][] hold = new double[nodes][1];
            bed = new double[nodes][1];
            parent[0] = -1;
            for (int i = 0; i < nodes; i++) {
                if (i > 0) {
                    parent[i] = Math.max(0, i - 1 - random.nextInt(3));
                }
                length[i] = 0.02 + 0.05 * random.nextDouble();
                stiffness[i][0] = 0.3 + random.nextDouble();
                hold[i][0] = 0.1 + random.nextDouble();
                bed[i][0] = 0.1 * random.nextGaussian();
            }
            tree = new CableTree(parent, length);
            tissue = new Tissue(stiffness, hold, new double[] {0.03}, new double[] {0.04}, new double[] {0.2});
        }

        Tissue widened(int lanes) {
            return new Tissue(
                    widened(tissue.axialStiffness(), lanes),
                    widened(tissue.holdPerM(), lanes),
                    fill(tissue.toeMidpoint()[0], lanes),
                    fill(tissue.toeWidth()[0], lanes),
                    fill(tissue.slackSlope()[0], lanes));
        }

        private static double[][] widened(double[][] rows, int lanes) {
            return Arrays.stream(rows).map(row -> fill(row[0], lanes)).toArray(double[][]::new);
        }

        private static double[] fill(double value, int lanes) {
            double[] row = new double[lanes];
            Arrays.fill(row, value);
            return row;
        }

        double[] solveWithLibrary() {
            int nodes = tree.nodes();
            return new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(1e-15)
                    .withParameterRelativeTolerance(1e-15)
                    .withOrthoTolerance(1e-15)
                    .optimize(new LeastSquaresBuilder()
                            .start(new double[nodes])
                            .target(new double[nodes])
                            .model(this::residual)
                            .maxEvaluations(2000)
                            .maxIterations(2000)
                            .build())
                    .getPoint()
                    .toArray();
        }

        private Pair<RealVector, RealMatrix> residual(RealVector point) {
            double[] at = balance(point.toArray());
            RealMatrix jacobian = new Array2DRowRealMatrix(at.length, at.length);
            for (int j = 0; j < at.length; j++) {
                double[] up = point.toArray();
                double[] down = point.toArray();
                up[j] += 1e-6;
                down[j] -= 1e-6;
                double[] high = balance(up);
                double[] low = balance(down);
                for (int i = 0; i < at.length; i++) {
                    jacobian.setEntry(i, j, (high[i] - low[i]) / 2e-6);
                }
            }
            return new Pair<>(new ArrayRealVector(at), jacobian);
        }

        private double[] balance(double[] w) {
            double[] force = new double[w.length];
            for (int i = 0; i < w.length; i++) {
                force[i] -= tissue.holdPerM()[i][0] * w[i];
                if (i > 0) {
                    int p = tree.parent(i);
                    double strain = bed[i][0] + (w[i] - w[p]) / tree.edgeLengthM(i);
                    double tension =
                            tissue.axialStiffness()[i][0] * (0.2 * strain + 0.8 * (ramp(strain - 0.03) - ramp(-0.03)));
                    force[i] -= tension;
                    force[p] += tension;
                }
            }
            return force;
        }

        private static double ramp(double x) {
            return 0.5 * (x + Math.sqrt(x * x + 0.04 * 0.04));
        }
    }
}
