package slipway.mechanics.cable;

/**
 * What is done to one edge or node in all lanes. The loops are split so that each has few arrays and one or two results:
 * longer ones are left unvectorised by the JIT and take three to six times as long, though they read less. Rows that only
 * pass from one loop to the next stay in the nearest cache.
 */
final class LaneLoops {
    private LaneLoops() {}

    static void strains(double[] bed, double[] w, double[] wParent, double perM, double[] strain) {
        for (int l = 0; l < strain.length; l++) {
            strain[l] = bed[l] + (w[l] - wParent[l]) * perM;
        }
    }

    /** Strain less the midpoint of the toe, and the root of the ramp. */
    static void offsetsAndRoots(
            double[] bed, double[] w, double[] wParent, double perM, Toe toe, double[] offset, double[] root) {
        offsetsAndRoots(bed, w, wParent, perM, toe.midpoint, toe.widthSquared, offset, root);
    }

    private static void offsetsAndRoots(
            double[] bed,
            double[] w,
            double[] wParent,
            double perM,
            double[] midpoint,
            double[] widthSquared,
            double[] offset,
            double[] root) {
        for (int l = 0; l < offset.length; l++) {
            double x = bed[l] + (w[l] - wParent[l]) * perM - midpoint[l];
            offset[l] = x;
            root[l] = Math.sqrt(x * x + widthSquared[l]);
        }
    }

    static void tensions(
            double[] stiffness, double[] bend, double[] level, double[] offset, double[] root, double[] tension) {
        for (int l = 0; l < tension.length; l++) {
            tension[l] = stiffness[l] * (offset[l] + bend[l] * root[l] + level[l]);
        }
    }

    /** dT/dw of the lower end of the edge. */
    static void slopes(double[] stiffness, double perM, double[] bend, double[] offset, double[] root, double[] slope) {
        for (int l = 0; l < slope.length; l++) {
            slope[l] = stiffness[l] * perM * (1 + bend[l] * offset[l] / root[l]);
        }
    }

    /**
     * Takes what pulls a node up from the force that its children handed on, and adds the square of the node's residual;
     * {@code pull} goes from the tension of the children to that of the edge itself.
     */
    static void balance(
            double[] tension, double[] hold, double[] w, double[] force, double[] pull, double[] normSquared) {
        for (int l = 0; l < force.length; l++) {
            double up = tension[l] + hold[l] * w[l];
            force[l] -= up;
            double residual = pull[l] - up;
            normSquared[l] += residual * residual;
            pull[l] = tension[l];
        }
    }

    /** Share of the parent's step that a node follows, and its step if the parent stays. */
    static void pivots(double[] diagonal, double[] hold, double[] slope, double[] force, double[] share, double[] own) {
        for (int l = 0; l < share.length; l++) {
            double inverse = 1 / (diagonal[l] + hold[l] + slope[l]);
            share[l] = slope[l] * inverse;
            own[l] = force[l] * inverse;
        }
    }

    /** What the node, eliminated, leaves to its parent. */
    static void handUp(
            double[] tension, double[] slope, double[] own, double[] share, double[] force, double[] diagonal) {
        for (int l = 0; l < force.length; l++) {
            force[l] = tension[l] + slope[l] * own[l];
            diagonal[l] = slope[l] - slope[l] * share[l];
        }
    }

    /** The root has no edge of its own. */
    static void rootStep(double[] hold, double[] w, double[] force, double[] diagonal, double[] step) {
        for (int l = 0; l < step.length; l++) {
            step[l] = (force[l] - hold[l] * w[l]) / (diagonal[l] + hold[l]);
        }
    }

    static void rootResidual(double[] hold, double[] w, double[] pull, double[] normSquared) {
        for (int l = 0; l < normSquared.length; l++) {
            double residual = pull[l] - hold[l] * w[l];
            normSquared[l] += residual * residual;
        }
    }

    /** Step of a node from that of its parent, taken at once. */
    static void follow(double[] own, double[] share, double[] stepParent, double[] step, double[] w, double[] largest) {
        for (int l = 0; l < step.length; l++) {
            double by = own[l] + share[l] * stepParent[l];
            step[l] = by;
            w[l] += by;
            largest[l] = Math.max(largest[l], Math.abs(by));
        }
    }

    static void add(double[] sum, double[] term) {
        for (int l = 0; l < sum.length; l++) {
            sum[l] += term[l];
        }
    }

    /** Sets the larger of each value and the size of another. */
    static void largerOf(double[] largest, double[] value) {
        for (int l = 0; l < largest.length; l++) {
            largest[l] = Math.max(largest[l], Math.abs(value[l]));
        }
    }
}
