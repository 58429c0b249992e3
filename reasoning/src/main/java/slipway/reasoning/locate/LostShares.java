package slipway.reasoning.locate;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Term;
import slipway.reasoning.locate.Variant.Systemic;

/** The share of fibres that each variant takes from a target or from a group of targets. Computed once per word. */
final class LostShares {
    private final Graph graph;
    private final List<LesionSite> sites;
    private final List<Variant> variants;
    private final double irritation;
    private final Map<String, double[]> byTarget = new ConcurrentHashMap<>();
    private final Map<String, double[]> byTerm = new ConcurrentHashMap<>();
    private final Map<String, Load> byTermAndPower = new ConcurrentHashMap<>();

    LostShares(Graph graph, List<LesionSite> sites, List<Variant> variants, double irritation) {
        this.graph = graph;
        this.sites = sites;
        this.variants = variants;
        this.irritation = irritation;
    }

    /** Per variant, the weighted mean of the shares lost by the members; empty if no member is in the graph. */
    Optional<double[]> find(Term term) {
        String key = term.kind().key() + " " + term.key();
        double[] known = byTerm.get(key);
        if (known != null) {
            return Optional.of(known);
        }
        Optional<double[]> mean = mean(term.kind(), term.members());
        mean.ifPresent(shares -> byTerm.put(key, shares));
        return mean;
    }

    /** The shares of a term to the power of a curve. */
    Optional<Load> find(Term term, double power) {
        String key = term.kind().key() + " " + term.key() + " " + power;
        Load known = byTermAndPower.get(key);
        if (known != null) {
            return Optional.of(known);
        }
        Optional<Load> load = find(term).map(shares -> Load.of(shares).power(power));
        load.ifPresent(found -> byTermAndPower.put(key, found));
        return load;
    }

    /** The same for any weights; members that are not in the graph of this limb are left out. */
    Optional<double[]> mean(FindingKind kind, Map<String, Double> members) {
        double[] sum = new double[variants.size()];
        double total = 0;
        for (Map.Entry<String, Double> member : members.entrySet()) {
            double[] shares = target(kind, member.getKey());
            if (shares.length > 0) {
                total += member.getValue();
                for (int v = 0; v < sum.length; v++) {
                    sum[v] += member.getValue() * shares[v];
                }
            }
        }
        if (total == 0) {
            return Optional.empty();
        }
        for (int v = 0; v < sum.length; v++) {
            sum[v] /= total;
        }
        return Optional.of(sum);
    }

    private double[] target(FindingKind kind, String name) {
        return byTarget.computeIfAbsent(kind.key() + " " + name, key -> {
            FindingKind tested = kind == FindingKind.SYMPTOM ? FindingKind.SENSATION : kind;
            return graph.find(tested, name)
                    .map(target -> variants.stream()
                            .mapToDouble(variant -> lost(kind, target, variant))
                            .toArray())
                    .orElse(new double[0]);
        });
    }

    private double lost(FindingKind kind, Graph.Target target, Variant variant) {
        double factor = switch (kind) {
            case STRENGTH -> variant.motor();
            case SENSATION -> variant.sensory();
            default -> 1;
        };
        Map<String, Double> hit = kind == FindingKind.SYMPTOM ? irritated(variant) : variant.hit();
        double nerve = graph.lostShare(target, hit);
        double pain = kind == FindingKind.STRENGTH ? hit.getOrDefault("@" + target.name(), 0.0) : 0;
        return Math.min(1, factor * Math.max(nerve, systemic(kind, target, variant.systemic())) + pain);
    }

    private static double systemic(FindingKind kind, Graph.Target target, Systemic systemic) {
        if (systemic instanceof Systemic.LengthDependent length) {
            double beyond = (target.traits().distal() - length.from()) / (1 - length.from());
            return length.severity() * Math.max(0, beyond);
        }
        if (systemic instanceof Systemic.UpperMotorNeurone lesion && kind != FindingKind.REFLEX) {
            return lesion.severity() * target.traits().upperMotorNeurone();
        }
        return 0;
    }

    /** A nerve that is only irritated tingles where its fibres end. */
    private Map<String, Double> irritated(Variant variant) {
        var hit = new HashMap<>(variant.hit());
        for (String node : sites.get(variant.site()).nodes()) {
            hit.merge(node, irritation, Math::max);
        }
        return hit;
    }
}
