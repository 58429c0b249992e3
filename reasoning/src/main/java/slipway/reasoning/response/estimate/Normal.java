package slipway.reasoning.response.estimate;

import org.hipparchus.distribution.continuous.NormalDistribution;

/** The standard normal distribution from tables: fast, and the same on every machine. */
final class Normal {
    /** Draws are one of this many midpoints of equal probability, scaled to variance 1. */
    private static final int STRATA = 1 << 12;

    private static final double[] QUANTILES = quantiles();
    private static final double END = 8;
    private static final int PER_UNIT = 256;
    private static final double[] BELOW = below();

    private Normal() {}

    private static double[] quantiles() {
        var normal = new NormalDistribution();
        double[] z = new double[STRATA];
        double squares = 0;
        for (int i = 0; i < STRATA / 2; i++) {
            double value = normal.inverseCumulativeProbability((i + 0.5) / STRATA);
            z[i] = value;
            z[STRATA - 1 - i] = -value;
            squares += 2 * value * value;
        }
        double scale = Math.sqrt(STRATA / squares);
        for (int i = 0; i < STRATA; i++) {
            z[i] *= scale;
        }
        return z;
    }

    private static double[] below() {
        var normal = new NormalDistribution();
        double[] p = new double[(int) (2 * END * PER_UNIT) + 2];
        for (int i = 0; i < p.length; i++) {
            p[i] = normal.cumulativeProbability(-END + (double) i / PER_UNIT);
        }
        return p;
    }

    /** The z below which the share lies; between the midpoints of the table the nearest one. */
    static double quantile(double share) {
        return QUANTILES[Math.min(STRATA - 1, (int) (share * STRATA))];
    }

    /** A draw from 12 random bits. */
    static double draw(long bits) {
        return QUANTILES[(int) (bits & (STRATA - 1))];
    }

    /** P(Z ≤ z); error below 1e-6 (linear between points 1/256 apart). */
    static double below(double z) {
        if (!(z > -END)) {
            return 0;
        }
        if (z >= END) {
            return 1;
        }
        double at = (z + END) * PER_UNIT;
        int i = (int) at;
        return BELOW[i] + (at - i) * (BELOW[i + 1] - BELOW[i]);
    }
}
