package slipway.reasoning.locate;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;

/**
 * Chances of the sites before any finding, for one setting of {@code locate/priors.csv}.
 *
 * @param setting name of the setting
 * @param severities how badly sites are hit there, a setting of {@code locate/severities.csv}
 * @param weights per site name, positive, need not sum to 1
 * @param other weight of a site that is not named
 */
public record SitePrior(String setting, String severities, Map<String, Double> weights, double other) {
    /** The flat prior for lists of published cases. */
    public static final String SCORING = "scoring";

    /** People with leg pain in primary care; used for a person unless another setting is asked for. */
    public static final String OUTPATIENT = "outpatient";

    public SitePrior {
        weights = Map.copyOf(weights);
        if (!(other > 0) || weights.values().stream().anyMatch(weight -> !(weight > 0 && Double.isFinite(weight)))) {
            throw new IllegalArgumentException("prior %s: weights must be positive".formatted(setting));
        }
    }

    /**
     * The prior of a setting.
     *
     * @throws IllegalArgumentException naming the known settings
     */
    public static SitePrior load(String setting) {
        var weights = new HashMap<String, Double>();
        var known = new TreeMap<String, String>();
        for (CSVRecord row : ReasoningData.table("locate/settings.csv")) {
            known.put(row.get("setting"), row.get("severities"));
        }
        String severities = known.get(setting);
        if (severities == null) {
            throw new IllegalArgumentException(
                    "unknown setting \"%s\" (known: %s)".formatted(setting, String.join(", ", known.keySet())));
        }
        double other = 0;
        for (CSVRecord row : ReasoningData.table("locate/priors.csv")) {
            if (row.get("setting").equals(setting)) {
                double weight = Double.parseDouble(row.get("weight"));
                if (row.get("site").equals("other")) {
                    other = weight;
                } else {
                    weights.put(row.get("site"), weight);
                }
            }
        }
        return new SitePrior(setting, severities, weights, other);
    }

    /** Chances of these sites, summing to 1. */
    double[] chances(List<LesionSite> sites) {
        double[] chances = sites.stream()
                .mapToDouble(site -> weights.getOrDefault(site.name(), other))
                .toArray();
        double total = 0;
        for (double chance : chances) {
            total += chance;
        }
        for (int i = 0; i < chances.length; i++) {
            chances[i] /= total;
        }
        return chances;
    }
}
