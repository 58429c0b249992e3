package slipway.reasoning.tolerance;

import org.hipparchus.distribution.continuous.NormalDistribution;

/** The standard normal distribution, usable far into its tail. */
final class Gauss {
    private static final NormalDistribution NORMAL = new NormalDistribution();
    /** From here on the tail is taken from its expansion, whose relative error is below 1/z⁴. */
    private static final double FAR = 8;

    private Gauss() {}

    /** log P(Z > z). */
    static double logSurvival(double z) {
        if (z > FAR) {
            return -0.5 * z * z - Math.log(z * Math.sqrt(2 * Math.PI)) + Math.log1p(-1 / (z * z));
        }
        return Math.log(NORMAL.cumulativeProbability(-z));
    }

    /** The z below which the share {@code p} lies, 0 < p < 1. */
    static double quantile(double p) {
        return NORMAL.inverseCumulativeProbability(p);
    }

    /** The value at the share {@code u} of a normal distribution cut off below {@code lowest}. */
    static double cutQuantile(double mean, double sd, double lowest, double u) {
        double z = (lowest - mean) / sd;
        if (z > FAR) {
            // So far out the tail is exponential with rate z.
            return lowest + sd * -Math.log1p(-u) / z;
        }
        double above = NORMAL.cumulativeProbability(-z) * (1 - u);
        return Math.max(lowest, mean - sd * NORMAL.inverseCumulativeProbability(above));
    }
}
