package slipway.mechanics.cable;

import java.util.Arrays;

/**
 * One Newton step of the cable in two passes over the tree. The pass from the leaves to the root works out tension and
 * slope of each edge and eliminates its node at once, so that nothing but two rows for each node goes through memory; the
 * pass back takes the step.
 */
final class Elimination {
    private final CableTree tree;
    private final Toe toe;
    private final double[] perM;
    private final boolean[] leaf;
    private final double[][] stiffness;
    private final double[][] hold;

    /** Rows that a node's children fill and that it hands on to its parent: along a chain the same ones. */
    private final Handed[] handed;

    /** Of each node: share of its parent's step, and step if the parent stays. */
    private final double[][] share;

    private final double[][] own;

    /** The step that was taken last, kept apart from the one prepared next: a part of it may be taken back. */
    private final double[][] step;

    private final double[] offset;
    private final double[] root;
    private final double[] tension;
    private final double[] slopeTimesRoot;

    /** Rows with one owner at a time. */
    private static final class Handed {
        final double[] force;
        final double[] diagonal;
        final double[] pull;

        Handed(int lanes) {
            force = new double[lanes];
            diagonal = new double[lanes];
            pull = new double[lanes];
        }

        void clear() {
            Arrays.fill(force, 0);
            Arrays.fill(diagonal, 0);
            Arrays.fill(pull, 0);
        }

        void add(Handed other) {
            LaneLoops.add(force, other.force);
            LaneLoops.add(diagonal, other.diagonal);
            LaneLoops.add(pull, other.pull);
        }
    }

    Elimination(CableTree tree, Tissue tissue, Toe toe) {
        this.tree = tree;
        this.toe = toe;
        int nodes = tree.nodes();
        int lanes = tissue.lanes();
        stiffness = toe.stiffness(tissue.axialStiffness());
        hold = tissue.holdPerM();
        perM = new double[nodes];
        leaf = new boolean[nodes];
        for (int i = 1; i < nodes; i++) {
            perM[i] = 1 / tree.edgeLengthM(i);
            leaf[i] = tree.isLeaf(i);
        }
        handed = handedAlong(tree, lanes);
        share = new double[nodes][lanes];
        own = new double[nodes][lanes];
        step = new double[nodes][lanes];
        offset = new double[lanes];
        root = new double[lanes];
        tension = new double[lanes];
        slopeTimesRoot = new double[lanes];
    }

    private static Handed[] handedAlong(CableTree tree, int lanes) {
        Handed[] rows = new Handed[tree.nodes()];
        for (int i = tree.nodes() - 1; i > 0; i--) {
            rows[i] = rows[i] == null ? new Handed(lanes) : rows[i];
            int p = tree.parent(i);
            rows[p] = rows[p] == null ? rows[i] : rows[p];
        }
        return rows;
    }

    /** From the leaves to the root: prepares the step at these slides and gives the squared residual norm of each lane. */
    void eliminate(double[][] bed, double[][] w, double[] normSquared) {
        Arrays.fill(normSquared, 0);
        for (int i = tree.nodes() - 1; i > 0; i--) {
            Handed rows = handed[i];
            if (leaf[i]) {
                rows.clear();
            }
            eliminate(i, bed[i], w, rows, normSquared);
            Handed above = handed[tree.parent(i)];
            if (above != rows) {
                above.add(rows);
            }
        }
        Handed top = handed[0];
        LaneLoops.rootResidual(hold[0], w[0], top.pull, normSquared);
        LaneLoops.rootStep(hold[0], w[0], top.force, top.diagonal, own[0]);
    }

    private void eliminate(int i, double[] bed, double[][] w, Handed rows, double[] normSquared) {
        LaneLoops.offsetsAndRoots(bed, w[i], w[tree.parent(i)], perM[i], toe, offset, root);
        LaneLoops.tensionsAndSlopes(stiffness[i], perM[i], toe.bend, toe.level, offset, root, tension, slopeTimesRoot);
        LaneLoops.balance(tension, hold[i], w[i], rows.force, rows.pull, normSquared);
        LaneLoops.pivots(rows.diagonal, hold[i], slopeTimesRoot, root, rows.force, share[i], own[i]);
        LaneLoops.handUp(tension, share[i], rows.force, rows.pull);
    }

    /** From the root to the leaves: takes the whole step and gives the largest change of each lane, m. */
    void takeStep(double[][] w, double[] largestM) {
        Arrays.fill(largestM, 0);
        System.arraycopy(own[0], 0, step[0], 0, own[0].length);
        LaneLoops.add(w[0], step[0]);
        LaneLoops.largerOf(largestM, step[0]);
        for (int i = 1; i < tree.nodes(); i++) {
            LaneLoops.follow(own[i], share[i], step[tree.parent(i)], step[i], w[i], largestM);
        }
    }

    /** Takes a fraction of the last step back in one lane. */
    void takeBack(double[][] w, int lane, double fraction) {
        for (int i = 0; i < w.length; i++) {
            w[i][lane] -= fraction * step[i][lane];
        }
    }

    /** Tension of an edge relative to the reference state at a strain. */
    double tension(int node, int lane, double strain) {
        return toe.tension(stiffness[node][lane], strain, lane);
    }
}
