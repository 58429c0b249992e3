package slipway.pictures.validity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.pictures.svg.SvgReader;

class ValidityPlotsTest {
    private static final List<String> PLOTS = List.of(
            AgreementPlot.svg("a <b> & c", List.of(new AgreementPlot.Row("row 1", true, 1.25, -9, 9))),
            FoldPlot.svg("folds", 1.5, List.of(new FoldPlot.Row("row 1", 0.1, 1.25, -1, 9))),
            FormPlot.svg("forms", 0.7, List.of(new FormPlot.Row("row 1", List.of(0.5, 2.0), 1.25, 1.46))),
            RatioPlot.svg("ratios", "caption", 0.9, List.of(new RatioPlot.Row("row 1", 1.25))),
            FactPlot.svg("facts", panel("row 1"), panel("other")));

    private static FactPlot.Panel panel(String name) {
        return new FactPlot.Panel(
                name, 0, 10, 2, 3, List.of(new FactPlot.Point(0, 1.25, 1, 2), new FactPlot.Point(1, 4, 3, 5)));
    }

    @Test
    void everyPlotIsWellFormedAndSaysInWordsWhatItShows() {
        for (String plot : PLOTS) {
            SvgReader svg = SvgReader.of(plot);
            assertThat(svg.rootAttribute("role")).isEqualTo("img");
            assertThat(svg.text("title")).isNotBlank();
            assertThat(svg.text("desc")).contains("row 1");
        }
    }

    @Test
    void nothingIsDrawnBeyondTheAxis() {
        assertThat(PLOTS.get(0)).contains("→ 9").contains("← −9");
        // 736 is the right end of the axis.
        assertThat(PLOTS.get(0)).doesNotContain("x2=\"900");
        assertThat(PLOTS.get(0)).contains("x2=\"736\"");
    }
}
