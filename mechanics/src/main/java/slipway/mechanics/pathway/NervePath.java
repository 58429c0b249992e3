package slipway.mechanics.pathway;

import java.util.Arrays;

/**
 * The nodes of one tract of one leg from the brainstem to its end, for reading values at a place.
 *
 * @param nodes node indices from root to end
 * @param arcM arc length of each node, m
 */
record NervePath(int[] nodes, double[] arcM) {
    /** Index of the node at the end of the cell that holds an arc length; 1 to length − 1. */
    int cellAt(double arc) {
        int low = 0;
        int high = arcM.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (arcM[middle] <= arc) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    double lengthM() {
        return arcM[arcM.length - 1] - arcM[0];
    }

    /**
     * A place between two rows of the mesh.
     *
     * @param near row on one side
     * @param far row on the other side
     * @param share of the other side, 0 to 1 within the path
     */
    record Between(int near, int far, double share) {
        /** Value of one lane, linear between the rows. */
        double value(double[][] rows, int lane) {
            return rows[near][lane] * (1 - share) + rows[far][lane] * share;
        }
    }

    /** The nodes on both sides of an arc length; the end of the path for a place beyond it. */
    Between nodesAround(double arc) {
        int cell = cellAt(arc);
        double share = (arc - arcM[cell - 1]) / (arcM[cell] - arcM[cell - 1]);
        return new Between(nodes[cell - 1], nodes[cell], Math.max(0, Math.min(1, share)));
    }

    /** The edges whose middles lie on both sides of an arc length; the last one alone near an end. */
    Between edgesAround(double arc) {
        int cell = cellAt(arc);
        double middle = middle(cell);
        int other = arc < middle ? cell - 1 : cell + 1;
        if (other < 1 || other > arcM.length - 1) {
            return new Between(nodes[cell], nodes[cell], 0);
        }
        return new Between(nodes[cell], nodes[other], (arc - middle) / (middle(other) - middle));
    }

    private double middle(int cell) {
        return 0.5 * (arcM[cell - 1] + arcM[cell]);
    }

    /** Mean of the positive part of the strain over the whole path in every lane, as a fraction. */
    void meanPositiveStrain(double[][] strain, double[] mean) {
        Arrays.fill(mean, 0);
        for (int cell = 1; cell < arcM.length; cell++) {
            addPositive(mean, strain[nodes[cell]], (arcM[cell] - arcM[cell - 1]) / lengthM());
        }
    }

    private static void addPositive(double[] sum, double[] value, double weight) {
        for (int l = 0; l < sum.length; l++) {
            sum[l] += Math.max(0, value[l]) * weight;
        }
    }
}
