package slipway.reasoning.course;

import java.util.Arrays;

/** Medians. */
final class Medians {
    private Medians() {}

    /** The median of some values, at least one; the mean of the middle two for an even count. */
    static double of(double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : 0.5 * (sorted[half - 1] + sorted[half]);
    }
}
