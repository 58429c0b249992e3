package slipway.reasoning.locate;

import java.util.List;

/** The chances that pairs of lesions need, laid out per variant, so that the innermost loop reads straight ahead. */
final class PairTable {
    private static final int DRAIN_EVERY = 32;

    private final double[][] low;
    private final double[][] high;
    private final double[] perLow;
    private final double[] perHigh;
    private final double[] tempers;
    private final double[][] latent;

    PairTable(Likelihoods likelihoods, int[] observations, List<Integer> variants, SideLog side) {
        low = new double[variants.size()][observations.length];
        high = new double[variants.size()][observations.length];
        perLow = new double[observations.length];
        perHigh = new double[observations.length];
        tempers = new double[observations.length];
        for (int k = 0; k < observations.length; k++) {
            int o = observations[k];
            tempers[k] = likelihoods.temper(o);
            perLow[k] = 1 / likelihoods.baseLow(o);
            perHigh[k] = likelihoods.baseHigh(o) == 0 ? 0 : 1 / likelihoods.baseHigh(o);
            for (int i = 0; i < low.length; i++) {
                low[i][k] = likelihoods.low(o, variants.get(i));
                high[i][k] = likelihoods.high(o, variants.get(i));
            }
        }
        latent = side.pairs();
    }

    /** Log of the chance of everything found on the side under two variants at two sites, times a weight. */
    double log(int first, int second, int siteOfFirst, int siteOfSecond, double weight) {
        double[] lowOne = low[first];
        double[] lowTwo = low[second];
        double[] highOne = high[first];
        double[] highTwo = high[second];
        double product = weight * latent[siteOfFirst][siteOfSecond];
        double log = 0;
        for (int k = 0; k < perLow.length; k++) {
            double between = lowOne[k] * lowTwo[k] * perLow[k] - highOne[k] * highTwo[k] * perHigh[k];
            between = Math.max(Likelihoods.FLOOR, between);
            product *= tempers[k] == 1 ? between : Math.pow(between, tempers[k]);
            if (k % DRAIN_EVERY == DRAIN_EVERY - 1) {
                log += Math.log(product);
                product = 1;
            }
        }
        return log + Math.log(product);
    }
}
