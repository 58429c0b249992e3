package slipway.reasoning.locate;

/**
 * One factor of the chance that a result is on the good side of a cut: (1 - falseAlarm)^times exp(-gain load) keep. Factors
 * of two lesions multiply, the false alarm counted once.
 *
 * @param gain of the curve
 * @param falseAlarm of the curve or the test
 * @param times how often the false alarm counts, 1 for a single item
 * @param load per variant, lost share to the power of the curve, summed over members; {@link Load#NONE} if the factor has none
 * @param keep per site, 1 - chance that the site itself makes the test positive; empty if the factor has none
 * @param spread what its uncertainty is
 */
record Factor(double gain, double falseAlarm, double times, Load load, double[] keep, Spread spread) {
    private static final double[] NOTHING = {};

    /** Where the uncertainty of a factor comes from. */
    sealed interface Spread {
        /** A gain and a false-alarm rate that all findings of a kind share. */
        record OfKind(String kind) implements Spread {}

        /** Counts of people with and without the lesion. */
        record OfCounts(double sensitivity, double diseased, double healthy, double cap) implements Spread {}

        /** None stated. */
        record Fixed() implements Spread {}
    }

    static Factor ofCurve(String kind, Curve curve, double times, Load load) {
        return new Factor(curve.gain(), curve.falseAlarm(), times, load, NOTHING, new Spread.OfKind(kind));
    }

    static Factor ofSites(double falseAlarm, double[] keep, Spread spread) {
        return new Factor(0, falseAlarm, 1, Load.NONE, keep, spread);
    }

    /** Multiplies the chance of each variant into an array. */
    void multiplyInto(double[] chances, int[] siteOfVariant) {
        double base = base();
        if (load.isNone()) {
            for (int v = 0; v < chances.length; v++) {
                chances[v] *= base;
            }
        } else {
            double[] different = new double[load.values().length];
            for (int u = 0; u < different.length; u++) {
                different[u] = base * Math.exp(-gain * load.values()[u]);
            }
            int[] index = load.index();
            for (int v = 0; v < chances.length; v++) {
                chances[v] *= different[index[v]];
            }
        }
        if (keep.length > 0) {
            for (int v = 0; v < chances.length; v++) {
                chances[v] *= keep[siteOfVariant[v]];
            }
        }
    }

    /** The chance without any lesion. */
    double base() {
        return times == 1 ? 1 - falseAlarm : Math.pow(1 - falseAlarm, times);
    }
}
