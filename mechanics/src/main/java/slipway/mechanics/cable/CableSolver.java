package slipway.mechanics.cable;

import java.util.Arrays;

/**
 * Solves the balance of a tree of cables in its bed, for all lanes at once.
 *
 * <p>Unknown is the slide {@code w} of each node against the bed (m, + distal). An edge of length h has the strain
 * {@code ε = e + (w − w_parent) / h}, e being the elongation of its bed, and the tension T(ε) of {@link Tissue}. At
 * every node the tensions of the edges below minus that of the edge above equal {@code hold × w}. This is the gradient
 * of a convex energy, so Newton with a line search converges; each step eliminates a symmetric tree-tridiagonal system
 * from the leaves to the root.
 *
 * <p>Cost: O(nodes × lanes) per step, no allocation after construction. Lanes are the inner, contiguous dimension; some
 * hundred of them at once keep the vector loops of {@link LaneLoops} busy. Not thread-safe: one solver per thread.
 */
public final class CableSolver {
    /**
     * A whole Newton step that changes no slide by more than this is the last one, m. The error shrinks with the square of
     * the step, so what remains is far below {@link #ACCURACY_M}.
     */
    static final double LAST_STEP_M = 1e-6;

    /** What a solution is accurate to, m; tested against a general solver and from random starts. */
    static final double ACCURACY_M = 1e-9;

    static final int MAX_STEPS = 60;
    private static final int MAX_HALVINGS = 30;
    /** A step must lower the residual norm by at least this share of what the full step promises (Armijo). */
    private static final double SUFFICIENT_DECREASE = 1e-4;

    private final CableTree tree;
    private final int lanes;
    private final Elimination elimination;
    private final double[] normSquared;
    private final double[] newNormSquared;
    private final double[] fraction;
    private final double[] largestM;

    /**
     * @throws IllegalArgumentException if the tissue does not fit the tree or a stiffness is negative or not a number
     */
    public CableSolver(CableTree tree, Tissue tissue) {
        check(tree, tissue);
        this.tree = tree;
        lanes = tissue.lanes();
        elimination = new Elimination(tree, tissue, new Toe(tissue));
        normSquared = new double[lanes];
        newNormSquared = new double[lanes];
        fraction = new double[lanes];
        largestM = new double[lanes];
    }

    private static void check(CableTree tree, Tissue tissue) {
        for (int i = 0; i < tree.nodes(); i++) {
            for (int l = 0; l < tissue.lanes(); l++) {
                if (!(tissue.holdPerM()[i][l] >= 0) || (i > 0 && !(tissue.axialStiffness()[i][l] > 0))) {
                    throw new IllegalArgumentException(
                            "node %d, lane %d: stiffness must be positive and hold not negative".formatted(i, l));
                }
            }
        }
        for (int l = 0; l < tissue.lanes(); l++) {
            double slack = tissue.slackSlope()[l];
            if (!(tissue.toeWidth()[l] > 0) || !(slack > 0 && slack <= 1) || !(tissue.toeMidpoint()[l] >= 0)) {
                throw new IllegalArgumentException(
                        "lane %d: toe must have a width, a midpoint and a slope within 0 and 1".formatted(l));
            }
        }
    }

    /**
     * Solves for the slides.
     *
     * @param bedElongation elongation of the bed along each edge, {@code [node][lane]}, as a fraction
     * @param slideM start of the iteration, overwritten by the solution, {@code [node][lane]}, m; any finite start
     *     leads to the same solution within {@value #ACCURACY_M} m
     * @return number of Newton steps of the slowest lane
     * @throws NonConvergenceException after 60 steps; {@code slideM} is then unspecified
     */
    public int solve(double[][] bedElongation, double[][] slideM) {
        elimination.eliminate(bedElongation, slideM, normSquared);
        for (int iteration = 1; iteration <= MAX_STEPS; iteration++) {
            elimination.takeStep(slideM, largestM);
            // The whole Newton step, not the part of it that is kept: a shortened step must not pass for convergence.
            if (max(largestM) <= LAST_STEP_M) {
                return iteration;
            }
            shortenUntilBetter(bedElongation, slideM);
        }
        throw new NonConvergenceException("cable", MAX_STEPS, max(largestM));
    }

    /** Strain of every edge for given slides, {@code [node][lane]}, as a fraction; node 0 stays 0. */
    public void strains(double[][] bedElongation, double[][] slideM, double[][] strain) {
        for (int i = 1; i < tree.nodes(); i++) {
            LaneLoops.strains(bedElongation[i], slideM[i], slideM[tree.parent(i)], 1 / tree.edgeLengthM(i), strain[i]);
        }
    }

    /** Tension of an edge at a strain, relative to the reference state. */
    public double relativeTension(int node, int lane, double strain) {
        return elimination.tension(node, lane, strain);
    }

    /** Keeps as much of the step as lowers the residual in each lane, and prepares the next one there. */
    private void shortenUntilBetter(double[][] bedElongation, double[][] slideM) {
        Arrays.fill(fraction, 1);
        elimination.eliminate(bedElongation, slideM, newNormSquared);
        for (int halving = 0; halving < MAX_HALVINGS && shortenWhereWorse(slideM); halving++) {
            elimination.eliminate(bedElongation, slideM, newNormSquared);
        }
        System.arraycopy(newNormSquared, 0, normSquared, 0, lanes);
    }

    private boolean shortenWhereWorse(double[][] slideM) {
        boolean again = false;
        for (int l = 0; l < lanes; l++) {
            boolean settled = largestM[l] <= LAST_STEP_M;
            double promised = 1 - SUFFICIENT_DECREASE * fraction[l];
            if (!settled && !(newNormSquared[l] <= promised * promised * normSquared[l])) {
                fraction[l] *= 0.5;
                elimination.takeBack(slideM, l, fraction[l]);
                again = true;
            }
        }
        return again;
    }

    /** The largest value, NaN counting as infinite so that a broken lane can never pass for a converged one. */
    private static double max(double[] values) {
        double max = 0;
        for (double value : values) {
            max = value <= max ? max : Double.isNaN(value) ? Double.POSITIVE_INFINITY : value;
        }
        return max;
    }
}
