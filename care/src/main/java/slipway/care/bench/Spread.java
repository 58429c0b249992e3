package slipway.care.bench;

import java.util.Arrays;

/**
 * Median of the draws and the interval that holds 90 % of them.
 *
 * @param low 5th percentile
 * @param high 95th percentile
 */
public record Spread(double median, double low, double high) {
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    /** Less than half of the last digit that is shown. */
    private static final double SHOWN_AS_ZERO = 0.05;

    public Spread {
        if (!(low <= median && median <= high)) {
            throw new IllegalArgumentException(
                    "low, median and high must rise, were %s, %s, %s".formatted(low, median, high));
        }
    }

    /** Of one value per draw. */
    public static Spread of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Spread(at(sorted, 0.5), at(sorted, LOW), at(sorted, HIGH));
    }

    /** Whether the draws do not agree on the sign: zero lies within the interval, with more than zero on both sides. */
    public boolean signUnsure() {
        return low < -SHOWN_AS_ZERO && high > SHOWN_AS_ZERO;
    }

    private static double at(double[] sorted, double share) {
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }
}
