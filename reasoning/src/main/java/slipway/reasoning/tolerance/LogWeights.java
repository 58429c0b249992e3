package slipway.reasoning.tolerance;

import java.util.Arrays;

/** From log weights to weights, flattened as far as needed to keep enough draws. */
final class LogWeights {
    private static final int BISECTIONS = 40;

    private LogWeights() {}

    /** Weights adding up to 1 in proportion to exp(power × log). */
    static double[] weights(double[] log, double power) {
        double largest = Arrays.stream(log).max().orElse(0);
        double[] weights = new double[log.length];
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Math.exp(power * (log[i] - largest));
            sum += weights[i];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    /** The largest power up to 1 that leaves at least this many effective draws. */
    static double powerKeeping(double[] log, double leastEffective) {
        if (Weighted.effective(weights(log, 1)) >= leastEffective) {
            return 1;
        }
        double low = 0;
        double high = 1;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = 0.5 * (low + high);
            if (Weighted.effective(weights(log, middle)) >= leastEffective) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
