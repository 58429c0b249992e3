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
 * <p>Cost: O(nodes × lanes) per step, no allocation after construction. Lanes are the inner, contiguous dimension, in
 * loops plain enough for the JIT to vectorise. Not thread-safe: one solver per thread.
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
    private final Tissue tissue;
    private final int lanes;
    private final double[] rampAtZero;
    private final double[] widthSquared;
    private final double[] ramp;
    private final double[] offset;
    private final double[] root;

    private final double[][] tension;
    private final double[][] slope;
    private final double[][] force;
    private final double[][] diagonal;
    private final double[][] step;
    private final double[][] trial;
    private final double[] residual;
    private final double[] newResidual;
    private final double[] fraction;
    private final double[] largest;

    /**
     * @throws IllegalArgumentException if the tissue does not fit the tree or a stiffness is negative or not a number
     */
    public CableSolver(CableTree tree, Tissue tissue) {
        this.tree = tree;
        this.tissue = tissue;
        this.lanes = tissue.lanes();
        check(tree, tissue);
        int nodes = tree.nodes();
        tension = new double[nodes][lanes];
        slope = new double[nodes][lanes];
        force = new double[nodes][lanes];
        diagonal = new double[nodes][lanes];
        step = new double[nodes][lanes];
        trial = new double[nodes][lanes];
        residual = new double[lanes];
        newResidual = new double[lanes];
        fraction = new double[lanes];
        largest = new double[lanes];
        rampAtZero = new double[lanes];
        widthSquared = new double[lanes];
        ramp = new double[lanes];
        offset = new double[lanes];
        root = new double[lanes];
        for (int l = 0; l < lanes; l++) {
            double e0 = tissue.toeMidpoint()[l];
            double width = tissue.toeWidth()[l];
            rampAtZero[l] = 0.5 * (Math.sqrt(e0 * e0 + width * width) - e0);
            widthSquared[l] = width * width;
        }
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
        assemble(bedElongation, slideM);
        norms(residual);
        for (int iteration = 1; iteration <= MAX_STEPS; iteration++) {
            eliminate();
            double change = lineSearch(bedElongation, slideM);
            if (change <= LAST_STEP_M) {
                return iteration;
            }
        }
        throw new NonConvergenceException("cable", MAX_STEPS, max(largest));
    }

    /** Strain of every edge for given slides, {@code [node][lane]}, as a fraction; node 0 stays 0. */
    public void strains(double[][] bedElongation, double[][] slideM, double[][] strain) {
        for (int i = 1; i < tree.nodes(); i++) {
            strainOfEdge(bedElongation[i], slideM[i], slideM[tree.parent(i)], 1 / tree.edgeLengthM(i), strain[i]);
        }
    }

    /** Tension of every edge relative to the reference state, {@code [node][lane]}, after the last solve. */
    public double relativeTension(int node, int lane) {
        return tension[node][lane];
    }

    private void assemble(double[][] bedElongation, double[][] w) {
        int nodes = tree.nodes();
        for (int i = 0; i < nodes; i++) {
            holdForce(tissue.holdPerM()[i], w[i], force[i], diagonal[i]);
        }
        for (int i = 1; i < nodes; i++) {
            int p = tree.parent(i);
            double perM = 1 / tree.edgeLengthM(i);
            // The strain goes through the slope array to spare one more array in the cache.
            strainOfEdge(bedElongation[i], w[i], w[p], perM, slope[i]);
            tensionAndSlope(tissue.axialStiffness()[i], perM, tension[i], slope[i]);
            subtract(force[i], tension[i]);
            add(force[p], tension[i]);
            add(diagonal[i], slope[i]);
            add(diagonal[p], slope[i]);
        }
    }

    private static void holdForce(double[] hold, double[] w, double[] force, double[] diagonal) {
        System.arraycopy(hold, 0, diagonal, 0, hold.length);
        for (int l = 0; l < force.length; l++) {
            force[l] = -hold[l] * w[l];
        }
    }

    private static void strainOfEdge(double[] bed, double[] w, double[] wParent, double perM, double[] strain) {
        for (int l = 0; l < strain.length; l++) {
            strain[l] = bed[l] + (w[l] - wParent[l]) * perM;
        }
    }

    /** Reads the strain from {@code slope} and leaves there dT/dw. Loops with one result each, so that the JIT vectorises. */
    private void tensionAndSlope(double[] stiffness, double perM, double[] tension, double[] slope) {
        double[] midpoint = tissue.toeMidpoint();
        double[] slack = tissue.slackSlope();
        offsets(slope, midpoint, offset);
        roots(offset, widthSquared, root);
        ramps(offset, root, rampAtZero, ramp);
        tensions(stiffness, slack, slope, ramp, tension);
        relativeSlopes(offset, root, ramp);
        slopes(stiffness, perM, slack, ramp, slope);
    }

    private static void offsets(double[] strain, double[] midpoint, double[] offset) {
        for (int l = 0; l < offset.length; l++) {
            offset[l] = strain[l] - midpoint[l];
        }
    }

    private static void roots(double[] offset, double[] widthSquared, double[] root) {
        for (int l = 0; l < root.length; l++) {
            root[l] = Math.sqrt(offset[l] * offset[l] + widthSquared[l]);
        }
    }

    /** The ramp above its value in the reference state. */
    private static void ramps(double[] offset, double[] root, double[] atZero, double[] ramp) {
        for (int l = 0; l < ramp.length; l++) {
            ramp[l] = 0.5 * (offset[l] + root[l]) - atZero[l];
        }
    }

    private static void tensions(double[] stiffness, double[] slack, double[] strain, double[] ramp, double[] tension) {
        for (int l = 0; l < tension.length; l++) {
            tension[l] = stiffness[l] * (slack[l] * (strain[l] - ramp[l]) + ramp[l]);
        }
    }

    /** Slope of the ramp, 0 where the nerve is slack, 1 where it is taut. */
    private static void relativeSlopes(double[] offset, double[] root, double[] ramp) {
        for (int l = 0; l < ramp.length; l++) {
            ramp[l] = 0.5 + 0.5 * offset[l] / root[l];
        }
    }

    private static void slopes(double[] stiffness, double perM, double[] slack, double[] ramp, double[] slope) {
        for (int l = 0; l < slope.length; l++) {
            slope[l] = stiffness[l] * perM * (slack[l] * (1 - ramp[l]) + ramp[l]);
        }
    }

    private static void add(double[] sum, double[] term) {
        for (int l = 0; l < sum.length; l++) {
            sum[l] += term[l];
        }
    }

    private static void subtract(double[] sum, double[] term) {
        for (int l = 0; l < sum.length; l++) {
            sum[l] -= term[l];
        }
    }

    /** Solves (−Jacobian) step = force; force and diagonal are used up. */
    private void eliminate() {
        for (int i = tree.nodes() - 1; i > 0; i--) {
            int p = tree.parent(i);
            foldIntoParent(slope[i], diagonal[i], force[i], diagonal[p], force[p]);
        }
        for (int l = 0; l < lanes; l++) {
            step[0][l] = force[0][l] / diagonal[0][l];
        }
        for (int i = 1; i < tree.nodes(); i++) {
            backSubstitute(force[i], slope[i], diagonal[i], step[tree.parent(i)], step[i]);
        }
    }

    private static void foldIntoParent(
            double[] slope, double[] diagonal, double[] force, double[] diagonalParent, double[] forceParent) {
        for (int l = 0; l < slope.length; l++) {
            double share = slope[l] / diagonal[l];
            diagonalParent[l] -= slope[l] * share;
            forceParent[l] += share * force[l];
        }
    }

    private static void backSubstitute(
            double[] force, double[] slope, double[] diagonal, double[] stepParent, double[] step) {
        for (int l = 0; l < step.length; l++) {
            step[l] = (force[l] + slope[l] * stepParent[l]) / diagonal[l];
        }
    }

    /** Moves {@code w} by as much of the step as lowers the residual in each lane; returns the largest whole step, m. */
    private double lineSearch(double[][] bedElongation, double[][] w) {
        Arrays.fill(fraction, 1);
        largestStep();
        boolean again = true;
        for (int halving = 0; again && halving < MAX_HALVINGS; halving++) {
            for (int i = 0; i < tree.nodes(); i++) {
                move(w[i], step[i], trial[i]);
            }
            assemble(bedElongation, trial);
            norms(newResidual);
            again = shortenWhereWorse();
        }
        for (int i = 0; i < tree.nodes(); i++) {
            System.arraycopy(trial[i], 0, w[i], 0, lanes);
        }
        System.arraycopy(newResidual, 0, residual, 0, lanes);
        // The whole Newton step, not the part of it that was taken: a shortened step must not pass for convergence.
        return max(largest);
    }

    private void move(double[] from, double[] by, double[] to) {
        for (int l = 0; l < to.length; l++) {
            to[l] = from[l] + fraction[l] * by[l];
        }
    }

    private boolean shortenWhereWorse() {
        boolean again = false;
        for (int l = 0; l < lanes; l++) {
            boolean settled = largest[l] <= LAST_STEP_M;
            if (!settled && !(newResidual[l] <= (1 - SUFFICIENT_DECREASE * fraction[l]) * residual[l])) {
                fraction[l] *= 0.5;
                again = true;
            }
        }
        return again;
    }

    private void norms(double[] sum) {
        Arrays.fill(sum, 0);
        for (int i = 0; i < tree.nodes(); i++) {
            addSquares(sum, force[i]);
        }
        for (int l = 0; l < lanes; l++) {
            sum[l] = Math.sqrt(sum[l]);
        }
    }

    private static void addSquares(double[] sum, double[] term) {
        for (int l = 0; l < sum.length; l++) {
            sum[l] += term[l] * term[l];
        }
    }

    private void largestStep() {
        Arrays.fill(largest, 0);
        for (int i = 0; i < tree.nodes(); i++) {
            largerOf(largest, step[i]);
        }
    }

    private static void largerOf(double[] largest, double[] value) {
        for (int l = 0; l < largest.length; l++) {
            largest[l] = Math.max(largest[l], Math.abs(value[l]));
        }
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
