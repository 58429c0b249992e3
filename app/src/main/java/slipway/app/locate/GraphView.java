package slipway.app.locate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slipway.pictures.graph.LayeredGraph;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Term;
import slipway.reasoning.locate.Graph;

/** The anatomical graph, or the path of one finding through it, ready to be drawn. */
final class GraphView {
    private final Graph graph;

    GraphView(Graph graph) {
        this.graph = graph;
    }

    /** The path of everything that a word stands for, with the shares of its fibres. */
    LayeredGraph pathOf(FindingKind kind, Term term) {
        List<Graph.Target> targets = term.members().keySet().stream()
                .flatMap(name -> graph.find(kind, name).stream())
                .toList();
        if (targets.isEmpty()) {
            throw new IllegalArgumentException(
                    "%s %s has no path in the graph of this limb".formatted(kind.key(), term.key()));
        }
        String title = "Path of %s: %s".formatted(kind.key(), term.key().replace('_', ' '));
        return drawn(title, targets, true);
    }

    /** All nodes, with the targets of one kind. */
    LayeredGraph whole(FindingKind kind) {
        List<Graph.Target> targets = graph.listTargets().stream()
                .filter(target -> target.kind() == kind && !target.name().endsWith("_dermatome"))
                .toList();
        return drawn("Roots, nerves and " + kind.key(), targets, false);
    }

    private LayeredGraph drawn(String title, List<Graph.Target> targets, boolean lit) {
        Set<String> names = new LinkedHashSet<>();
        targets.forEach(target -> target.nerves().keySet().forEach(nerve -> names.addAll(graph.listPath(nerve))));
        int depth = names.stream().mapToInt(this::depth).max().orElse(1);
        var nodes = new ArrayList<LayeredGraph.Node>();
        var edges = new ArrayList<LayeredGraph.Edge>();
        for (Graph.Node node : graph.listNodes()) {
            if (names.contains(node.name())) {
                nodes.add(new LayeredGraph.Node(node.name(), node.label(), depth(node.name()), lit));
                node.parent().ifPresent(parent -> edges.add(new LayeredGraph.Edge(parent, node.name(), 0.3, lit)));
            }
        }
        Set<String> roots = new LinkedHashSet<>();
        for (Graph.Target target : targets) {
            String id = target.kind().key() + " " + target.name();
            nodes.add(new LayeredGraph.Node(id, target.name().replace('_', ' '), depth + 1, lit));
            target.nerves().forEach((nerve, share) -> edges.add(new LayeredGraph.Edge(nerve, id, share, lit)));
            roots.addAll(target.roots().keySet());
            for (Map.Entry<String, Double> root : target.roots().entrySet()) {
                addRoot(edges, target, root.getKey(), root.getValue(), lit);
            }
        }
        roots.stream().sorted().forEach(root -> nodes.add(new LayeredGraph.Node(root, root + " root", 0, lit)));
        return new LayeredGraph(title, columns(depth), nodes, edges);
    }

    /** An edge from a root to where its fibres enter the drawing, once, as wide as the largest share. */
    private void addRoot(List<LayeredGraph.Edge> edges, Graph.Target target, String root, double share, boolean lit) {
        for (String nerve : target.nerves().keySet()) {
            List<String> path = graph.listPath(nerve);
            String first = path.get(path.size() - 1);
            boolean wider =
                    edges.removeIf(edge -> edge.from().equals(root) && edge.to().equals(first) && edge.share() < share);
            boolean drawn = edges.stream()
                    .anyMatch(edge -> edge.from().equals(root) && edge.to().equals(first));
            if (wider || !drawn) {
                edges.add(new LayeredGraph.Edge(root, first, share, lit));
            }
        }
    }

    /** Column of a node: its distance from the spine, plexus first. */
    private int depth(String node) {
        return graph.listPath(node).size();
    }

    private static List<String> columns(int depth) {
        var columns = new ArrayList<String>();
        columns.add("roots");
        for (int i = 1; i <= depth; i++) {
            columns.add(i == 1 ? "plexus or own branch" : "nerve, step " + (i - 1));
        }
        columns.add("supplies");
        return columns;
    }
}
