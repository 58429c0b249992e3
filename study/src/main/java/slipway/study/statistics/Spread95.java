package slipway.study.statistics;

/**
 * A value with its 95 % interval.
 *
 * @param low not above the value; both ends are the value if nothing varies
 */
public record Spread95(double value, double low, double high) {
    /** Standard normal quantile of 0.975. */
    private static final double Z = 1.959963984540054;

    public Spread95 {
        if (!(low <= value && value <= high) && !Double.isNaN(value)) {
            throw new IllegalArgumentException(
                    "an interval must hold its value, was %s, %s, %s".formatted(low, value, high));
        }
    }

    static Spread95 of(double value, double standardError) {
        return new Spread95(value, value - Z * standardError, value + Z * standardError);
    }

    /** Whether the interval lies below a limit. */
    public boolean below(double limit) {
        return high < limit;
    }
}
