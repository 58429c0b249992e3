package slipway.reasoning.course;

/**
 * How often chance alone puts n values in an order with few inversions. Exact, without ties; ties make intervals that rest
 * on it wider than stated, never narrower. Source: Kendall 1938, Biometrika 30:81.
 */
final class KendallCounts {
    private KendallCounts() {}

    /**
     * P(number of inversions = k) for k from 0 to n(n-1)/2 in a random order of n values.
     *
     * <p>Cost: n to the third.
     */
    static double[] probabilities(int n) {
        double[] chances = {1};
        for (int size = 2; size <= n; size++) {
            double[] next = new double[chances.length + size - 1];
            for (int k = 0; k < chances.length; k++) {
                for (int moved = 0; moved < size; moved++) {
                    next[k + moved] += chances[k] / size;
                }
            }
            chances = next;
        }
        return chances;
    }

    /**
     * The largest number of slopes that may be left out at each end so that the interval still covers, or -1 if even the
     * whole span covers less.
     */
    static int leaveOut(int n, double coverage) {
        double[] chances = probabilities(n);
        double below = 0;
        int most = -1;
        for (int k = 0; k < chances.length / 2; k++) {
            below += chances[k];
            if (1 - 2 * below < coverage) {
                break;
            }
            most = k;
        }
        return most;
    }

    /** Coverage of the interval that leaves out so many slopes at each end. */
    static double coverage(int n, int leftOut) {
        double[] chances = probabilities(n);
        double below = 0;
        for (int k = 0; k <= leftOut; k++) {
            below += chances[k];
        }
        return 1 - 2 * below;
    }
}
