package slipway.reasoning.tolerance;

import java.util.List;
import slipway.mechanics.nerve.Site;

/** What each weighted draw was made of, before anything is known of its tolerance. */
final class Draws {
    private final int modelDraws;
    private final List<Site> sites;
    private final int[] siteOf;
    private final double[] alpha;
    private final LatinHypercube columns;

    /**
     * Every draw of the model is used equally often; sites are drawn by their weights, the spread evenly over 0 to 1.
     *
     * @param weights of the sites, in proportion
     */
    Draws(int modelDraws, List<Site> sites, double[] weights) {
        int wanted = (int) ToleranceData.COEFFICIENTS.value("particles");
        int size = modelDraws * Math.max(1, Math.round((float) wanted / modelDraws));
        this.modelDraws = modelDraws;
        this.sites = List.copyOf(sites);
        this.columns = new LatinHypercube(size, (long) ToleranceData.COEFFICIENTS.value("seed"));
        this.alpha = columns.column("spread");
        this.siteOf = pick(columns.column("site"), weights);
    }

    private static int[] pick(double[] uniform, double[] weights) {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        int[] picked = new int[uniform.length];
        for (int i = 0; i < picked.length; i++) {
            double left = uniform[i] * sum;
            int site = 0;
            while (site < weights.length - 1 && left >= weights[site]) {
                left -= weights[site];
                site++;
            }
            picked[i] = site;
        }
        return picked;
    }

    int size() {
        return siteOf.length;
    }

    List<Site> sites() {
        return sites;
    }

    int modelDraw(int i) {
        return i % modelDraws;
    }

    int siteOf(int i) {
        return siteOf[i];
    }

    /** The spread in every draw; shared, not to be changed. */
    double[] alpha() {
        return alpha;
    }

    /** One more column of independent numbers in (0, 1). */
    double[] column(String name) {
        return columns.column(name);
    }
}
