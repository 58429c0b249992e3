package slipway.reasoning.locate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.locate.Location.Reason;

/** What each finding does to each site, and what the leading site leaves unexplained. */
final class Basis {
    private final LocateModel model;
    private final Locator.Solved solved;
    private final List<String> names = new ArrayList<>();
    private final List<double[]> without = new ArrayList<>();

    Basis(LocateModel model, Locator.Solved solved) {
        this.model = model;
        this.solved = solved;
        List<Observation> observations = solved.evidence().observations();
        for (int o = 0; o < observations.size(); o++) {
            names.add(observations.get(o).finding().text());
            without.add(
                    solved.engine().withoutObservation(solved.evidence(), solved.likelihoods(), solved.posterior(), o));
        }
        for (Side side : Side.values()) {
            for (Latent.Nerve nerve : Latent.Nerve.values()) {
                addNeuralTests(side, nerve);
            }
        }
    }

    /** How many times each finding changes the odds of a site, strongest first. */
    List<Reason> reasons(int site) {
        double all = odds(singles(), site);
        var reasons = new ArrayList<Reason>();
        for (int k = 0; k < names.size(); k++) {
            reasons.add(new Reason(names.get(k), all / odds(without.get(k), site)));
        }
        reasons.sort(Comparator.comparingDouble((Reason reason) -> -Math.abs(Math.log(reason.ratio()))));
        return reasons;
    }

    /** Abnormal findings that are unlikely under the leading site as it is probably hit. */
    List<Finding> unexplained() {
        double below = model.coefficients().value("unexplained.below");
        int leading = solved.posterior().leading();
        var unexplained = new ArrayList<Finding>();
        for (int o = 0; o < solved.evidence().observations().size(); o++) {
            Finding finding = solved.evidence().observations().get(o).finding();
            boolean tested = finding.kind() != FindingKind.SYMPTOM;
            if (finding.result().abnormal() && chance(o, leading) < (tested ? below : below / 2)) {
                unexplained.add(finding);
            }
        }
        return unexplained;
    }

    /** Chance of the result or a worse one, over the ways in which the site is probably hit. */
    private double chance(int observation, int site) {
        Side side = solved.evidence().observations().get(observation).finding().side();
        double weight = 0;
        double sum = 0;
        for (Side each : Side.values()) {
            double[] variants = solved.posterior().variants()[each.ordinal()];
            for (int v = 0; v < variants.length; v++) {
                if (model.siteOfVariant()[v] == site) {
                    boolean touched = each == side || model.variants().get(v).bilateral();
                    weight += variants[v];
                    sum += variants[v]
                            * (touched
                                    ? solved.likelihoods().atLeastAsBad(observation, v)
                                    : solved.likelihoods().base(observation));
                }
            }
        }
        return weight > 0 ? sum / weight : 1;
    }

    private void addNeuralTests(Side side, Latent.Nerve nerve) {
        List<Latent> tests = solved.evidence().latents().stream()
                .filter(latent -> latent.finding().side() == side && latent.nerve() == nerve)
                .toList();
        if (tests.isEmpty()) {
            return;
        }
        var chances = LatentChances.of(tests, nerve, side, model.coefficients().value("mechanosensitivity.other"));
        names.add(String.join(
                " and ", tests.stream().map(test -> test.finding().text()).toList()));
        double[] sites = singles();
        double total = 0;
        for (int i = 0; i < sites.length; i++) {
            sites[i] /= chances.at(model.sites().get(i));
            total += sites[i];
        }
        for (int i = 0; i < sites.length; i++) {
            sites[i] /= total;
        }
        without.add(sites);
    }

    /** Chances of the sites among single lesions. */
    private double[] singles() {
        double[] sites = new double[model.sites().size()];
        double total = 0;
        for (double[] side : solved.posterior().variants()) {
            for (int v = 0; v < side.length; v++) {
                sites[model.siteOfVariant()[v]] += side[v];
                total += side[v];
            }
        }
        for (int i = 0; i < sites.length; i++) {
            sites[i] /= total;
        }
        return sites;
    }

    private static double odds(double[] chances, int site) {
        double kept = Math.min(1 - 1e-12, Math.max(1e-12, chances[site]));
        return kept / (1 - kept);
    }
}
