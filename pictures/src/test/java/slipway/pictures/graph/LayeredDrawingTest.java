package slipway.pictures.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.pictures.graph.LayeredGraph.Edge;
import slipway.pictures.graph.LayeredGraph.Node;

class LayeredDrawingTest {
    @Test
    void drawsEveryNodeAndEdgeAndSaysItsTitle() {
        var graph = new LayeredGraph(
                "Path of <foot>",
                List.of("roots", "supplies"),
                List.of(new Node("a", "L5 & S1", 0, true), new Node("b", "foot", 1, false)),
                List.of(new Edge("a", "b", 0.5, true)));
        String svg = LayeredDrawing.svg(graph);
        assertThat(svg).contains("<title>Path of &lt;foot&gt;</title>", "L5 &amp; S1", ">foot<");
        assertThat(svg.split("<circle")).hasSize(3);
        assertThat(svg.split("<path")).hasSize(2);
    }

    @Test
    void refusesEdgesToNowhereAndNodesGivenTwice() {
        List<Node> nodes = List.of(new Node("a", "a", 0, false));
        assertThatThrownBy(() -> new LayeredGraph("t", List.of("c"), nodes, List.of(new Edge("a", "z", 1, false))))
                .hasMessageContaining("unknown node");
        assertThatThrownBy(() -> new LayeredGraph("t", List.of("c"), List.of(nodes.get(0), nodes.get(0)), List.of()))
                .hasMessageContaining("twice");
        assertThatThrownBy(() -> new Edge("a", "b", Double.NaN, false)).hasMessageContaining("within 0 and 1");
    }
}
