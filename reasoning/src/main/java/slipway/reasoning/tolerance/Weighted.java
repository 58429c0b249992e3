package slipway.reasoning.tolerance;

import java.util.Arrays;
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
        return quantiles(values, weights, share)[0];
    }

    /** Median and 90 % interval. */
    public static Interval interval(double[] values, double[] weights) {
        Coefficients data = ToleranceData.COEFFICIENTS;
        double[] found = quantiles(values, weights, data.value("interval-low"), 0.5, data.value("interval-high"));
        return new Interval(found[1], found[0], found[2]);
    }

    /** Quantiles for rising shares. */
    private static double[] quantiles(double[] values, double[] weights, double... shares) {
        long[] order = order(values, weights);
        double sum = 0;
        for (long key : order) {
            sum += weights[(int) key];
        }
        double[] found = new double[shares.length];
        int next = 0;
        double reached = 0;
        // The order is that of floats, so a later value may be smaller by less than a float shows; quantiles never
        // fall.
        double largest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < order.length && next < shares.length; i++) {
            reached += weights[(int) order[i]];
            largest = Math.max(largest, values[(int) order[i]]);
            // The last draw takes what rounding leaves.
            while (next < shares.length && (reached >= shares[next] * sum || i == order.length - 1)) {
                found[next++] = largest;
            }
        }
        return found;
    }

    /**
     * Draws with weight in rising order of value; the low half of each element is the index. Values are ordered as
     * floats: neighbours that agree in seven digits may swap, which no result shows, and no boxing is needed.
     */
    private static long[] order(double[] values, double[] weights) {
        long[] keys = new long[values.length];
        int count = 0;
        for (int i = 0; i < values.length; i++) {
            if (weights[i] > 0) {
                int bits = Float.floatToIntBits((float) values[i]);
                // Negative floats order backwards by their bits; flipping all but the sign turns them round.
                int rising = bits >= 0 ? bits : bits ^ Integer.MAX_VALUE;
                keys[count++] = ((long) rising << Integer.SIZE) | i;
            }
        }
        if (count == 0) {
            throw new IllegalArgumentException("no draw has any weight");
        }
        long[] order = Arrays.copyOf(keys, count);
        Arrays.sort(order);
        return order;
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
