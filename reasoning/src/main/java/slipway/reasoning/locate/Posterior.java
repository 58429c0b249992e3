package slipway.reasoning.locate;

import java.util.List;

/**
 * Chances after the findings.
 *
 * @param sites per site, a pair of sites counting half for each; sums to 1
 * @param left chance that the lesion is on the left alone
 * @param right chance that it is on the right alone
 * @param variants per side (left, right) and variant, single lesions; a bilateral variant stands under left
 * @param pairs the likeliest pairs of sites, best first
 * @param pairChance chance that two sites are hit
 */
record Posterior(double[] sites, double left, double right, double[][] variants, List<Pair> pairs, double pairChance) {
    /** Two sites hit at once. */
    record Pair(int first, int second, double chance) {}

    /** Index of the likeliest site. */
    int leading() {
        int best = 0;
        for (int i = 1; i < sites.length; i++) {
            if (sites[i] > sites[best]) {
                best = i;
            }
        }
        return best;
    }

    /** Entropy over the sites in nats. */
    double entropy() {
        return entropy(sites);
    }

    static double entropy(double[] chances) {
        double entropy = 0;
        for (double chance : chances) {
            if (chance > 0) {
                entropy -= chance * Math.log(chance);
            }
        }
        return entropy;
    }
}
