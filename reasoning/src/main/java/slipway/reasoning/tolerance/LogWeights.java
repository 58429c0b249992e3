package slipway.reasoning.tolerance;

import java.util.Arrays;

/**
 * From log weights to weights. Each site keeps its share: load tells the tolerance of a site, but the place is located by
 * the examination. (The strain model would move it, because it misjudges sitting at the buttock.)
 */
final class LogWeights {
    private static final int BISECTIONS = 40;

    private LogWeights() {}

    /** Weights adding up to 1, within each site in proportion to exp(power × log). */
    static double[] weights(double[] log, double power, Draws draws) {
        int sites = draws.sites().size();
        double[] largest = new double[sites];
        Arrays.fill(largest, Double.NEGATIVE_INFINITY);
        for (int i = 0; i < log.length; i++) {
            largest[draws.siteOf(i)] = Math.max(largest[draws.siteOf(i)], log[i]);
        }
        double[] weights = new double[log.length];
        double[] sums = new double[sites];
        double[] shares = new double[sites];
        for (int i = 0; i < log.length; i++) {
            int site = draws.siteOf(i);
            weights[i] = Math.exp(power * (log[i] - largest[site]));
            sums[site] += weights[i];
            shares[site] += 1.0 / log.length;
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] *= shares[draws.siteOf(i)] / sums[draws.siteOf(i)];
        }
        return weights;
    }

    /** The largest power up to 1 that leaves at least this many effective draws. */
    static double powerKeeping(double[] log, double leastEffective, Draws draws) {
        if (Weighted.effective(weights(log, 1, draws)) >= leastEffective) {
            return 1;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = 0.5 * (low + high);
            if (Weighted.effective(weights(log, middle, draws)) >= leastEffective) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
