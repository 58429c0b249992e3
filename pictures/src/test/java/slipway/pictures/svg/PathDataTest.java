package slipway.pictures.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.pictures.space.P2;

class PathDataTest {
    @Test
    void writesWholeRelativeUnitsWithYDown() {
        assertThat(PathData.polygon(List.of(new P2(0, 0), new P2(0.1, 0), new P2(0.1, 0.1))))
                .isEqualTo("M0 0l80 0 0-80z");
    }

    @Test
    void roundingDoesNotAddUp() {
        List<P2> steps = java.util.stream.IntStream.rangeClosed(0, 1000)
                .mapToObj(i -> new P2(i * 0.0006, 0))
                .toList();
        int sum = java.util.Arrays.stream(
                        PathData.polyline(steps).replaceAll("^M0 0l", "").split(" "))
                .mapToInt(Integer::parseInt)
                .sum();
        assertThat(sum).isEqualTo(480);
    }

    @Test
    void escapesWhatXmlDoesNotAllow() {
        assertThat(Svg.escaped("a<b>&\"\u0001")).isEqualTo("a&lt;b&gt;&amp;&quot;\uFFFD");
        assertThatThrownBy(() -> new Svg().element("a", "x")).hasMessageContaining("name and value");
    }
}
