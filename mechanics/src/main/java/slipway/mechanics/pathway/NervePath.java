package slipway.mechanics.pathway;

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

    /** Slide of one lane at an arc length, linear between nodes, m. */
    double slideAt(double arc, double[][] slideM, int lane) {
        int cell = cellAt(arc);
        double t = (arc - arcM[cell - 1]) / (arcM[cell] - arcM[cell - 1]);
        t = Math.max(0, Math.min(1, t));
        return slideM[nodes[cell - 1]][lane] * (1 - t) + slideM[nodes[cell]][lane] * t;
    }

    /** Strain of one lane at an arc length, linear between the middles of the edges, as a fraction. */
    double strainAt(double arc, double[][] strain, int lane) {
        int cell = cellAt(arc);
        double middle = middle(cell);
        int other = arc < middle ? cell - 1 : cell + 1;
        if (other < 1 || other > arcM.length - 1) {
            return strain[nodes[cell]][lane];
        }
        double t = (arc - middle) / (middle(other) - middle);
        return strain[nodes[cell]][lane] * (1 - t) + strain[nodes[other]][lane] * t;
    }

    private double middle(int cell) {
        return 0.5 * (arcM[cell - 1] + arcM[cell]);
    }

    /** Mean of the positive part of the strain of one lane over the whole path, as a fraction. */
    double meanPositiveStrain(double[][] strain, int lane) {
        double sum = 0;
        for (int cell = 1; cell < arcM.length; cell++) {
            sum += Math.max(0, strain[nodes[cell]][lane]) * (arcM[cell] - arcM[cell - 1]);
        }
        return sum / lengthM();
    }
}
