package slipway.reasoning.response.estimate;

/** Draws particles anew and spreads them. */
final class Resampling {
    private Resampling() {}

    /**
     * Systematic: every particle is picked as often as its weight says, up to one.
     *
     * @param weight adds up to 1
     * @param offset within 0 and 1
     * @param picked gets the index of the source for each new particle
     */
    static void systematic(double[] weight, double offset, int[] picked) {
        int n = picked.length;
        double reached = weight[0];
        int source = 0;
        for (int i = 0; i < n; i++) {
            double at = (i + offset) / n;
            while (reached < at && source < weight.length - 1) {
                source++;
                reached += weight[source];
            }
            picked[i] = source;
        }
    }

    static void take(double[] values, int[] picked, double[] scratch) {
        for (int i = 0; i < picked.length; i++) {
            scratch[i] = values[picked[i]];
        }
        System.arraycopy(scratch, 0, values, 0, picked.length);
    }

    /** Moves equally weighted values towards their mean and adds noise, so that mean and variance stay. */
    static void spread(double[] values, double shrink, Seeds random) {
        int n = values.length;
        double mean = 0;
        for (double value : values) {
            mean += value / n;
        }
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean) / n;
        }
        double sd = Math.sqrt((1 - shrink * shrink) * squares);
        for (int i = 0; i < n; i++) {
            values[i] = mean + shrink * (values[i] - mean) + sd * Normal.draw(random.next());
        }
    }
}
