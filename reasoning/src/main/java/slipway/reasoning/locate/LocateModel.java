package slipway.reasoning.locate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.findings.Vocabulary;
import slipway.reasoning.findings.Weights;
import slipway.reasoning.screening.Region;

/** Everything that locating in one limb needs, read once: graph, sites, variants, tests, pain areas and numbers. */
final class LocateModel {
    private static final Map<Key, LocateModel> BUNDLED = new HashMap<>();

    /** A limb and how badly its sites are hit where cases are met. */
    private record Key(Region region, String severities) {}

    private final Key key;
    private final Graph graph;
    private final List<LesionSite> sites;
    private final List<Variant> variants;
    private final int[] siteOfVariant;
    private final LostShares lost;
    private final LocateCoefficients coefficients;
    private final Map<String, ProvocationTest> tests;
    private final Map<String, Latent.Rates> latentRates;
    private final Map<String, Map<String, Double>> pain;
    private final Map<String, List<String>> outlines;

    private LocateModel(Key key, LocateCoefficients coefficients) {
        Region region = key.region();
        this.key = key;
        this.coefficients = coefficients;
        this.graph = GraphReader.read(region);
        this.sites = LesionSite.list(region);
        var builder = new VariantBuilder(coefficients.shapes(), key.severities());
        this.variants = new ArrayList<>();
        for (int i = 0; i < sites.size(); i++) {
            variants.addAll(builder.build(i, sites.get(i)));
        }
        this.siteOfVariant = variants.stream().mapToInt(Variant::site).toArray();
        this.lost = new LostShares(graph, sites, variants, coefficients.value("symptom.irritation"));
        this.tests = ProvocationTest.load(coefficients);
        this.latentRates = readLatentRates();
        this.pain = readPain(region);
        this.outlines = new HashMap<>();
        for (CSVRecord row : ReasoningData.table("locate/outlines.csv")) {
            outlines.put(row.get("term"), List.of(row.get("outside").split("\\s+")));
        }
        check();
    }

    /** The model of a limb with the numbers that ship with the program. */
    static synchronized LocateModel load(Region region, String severities) {
        return BUNDLED.computeIfAbsent(
                new Key(region, severities), key -> new LocateModel(key, LocateCoefficients.load()));
    }

    /** The same model with other numbers. */
    LocateModel with(LocateCoefficients changed) {
        return new LocateModel(key, changed);
    }

    Region region() {
        return key.region();
    }

    Graph graph() {
        return graph;
    }

    List<LesionSite> sites() {
        return sites;
    }

    List<Variant> variants() {
        return variants;
    }

    int[] siteOfVariant() {
        return siteOfVariant;
    }

    LostShares lost() {
        return lost;
    }

    LocateCoefficients coefficients() {
        return coefficients;
    }

    Vocabulary vocabulary() {
        return Vocabulary.load();
    }

    Map<String, ProvocationTest> tests() {
        return tests;
    }

    Latent.Rates rates(String test) {
        Latent.Rates rates = latentRates.get(test);
        if (rates == null) {
            throw new IllegalStateException("latent-tests.csv has no row " + test);
        }
        return rates;
    }

    /** Chance that a lesion at the site is felt in the area, beyond its skin supply. */
    double pain(String site, String area) {
        return pain.getOrDefault(site, Map.of()).getOrDefault(area, 0.0);
    }

    /** Areas just outside a named territory; empty if naming it draws no outline. */
    List<String> listOutside(String term) {
        return outlines.getOrDefault(term, List.of());
    }

    Optional<Integer> findSite(String name) {
        for (int i = 0; i < sites.size(); i++) {
            if (sites.get(i).name().equals(name)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private void check() {
        for (LesionSite site : sites) {
            for (String node : site.nodes()) {
                if (!graph.hasNode(node) && !graph.listRoots().contains(node)) {
                    throw new IllegalStateException(
                            "sites.csv: %s takes %s, which the graph lacks".formatted(site.name(), node));
                }
            }
        }
    }

    private static Map<String, Latent.Rates> readLatentRates() {
        var rates = new HashMap<String, Latent.Rates>();
        for (CSVRecord row : ReasoningData.table("locate/latent-tests.csv")) {
            rates.put(
                    row.get("test"),
                    new Latent.Rates(
                            range(row, "sensitive", "low", "high"), range(row, "notSensitive", "low0", "high0")));
        }
        return rates;
    }

    private static Latent.Range range(CSVRecord row, String value, String low, String high) {
        return new Latent.Range(
                Double.parseDouble(row.get(value)),
                Double.parseDouble(row.get(low)),
                Double.parseDouble(row.get(high)));
    }

    private static Map<String, Map<String, Double>> readPain(Region region) {
        var pain = new HashMap<String, Map<String, Double>>();
        for (CSVRecord row : GraphReader.rows("locate/pain.csv", region)) {
            pain.put(row.get("site"), Weights.parse(row.get("areas")));
        }
        return pain;
    }
}
