package slipway.pictures.graph;

import java.util.HashSet;
import java.util.List;

/**
 * A graph to draw.
 *
 * @param title what the drawing shows, also its text equivalent
 * @param columns heading of each column, from left to right
 * @param nodes in the order in which they should stand if nothing else decides
 * @param edges from a column further left to one further right
 */
public record LayeredGraph(String title, List<String> columns, List<Node> nodes, List<Edge> edges) {
    /**
     * A node.
     *
     * @param id unique
     * @param label text beside it
     * @param column index of its column
     * @param lit whether it is drawn in the accent
     */
    public record Node(String id, String label, int column, boolean lit) {}

    /**
     * An edge.
     *
     * @param from id of the left node
     * @param to id of the right node
     * @param share width, 0 to 1
     * @param lit whether it is drawn in the accent
     */
    public record Edge(String from, String to, double share, boolean lit) {
        public Edge {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException("share of an edge must be within 0 and 1, was " + share);
            }
        }
    }

    public LayeredGraph {
        columns = List.copyOf(columns);
        nodes = List.copyOf(nodes);
        edges = List.copyOf(edges);
        var ids = new HashSet<String>();
        for (Node node : nodes) {
            if (!ids.add(node.id()) || node.column() < 0 || node.column() >= columns.size()) {
                throw new IllegalArgumentException(
                        "node %s is given twice or stands in no column".formatted(node.id()));
            }
        }
        for (Edge edge : edges) {
            if (!ids.contains(edge.from()) || !ids.contains(edge.to())) {
                throw new IllegalArgumentException(
                        "edge %s to %s joins an unknown node".formatted(edge.from(), edge.to()));
            }
        }
    }
}
