package slipway.reasoning.locate;

import java.util.List;
import slipway.mechanics.body.Side;

/** Log chances of everything found on one side: under each variant there, and without a lesion there. */
final class SideLog {
    private final LocateModel model;
    private final double[] lesion;
    private final double base;
    private final LatentChances posterior;
    private final LatentChances anterior;

    private SideLog(LocateModel model, double[] lesion, double base, LatentChances posterior, LatentChances anterior) {
        this.model = model;
        this.lesion = lesion;
        this.base = base;
        this.posterior = posterior;
        this.anterior = anterior;
    }

    static SideLog of(LocateModel model, CaseEvidence evidence, Likelihoods likelihoods, Side side) {
        double elsewhere = model.coefficients().value("mechanosensitivity.other");
        var posterior = LatentChances.of(evidence.latents(), Latent.Nerve.POSTERIOR, side, elsewhere);
        var anterior = LatentChances.of(evidence.latents(), Latent.Nerve.ANTERIOR, side, elsewhere);
        double[] product = new double[model.variants().size()];
        double[] lesion = new double[product.length];
        java.util.Arrays.fill(product, 1);
        double base = Math.log(posterior.base()) + Math.log(anterior.base());
        int taken = 0;
        for (int o = 0; o < evidence.observations().size(); o++) {
            if (evidence.observations().get(o).finding().side() != side) {
                continue;
            }
            double[] own = likelihoods.own(o);
            for (int v = 0; v < product.length; v++) {
                product[v] *= own[v];
            }
            base += Math.log(likelihoods.base(o));
            // Chances are at least 1e-6, so that 32 of them never underflow.
            if (++taken % 32 == 0) {
                drain(product, lesion);
            }
        }
        drain(product, lesion);
        double[] latent = new double[model.sites().size()];
        for (int i = 0; i < latent.length; i++) {
            LesionSite site = model.sites().get(i);
            latent[i] = Math.log(posterior.at(site)) + Math.log(anterior.at(site));
        }
        for (int v = 0; v < lesion.length; v++) {
            lesion[v] += latent[model.siteOfVariant()[v]];
        }
        return new SideLog(model, lesion, base, posterior, anterior);
    }

    private static void drain(double[] product, double[] log) {
        for (int v = 0; v < product.length; v++) {
            log[v] += Math.log(product[v]);
            product[v] = 1;
        }
    }

    double lesion(int variant) {
        return lesion[variant];
    }

    double base() {
        return base;
    }

    /** Chances of the neural tests for two lesions, by site. */
    double[][] pairs() {
        List<LesionSite> sites = model.sites();
        double[][] pairs = new double[sites.size()][sites.size()];
        for (int i = 0; i < pairs.length; i++) {
            for (int j = 0; j < pairs.length; j++) {
                pairs[i][j] = posterior.at(sites.get(i), sites.get(j)) * anterior.at(sites.get(i), sites.get(j));
            }
        }
        return pairs;
    }

    LatentChances latent(Latent.Nerve nerve) {
        return nerve == Latent.Nerve.POSTERIOR ? posterior : anterior;
    }
}
