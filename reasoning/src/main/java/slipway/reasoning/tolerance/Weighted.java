package slipway.reasoning.tolerance;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import slipway.reasoning.basis.Coefficients;

/** Summaries of weighted draws. Weights need not add up to 1; draws of weight 0 do not count. */
public final class Weighted {
    private Weighted() {}

    /**
     * The smallest value at which the share of weight at or below it reaches {@code share}.
     *
     * @throws IllegalArgumentException if no draw has weight
     */
    public static double quantile(double[] values, double[] weights, double share) {
        int[] order = IntStream.range(0, values.length)
                .filter(i -> weights[i] > 0)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> values[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        if (order.length == 0) {
            throw new IllegalArgumentException("no draw has any weight");
        }
        double target =
                share * Arrays.stream(order).mapToDouble(i -> weights[i]).sum();
        double reached = 0;
        for (int i : order) {
            reached += weights[i];
            if (reached >= target) {
                return values[i];
            }
        }
        return values[order[order.length - 1]];
    }

    /** Median and 90 % interval. */
    public static Interval interval(double[] values, double[] weights) {
        Coefficients data = ToleranceData.COEFFICIENTS;
        return new Interval(
                quantile(values, weights, 0.5),
                quantile(values, weights, data.value("interval-low")),
                quantile(values, weights, data.value("interval-high")));
    }

    /** How many equally weighted draws would say as much: (Σw)² / Σw². */
    public static double effective(double[] weights) {
        double sum = 0;
        double squares = 0;
        for (double weight : weights) {
            sum += weight;
            squares += weight * weight;
        }
        return squares > 0 ? sum * sum / squares : 0;
    }
}
