package slipway.reasoning.tolerance;

/** A median with the ends of its 90 % interval. */
public record Interval(double median, double low, double high) {
    public Interval {
        if (!(low <= median && median <= high)) {
            throw new IllegalArgumentException(
                    "an interval must be ordered, was %s, %s, %s".formatted(low, median, high));
        }
    }
}
