package slipway.reasoning.locate;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Keeps the answer humble when nothing tested was abnormal: complaints and normal findings alone never make one site more
 * likely than the cap. The posterior is mixed with the prior just as far as needed, and the order of the sites is kept
 * wherever the prior is flat.
 */
final class TellingCap {
    private TellingCap() {}

    static double[] capped(double[] posterior, double[] prior, List<LesionSite> sites, double cap) {
        double share = 1;
        Map<String, double[]> groups = new HashMap<>();
        for (int i = 0; i < posterior.length; i++) {
            share = Math.min(share, share(posterior[i], prior[i], cap));
            double[] sum = groups.computeIfAbsent(sites.get(i).scored(), name -> new double[2]);
            sum[0] += posterior[i];
            sum[1] += prior[i];
        }
        for (double[] sum : groups.values()) {
            share = Math.min(share, share(sum[0], sum[1], cap));
        }
        double[] mixed = new double[posterior.length];
        for (int i = 0; i < mixed.length; i++) {
            mixed[i] = share * posterior[i] + (1 - share) * prior[i];
        }
        return mixed;
    }

    private static double share(double posterior, double prior, double cap) {
        return posterior <= cap || prior >= cap ? 1 : (cap - prior) / (posterior - prior);
    }
}
