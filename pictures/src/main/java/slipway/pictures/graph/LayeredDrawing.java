package slipway.pictures.graph;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Draws a layered graph as SVG: quiet ink, one accent, lit parts also thicker and bold so that colour is not needed. */
public final class LayeredDrawing {
    private static final double COLUMN = 210;
    private static final double ROW = 24;
    private static final double TOP = 64;
    private static final double LEFT = 24;
    private static final int SWEEPS = 6;
    private static final String INK = "#2b2b2b";
    private static final String PALE = "#b9b4a8";
    private static final String PALE_TEXT = "#6b665c";
    private static final String ACCENT = "#9c3b1b";

    private final LayeredGraph graph;
    private final Map<String, Double> heights = new HashMap<>();

    private LayeredDrawing(LayeredGraph graph) {
        this.graph = graph;
        place();
    }

    /** The drawing as an SVG document. */
    public static String svg(LayeredGraph graph) {
        return new LayeredDrawing(graph).draw();
    }

    /** Orders each column by the mean height of its neighbours, sweeping back and forth a few times. */
    private void place() {
        for (int column = 0; column < graph.columns().size(); column++) {
            spread(column, false);
        }
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            for (int k = 0; k < graph.columns().size(); k++) {
                spread(sweep % 2 == 0 ? graph.columns().size() - 1 - k : k, true);
            }
        }
    }

    private void spread(int column, boolean byNeighbours) {
        var nodes = new ArrayList<>(
                graph.nodes().stream().filter(node -> node.column() == column).toList());
        if (byNeighbours) {
            Map<String, Double> means = new HashMap<>();
            nodes.forEach(node -> means.put(node.id(), meanHeight(node)));
            nodes.sort(Comparator.comparingDouble(node -> means.getOrDefault(node.id(), 0.0)));
        }
        double step = rows() / nodes.size();
        for (int i = 0; i < nodes.size(); i++) {
            heights.put(nodes.get(i).id(), TOP + ROW * step * (i + 0.5));
        }
    }

    private double meanHeight(LayeredGraph.Node node) {
        return graph.edges().stream()
                .filter(edge -> edge.from().equals(node.id()) || edge.to().equals(node.id()))
                .mapToDouble(edge -> height(edge.from().equals(node.id()) ? edge.to() : edge.from()))
                .average()
                .orElse(height(node.id()));
    }

    private double rows() {
        long most = 1;
        for (int column = 0; column < graph.columns().size(); column++) {
            int at = column;
            most = Math.max(
                    most,
                    graph.nodes().stream().filter(node -> node.column() == at).count());
        }
        return most;
    }

    private String draw() {
        double width = LEFT + COLUMN * graph.columns().size();
        double height = TOP + ROW * rows() + 16;
        var svg = new StringBuilder();
        svg.append(text(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" role=\"img\" font-family=\"sans-serif\">%n",
                width, height));
        svg.append("<title>").append(escaped(graph.title())).append("</title>\n");
        svg.append(text("<rect width=\"%.0f\" height=\"%.0f\" fill=\"#fbfaf6\"/>%n", width, height));
        svg.append(text("<text x=\"%.0f\" y=\"24\" font-size=\"15\" fill=\"%s\">", LEFT, INK))
                .append(escaped(graph.title()))
                .append("</text>\n");
        for (int column = 0; column < graph.columns().size(); column++) {
            svg.append(text("<text x=\"%.0f\" y=\"46\" font-size=\"11\" fill=\"%s\">", x(column), PALE_TEXT))
                    .append(escaped(graph.columns().get(column)))
                    .append("</text>\n");
        }
        List<LayeredGraph.Edge> edges = new ArrayList<>(graph.edges());
        edges.sort(Comparator.comparing(LayeredGraph.Edge::lit));
        edges.forEach(edge -> svg.append(line(edge)));
        graph.nodes().forEach(node -> svg.append(dot(node)));
        return svg.append("</svg>\n").toString();
    }

    private String line(LayeredGraph.Edge edge) {
        double x1 = x(column(edge.from()));
        double x2 = x(column(edge.to()));
        double y1 = height(edge.from());
        double y2 = height(edge.to());
        double bend = (x2 - x1) / 2;
        double wide = (edge.lit() ? 1.5 : 0.6) + 4 * edge.share() * (edge.lit() ? 1 : 0.4);
        return text(
                "<path d=\"M%.1f %.1f C%.1f %.1f %.1f %.1f %.1f %.1f\" fill=\"none\" stroke=\"%s\" stroke-width=\"%.1f\"/>%n",
                x1, y1, x1 + bend, y1, x2 - bend, y2, x2, y2, edge.lit() ? ACCENT : PALE, wide);
    }

    private String dot(LayeredGraph.Node node) {
        double x = x(node.column());
        double y = height(node.id());
        String colour = node.lit() ? ACCENT : INK;
        boolean last = node.column() == graph.columns().size() - 1;
        // Names of inner columns stand above and below the line in turn, so that long ones do not run into each other.
        double labelX = last ? x + 9 : x - 4;
        double labelY = y + (last ? 4 : node.column() % 2 == 0 ? -9 : 18);
        return text("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%s\" fill=\"%s\"/>", x, y, node.lit() ? "5" : "3", colour)
                + text(
                        "<text x=\"%.1f\" y=\"%.1f\" font-size=\"12\" fill=\"%s\" stroke=\"#fbfaf6\" stroke-width=\"3\""
                                + " paint-order=\"stroke\"%s>",
                        labelX, labelY, colour, node.lit() ? " font-weight=\"bold\"" : "")
                + escaped(node.label())
                + "</text>\n";
    }

    private int column(String id) {
        return graph.nodes().stream()
                .filter(node -> node.id().equals(id))
                .mapToInt(LayeredGraph.Node::column)
                .findFirst()
                .orElse(0);
    }

    private double height(String id) {
        return heights.getOrDefault(id, TOP);
    }

    private static double x(int column) {
        return LEFT + COLUMN * column;
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format.replace("%n", "\n"), values);
    }
}
