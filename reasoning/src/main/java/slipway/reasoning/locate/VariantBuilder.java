package slipway.reasoning.locate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.findings.Weights;
import slipway.reasoning.locate.Variant.Systemic;

/** Lists the ways in which each site can be hit, from {@code locate/severities.csv} and {@code locate/patterns.csv}. */
final class VariantBuilder {
    private static final Systemic NONE = new Systemic.None();

    private final Shapes shapes;
    private final List<CSVRecord> severities;
    private final List<CSVRecord> patterns = ReasoningData.table("locate/patterns.csv");

    VariantBuilder(Shapes shapes, String severitySetting) {
        this.shapes = shapes;
        this.severities = ReasoningData.table("locate/severities.csv").stream()
                .filter(row -> row.get("setting").equals(severitySetting))
                .toList();
    }

    private record Severity(double value, double weight) {}

    /**
     * How lesions differ in shape.
     *
     * @param motorOnly how often feeling is mostly spared
     * @param sensoryOnly how often muscles are mostly spared
     * @param sensoryNerveSensoryOnly the same for nerves that are mostly skin
     * @param spared what is left of the severity for the spared kind
     * @param reaches how far up a polyneuropathy has come, as distal positions
     */
    record Shapes(
            double motorOnly,
            double sensoryOnly,
            double sensoryNerveSensoryOnly,
            double spared,
            List<Double> reaches) {}

    List<Variant> build(int index, LesionSite site) {
        List<Variant> ways = switch (site.kind()) {
            case "sciatic" -> divisions(index, site);
            case "cauda", "plexus_lumbar", "plexus_sacral" -> patterned(index, site);
            case "polyneuropathy" -> lengthDependent(index, site);
            case "upper_motor_neurone" -> upperMotorNeurone(index, site);
            default -> plain(index, site);
        };
        double total = ways.stream().mapToDouble(Variant::weight).sum();
        return ways.stream().map(way -> way.withWeight(way.weight() / total)).toList();
    }

    private List<Variant> plain(int index, LesionSite site) {
        var ways = new ArrayList<Variant>();
        for (Severity severity : severities(site.kind())) {
            var hit = new HashMap<String, Double>();
            site.nodes().forEach(node -> hit.put(node, severity.value()));
            addAdjacent(site, hit, severity.value());
            addKinds(ways, site, way(index, site, severity.weight(), hit, "severity " + severity.value()));
        }
        return ways;
    }

    /** The severity of the worse hit division, and the share of it that the other division has. */
    private List<Variant> divisions(int index, LesionSite site) {
        var ways = new ArrayList<Variant>();
        for (CSVRecord pattern : patternsOf(site)) {
            Map<String, Double> parts = Weights.parse(pattern.get("parts"));
            for (Severity severity : severities(site.kind())) {
                double fibular = severity.value() * parts.getOrDefault("fibular", 0.0);
                double tibial = severity.value() * parts.getOrDefault("tibial", 0.0);
                var hit = new HashMap<String, Double>();
                hit.put(site.nodes().get(0), fibular);
                hit.put(site.nodes().get(1), tibial);
                addAdjacent(site, hit, severity.value());
                double weight = Double.parseDouble(pattern.get("weight")) * severity.weight();
                String text = "fibular division %s, tibial division %s".formatted(fibular, tibial);
                addKinds(ways, site, way(index, site, weight, hit, text));
            }
        }
        return ways;
    }

    private List<CSVRecord> patternsOf(LesionSite site) {
        return patterns.stream()
                .filter(pattern -> pattern.get("class").equals(site.kind()))
                .toList();
    }

    private List<Variant> patterned(int index, LesionSite site) {
        var ways = new ArrayList<Variant>();
        for (CSVRecord pattern : patternsOf(site)) {
            Map<String, Double> parts = Weights.parse(pattern.get("parts"));
            for (Severity severity : severities(site.kind())) {
                var hit = new HashMap<String, Double>();
                parts.forEach((part, share) -> hit.put(part, share * severity.value()));
                double weight = Double.parseDouble(pattern.get("weight")) * severity.weight();
                String text = "%s, severity %s".formatted(pattern.get("pattern"), severity.value());
                addKinds(ways, site, way(index, site, weight, hit, text));
            }
        }
        return ways;
    }

    private List<Variant> lengthDependent(int index, LesionSite site) {
        var ways = new ArrayList<Variant>();
        for (Severity severity : severities(site.kind())) {
            for (double reach : shapes.reaches()) {
                var systemic = new Systemic.LengthDependent(severity.value(), reach);
                Variant way = new Variant(
                        index, severity.weight(), true, Map.of(), 1, 1, systemic, "severity " + severity.value());
                addKinds(ways, site, way);
            }
        }
        return ways;
    }

    private List<Variant> upperMotorNeurone(int index, LesionSite site) {
        var ways = new ArrayList<Variant>();
        for (Severity severity : severities(site.kind())) {
            for (boolean both : new boolean[] {false, true}) {
                ways.add(new Variant(
                        index,
                        severity.weight(),
                        both,
                        Map.of(),
                        1,
                        1,
                        new Systemic.UpperMotorNeurone(severity.value()),
                        "severity " + severity.value()));
            }
        }
        return ways;
    }

    /** The same lesion taking all fibres alike, sparing feeling, and sparing muscles. */
    private void addKinds(List<Variant> ways, LesionSite site, Variant all) {
        boolean whole = site.kind().equals("mimic")
                || site.kind().equals("cutaneous")
                || all.text().endsWith(" 0.0");
        if (whole) {
            ways.add(all);
            return;
        }
        double sensoryOnly =
                site.kind().equals("sensory_nerve") ? shapes.sensoryNerveSensoryOnly() : shapes.sensoryOnly();
        double motorOnly = site.kind().equals("sensory_nerve") ? shapes.motorOnly() / 2 : shapes.motorOnly();
        ways.add(all.withWeight(all.weight() * (1 - motorOnly - sensoryOnly)));
        ways.add(sparing(all, all.weight() * motorOnly, 1, shapes.spared(), ", feeling mostly spared"));
        ways.add(sparing(all, all.weight() * sensoryOnly, shapes.spared(), 1, ", muscles mostly spared"));
    }

    private static Variant sparing(Variant all, double weight, double motor, double sensory, String text) {
        return new Variant(
                all.site(), weight, all.bilateral(), all.hit(), motor, sensory, all.systemic(), all.text() + text);
    }

    private static Variant way(int index, LesionSite site, double weight, Map<String, Double> hit, String text) {
        return new Variant(index, weight, site.bilateral(), hit, 1, 1, NONE, text);
    }

    private static void addAdjacent(LesionSite site, Map<String, Double> hit, double severity) {
        site.adjacent().forEach((node, share) -> hit.merge(node, share * severity, Math::max));
    }

    private List<Severity> severities(String kind) {
        return severities.stream()
                .filter(row -> row.get("class").equals(kind))
                .map(row ->
                        new Severity(Double.parseDouble(row.get("severity")), Double.parseDouble(row.get("weight"))))
                .toList();
    }
}
