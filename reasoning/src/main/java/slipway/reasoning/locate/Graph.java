package slipway.reasoning.locate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipway.reasoning.findings.FindingKind;

/**
 * Roots, plexus, nerves and branches of one limb, and the muscles, skin areas and reflex arcs that they supply. Checked
 * when made: every path ends at the spine without a cycle, the shares of each target sum to 1, and every node leads
 * somewhere.
 */
public final class Graph {
    private static final double SHARE_TOLERANCE = 1e-9;

    private final Map<String, Node> nodes;
    private final Map<String, Target> targets;
    private final Map<String, List<String>> ancestors;

    /**
     * One nerve, or one stretch of it.
     *
     * @param name as in the file
     * @param parent the node that its fibres come from, towards the spine
     * @param division half of the sciatic nerve, if it belongs to one
     * @param label plain name
     * @param mark where it comes from
     */
    public record Node(String name, Optional<String> parent, Optional<String> division, String label, String mark) {}

    /**
     * A muscle, skin area or reflex arc.
     *
     * @param kind strength, sensation or reflex
     * @param name as in the vocabulary
     * @param nerves share of its fibres per node
     * @param roots share of its fibres per root
     * @param traits what systemic lesions do to it
     * @param mark where it comes from
     */
    public record Target(
            FindingKind kind,
            String name,
            Map<String, Double> nerves,
            Map<String, Double> roots,
            Traits traits,
            String mark) {
        public Target {
            nerves = Collections.unmodifiableMap(new LinkedHashMap<>(nerves));
            roots = Collections.unmodifiableMap(new LinkedHashMap<>(roots));
        }

        /** Kind and name together: a muscle and a reflex may share a name. */
        String key() {
            return key(kind, name);
        }

        static String key(FindingKind kind, String name) {
            return kind.key() + " " + name;
        }
    }

    /**
     * How systemic lesions reach a target.
     *
     * @param distal how far out, 0 trunk to 1 foot or hand
     * @param upperMotorNeurone how much a lesion of brain or cord weakens it, 0 to 1
     */
    public record Traits(double distal, double upperMotorNeurone) {
        public Traits {
            if (!(distal >= 0 && distal <= 1) || !(upperMotorNeurone >= 0 && upperMotorNeurone <= 1)) {
                throw new IllegalArgumentException(
                        "traits must be within 0 and 1, were %s and %s".formatted(distal, upperMotorNeurone));
            }
        }
    }

    /**
     * A graph of these nodes and targets.
     *
     * @throws IllegalArgumentException naming everything that is wrong with it
     */
    public Graph(List<Node> nodes, List<Target> targets) {
        var mistakes = new ArrayList<String>();
        this.nodes = byName(nodes, mistakes);
        this.targets = byKey(targets, mistakes);
        this.ancestors = new LinkedHashMap<>();
        for (Node node : nodes) {
            ancestors.put(node.name(), path(node, mistakes));
        }
        targets.forEach(target -> check(target, mistakes));
        checkOrphans(mistakes);
        if (!mistakes.isEmpty()) {
            throw new IllegalArgumentException("anatomical graph: " + String.join("; ", mistakes));
        }
    }

    /** All nodes in the order of the file. */
    public List<Node> listNodes() {
        return List.copyOf(nodes.values());
    }

    /** All targets in the order of the file. */
    public List<Target> listTargets() {
        return List.copyOf(targets.values());
    }

    /** The target of this kind and name. */
    public Optional<Target> find(FindingKind kind, String name) {
        return Optional.ofNullable(targets.get(Target.key(kind, name)));
    }

    /** All roots that supply a target, in order of first mention. */
    public Set<String> listRoots() {
        var roots = new LinkedHashSet<String>();
        targets.values().forEach(target -> roots.addAll(target.roots().keySet()));
        return roots;
    }

    /** Whether a node of this name exists. */
    public boolean hasNode(String name) {
        return nodes.containsKey(name);
    }

    /** The node and all nodes that its fibres pass on the way to the spine, nearest first. */
    public List<String> listPath(String node) {
        List<String> path = ancestors.get(node);
        if (path == null) {
            throw new IllegalArgumentException("the anatomical graph has no node " + node);
        }
        return path;
    }

    /**
     * The share of a target's fibres that a lesion takes.
     *
     * @param hit severity per root or node, 0 to 1; a fibre hit twice loses as much as at the worse place
     */
    public double lostShare(Target target, Map<String, Double> hit) {
        double lost = 0;
        for (Map.Entry<String, Double> nerve : target.nerves().entrySet()) {
            double onPath = 0;
            for (String node : listPath(nerve.getKey())) {
                onPath = Math.max(onPath, hit.getOrDefault(node, 0.0));
            }
            for (Map.Entry<String, Double> root : target.roots().entrySet()) {
                double severity = Math.max(onPath, hit.getOrDefault(root.getKey(), 0.0));
                lost += nerve.getValue() * root.getValue() * severity;
            }
        }
        return Math.min(1, lost);
    }

    private static Map<String, Node> byName(List<Node> nodes, List<String> mistakes) {
        var named = new LinkedHashMap<String, Node>();
        for (Node node : nodes) {
            if (named.put(node.name(), node) != null) {
                mistakes.add("node " + node.name() + " is given twice");
            }
        }
        return named;
    }

    private static Map<String, Target> byKey(List<Target> targets, List<String> mistakes) {
        var named = new LinkedHashMap<String, Target>();
        for (Target target : targets) {
            if (named.put(target.key(), target) != null) {
                mistakes.add("target " + target.key() + " is given twice");
            }
        }
        return named;
    }

    private List<String> path(Node from, List<String> mistakes) {
        var path = new LinkedHashSet<String>();
        Optional<Node> at = Optional.of(from);
        while (at.isPresent()) {
            Node node = at.get();
            if (!path.add(node.name())) {
                mistakes.add("the path of " + from.name() + " runs in a circle");
                break;
            }
            String parent = node.parent().orElse("");
            at = Optional.ofNullable(nodes.get(parent));
            if (!parent.isEmpty() && at.isEmpty()) {
                mistakes.add("the parent %s of %s does not exist".formatted(parent, node.name()));
            }
        }
        return List.copyOf(path);
    }

    private void check(Target target, List<String> mistakes) {
        for (String nerve : target.nerves().keySet()) {
            if (!nodes.containsKey(nerve)) {
                mistakes.add("%s: its nerve %s does not exist".formatted(target.key(), nerve));
            }
        }
        checkSum(target.key() + ": shares of nerves", target.nerves(), mistakes);
        checkSum(target.key() + ": shares of roots", target.roots(), mistakes);
    }

    private static void checkSum(String what, Map<String, Double> shares, List<String> mistakes) {
        double sum = shares.values().stream().mapToDouble(Double::doubleValue).sum();
        boolean positive = shares.values().stream().allMatch(share -> share > 0);
        if (!(Math.abs(sum - 1) < SHARE_TOLERANCE) || !positive) {
            mistakes.add("%s must be positive and sum to 1, were %s".formatted(what, shares));
        }
    }

    private void checkOrphans(List<String> mistakes) {
        var used = new LinkedHashSet<String>();
        for (Target target : targets.values()) {
            target.nerves().keySet().stream()
                    .filter(ancestors::containsKey)
                    .forEach(nerve -> used.addAll(ancestors.getOrDefault(nerve, List.of())));
        }
        nodes.keySet().stream()
                .filter(node -> !used.contains(node))
                .forEach(node -> mistakes.add("node " + node + " supplies nothing"));
    }
}
