package slipway.reasoning.locate;

import java.util.Arrays;
import java.util.List;

/**
 * Chances of each observation under each variant on its own side, and without a lesion there. Small chances are kept above
 * {@value #FLOOR}, so that one slip of an examiner never excludes a site.
 */
final class Likelihoods {
    static final double FLOOR = 1e-6;

    private final double[][] low;
    private final double[][] high;
    private final double[][] own;
    private final double[] baseLow;
    private final double[] baseHigh;
    private final double[] base;
    private final double[] tempers;

    Likelihoods(List<Observation> observations, int[] siteOfVariant) {
        int count = observations.size();
        low = new double[count][];
        high = new double[count][];
        own = new double[count][];
        baseLow = new double[count];
        baseHigh = new double[count];
        base = new double[count];
        tempers = new double[count];
        for (int o = 0; o < count; o++) {
            Observation observation = observations.get(o);
            tempers[o] = observation.temper();
            low[o] = product(observation.lower(), siteOfVariant);
            baseLow[o] = base(observation.lower());
            boolean open = observation.upper().isEmpty();
            high[o] = open
                    ? new double[siteOfVariant.length]
                    : product(observation.upper().get(), siteOfVariant);
            baseHigh[o] = open ? 0 : base(observation.upper().get());
            base[o] = chance(baseLow[o], baseHigh[o], o);
            own[o] = new double[siteOfVariant.length];
            for (int v = 0; v < siteOfVariant.length; v++) {
                own[o][v] = chance(low[o][v], high[o][v], o);
            }
        }
    }

    /** Chance of the observation under a variant on its side. */
    double own(int observation, int variant) {
        return own[observation][variant];
    }

    /** Chances of the observation under all variants on its side. */
    double[] own(int observation) {
        return own[observation];
    }

    /** Chance of the observation without a lesion on its side. */
    double base(int observation) {
        return base[observation];
    }

    double low(int observation, int variant) {
        return low[observation][variant];
    }

    double high(int observation, int variant) {
        return high[observation][variant];
    }

    double baseLow(int observation) {
        return baseLow[observation];
    }

    double baseHigh(int observation) {
        return baseHigh[observation];
    }

    double temper(int observation) {
        return tempers[observation];
    }

    /** Chance under a variant of this result or a more abnormal one. */
    double atLeastAsBad(int o, int variant) {
        boolean open = baseHigh[o] == 0;
        return open ? 1 : 1 - high[o][variant];
    }

    private double chance(double above, double beyond, int o) {
        double between = Math.max(FLOOR, above - beyond);
        return tempers[o] == 1 ? between : Math.pow(between, tempers[o]);
    }

    private static double[] product(List<Factor> factors, int[] siteOfVariant) {
        double[] chances = new double[siteOfVariant.length];
        Arrays.fill(chances, 1);
        factors.forEach(factor -> factor.multiplyInto(chances, siteOfVariant));
        return chances;
    }

    private static double base(List<Factor> factors) {
        return factors.stream().mapToDouble(Factor::base).reduce(1, (a, b) -> a * b);
    }
}
