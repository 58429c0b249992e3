package slipway.reasoning.locate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Term;
import slipway.reasoning.screening.Region;

/**
 * The model with some of its numbers scaled, for fitting: how it ranks, and how far its sensitivities for root lesions are
 * from the published ones.
 */
public final class LocateFit {
    /** Weakness 0.22-0.40, reflex 0.25-0.29, feeling 0.32-0.61 for root lesions (Al Nezari 2013, Tawa 2017), as mean and half range. */
    private static final double[][] PUBLISHED = {{0.31, 0.09}, {0.27, 0.04}, {0.44, 0.12}};

    private static final List<String> ROOTS = List.of("root_L4", "root_L5", "root_S1");
    private static final Map<String, String> ARC =
            Map.of("root_L4", "patellar", "root_L5", "medial_hamstring", "root_S1", "achilles");
    private static final List<String> MUSCLES = List.of(
            "hip_flexors",
            "knee_extensors",
            "knee_flexors",
            "ankle_dorsiflexors",
            "hallux_extensors",
            "ankle_evertors",
            "ankle_plantarflexors",
            "hip_abductors");

    private final Locator locator;
    private final LocateModel clinic;

    private LocateFit(Locator locator, LocateModel clinic) {
        this.locator = locator;
        this.clinic = clinic;
    }

    /**
     * The model of the leg with every coefficient whose id starts with a key multiplied by its scale.
     *
     * @param scales for example {@code strength.gain: 1.2}
     */
    public static LocateFit of(Map<String, Double> scales) {
        LocateCoefficients numbers = LocateCoefficients.load();
        var changed = new LinkedHashMap<String, Double>();
        scales.forEach((prefix, scale) ->
                numbers.listIds(prefix).forEach(id -> changed.put(id, numbers.value(id) * scale)));
        LocateCoefficients scaled = numbers.with(changed);
        SitePrior prior = SitePrior.load(SitePrior.SCORING);
        LocateModel reports = LocateModel.load(Region.LEG, prior.severities()).with(scaled);
        return new LocateFit(
                new Locator(reports, prior),
                LocateModel.load(Region.LEG, "clinic").with(scaled));
    }

    /** Chances by the names of lists of published cases, likeliest first. */
    public Map<String, Double> ranked(LocateRequest request) {
        double[] chances = locator.chances(request);
        var sums = new LinkedHashMap<String, Double>();
        for (int i = 0; i < chances.length; i++) {
            sums.merge(locator.model().sites().get(i).scored(), chances[i], Double::sum);
        }
        var ranked = new LinkedHashMap<String, Double>();
        sums.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .forEach(entry -> ranked.put(entry.getKey(), entry.getValue()));
        return ranked;
    }

    /** Sensitivities of any weakness, the arc's reflex, and the dermatome's feeling, mean over the roots L4, L5 and S1. */
    public double[] sensitivities() {
        double[] mean = new double[PUBLISHED.length];
        for (String root : ROOTS) {
            int site = clinic.findSite(root).orElseThrow();
            for (int v = 0; v < clinic.variants().size(); v++) {
                if (clinic.siteOfVariant()[v] == site) {
                    double weight = clinic.variants().get(v).weight() / ROOTS.size();
                    mean[0] += weight * (1 - allStrong(v));
                    mean[1] +=
                            weight * (1 - normal(FindingKind.REFLEX, ARC.getOrDefault(root, ""), "reflex.reduced", v));
                    mean[2] += weight
                            * (1
                                    - normal(
                                            FindingKind.SENSATION,
                                            root.substring(5) + "_dermatome",
                                            "sensation.reduced",
                                            v));
                }
            }
        }
        return mean;
    }

    /** Half the squared distance from the published sensitivities, in half ranges. */
    public double misfit() {
        double[] found = sensitivities();
        double misfit = 0;
        for (int i = 0; i < found.length; i++) {
            double z = (found[i] - PUBLISHED[i][0]) / PUBLISHED[i][1];
            misfit += z * z / 2;
        }
        return misfit;
    }

    private double allStrong(int variant) {
        double strong = 1;
        for (String muscle : MUSCLES) {
            strong *= normal(FindingKind.STRENGTH, muscle, "strength.5", variant);
        }
        return strong;
    }

    private double normal(FindingKind kind, String word, String curve, int variant) {
        Term term = clinic.vocabulary().find(kind, word).orElseThrow();
        return clinic.coefficients().curve(curve).at(clinic.lost().find(term).orElseThrow()[variant]);
    }
}
