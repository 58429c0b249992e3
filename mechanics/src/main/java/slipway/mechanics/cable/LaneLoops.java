package slipway.mechanics.cable;

/**
 * What is done to one edge or node in all lanes. The loops are split so that each has few arrays and one or two results:
 * longer ones are left unvectorised by the JIT and take three to six times as long, though they read less; so are loops that
 * read an array again after they have written to one. Rows that only pass from one loop to the next stay in the nearest
 * cache.
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

    /** Tension of the edge; and dT/dw of its lower end times the root, which leaves the division by it to the pivot. */
    static void tensionsAndSlopes(
            double[] stiffness,
            double perM,
            double[] bend,
            double[] level,
            double[] offset,
            double[] root,
            double[] tension,
            double[] slopeTimesRoot) {
        for (int l = 0; l < tension.length; l++) {
            double e = stiffness[l];
            double b = bend[l];
            double x = offset[l];
            double r = root[l];
            tension[l] = e * (x + b * r + level[l]);
            slopeTimesRoot[l] = e * perM * (r + b * x);
        }
    }

    /**
     * Takes what pulls a node up from the force that its children handed on, and adds the square of the node's residual,
     * which is what the tension of its children leaves over.
     */
    static void balance(
            double[] tension, double[] hold, double[] w, double[] force, double[] pull, double[] normSquared) {
        for (int l = 0; l < force.length; l++) {
            double up = tension[l] + hold[l] * w[l];
            double residual = pull[l] - up;
            force[l] -= up;
            normSquared[l] += residual * residual;
        }
    }

    /**
     * Share of the parent's step that a node follows, its step if the parent stays, and the stiffness that the node,
     * eliminated, leaves to its parent. With d for what holds the node from below and beside and s for the slope of its
     * edge, the share is s / (d + s) and d s / (d + s) is left.
     */
    static void pivots(
            double[] diagonal,
            double[] hold,
            double[] slopeTimesRoot,
            double[] root,
            double[] force,
            double[] share,
            double[] own) {
        for (int l = 0; l < share.length; l++) {
            double held = diagonal[l] + hold[l];
            double r = root[l];
            double s = slopeTimesRoot[l];
            double inverse = 1 / (held * r + s);
            double follows = s * inverse;
            share[l] = follows;
            own[l] = force[l] * r * inverse;
            diagonal[l] = held * follows;
        }
    }

    /** The force that the node, eliminated, leaves to its parent, and the tension that pulls there. */
    static void handUp(double[] tension, double[] share, double[] force, double[] pull) {
        for (int l = 0; l < force.length; l++) {
            double t = tension[l];
            force[l] = t + share[l] * force[l];
            pull[l] = t;
        }
    }

    /** The root has no edge of its own. */
    static void rootStep(double[] hold, double[] w, double[] force, double[] diagonal, double[] own) {
        for (int l = 0; l < own.length; l++) {
            own[l] = (force[l] - hold[l] * w[l]) / (diagonal[l] + hold[l]);
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
            double at = w[l];
            double before = largest[l];
            step[l] = by;
            w[l] = at + by;
            largest[l] = Math.max(before, Math.abs(by));
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
