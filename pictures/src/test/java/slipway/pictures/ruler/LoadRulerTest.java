package slipway.pictures.ruler;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.pictures.look.Palette;
import slipway.pictures.svg.SvgReader;

public class LoadRulerTest {
    /** Invented numbers. */
    public static LoadScale example() {
        return new LoadScale(
                "% strain",
                Optional.of(new LoadScale.Tolerance(4.1, 4.9, 5.6, 6.4, 7.5)),
                Optional.of(new LoadScale.Aim(3.4, "aim: 60 % of tolerance")),
                List.of(
                        new LoadScale.Test(5.2, "leg raise 48°"),
                        new LoadScale.Test(5.5, "leg raise with foot up 40°"),
                        new LoadScale.Test(6.1, "slump, knee 25° short")),
                List.of(
                        new LoadScale.Bar(0.2, 1.6, 2.2, "Ankle glide, lying"),
                        new LoadScale.Bar(0.9, 2.8, 3.6, "Knee glide, hip at 70°, lying"),
                        new LoadScale.Bar(2.2, 5.1, 6.6, "Slump with knee extension, sitting (not chosen)")));
    }

    @ParameterizedTest
    @ValueSource(ints = {240, 360, 720})
    void isWellFormedAndSaysEverythingInWords(int width) {
        SvgReader picture = SvgReader.of(LoadRuler.svg(example(), Palette.PAPER, width, "ruler"));
        assertThat(picture.pointsOutsideViewBox()).isEmpty();
        assertThat(picture.text("desc"))
                .contains("Tolerance about 5.6 % strain, likely between 4.1 and 7.5")
                .contains("aim: 60 % of tolerance: 3.4")
                .contains("Symptoms began in leg raise 48° at 5.2")
                .contains("Ankle glide, lying: from 0.2 to 1.6, at most about 2.2");
    }

    @Test
    void drawsWithoutAnyKnowledge() {
        var nothing = new LoadScale("%", Optional.empty(), Optional.empty(), List.of(), List.of());
        assertThat(SvgReader.of(LoadRuler.svg(nothing, Palette.DARK, 360, "r")).text("desc"))
                .isEqualTo("The tolerance is not known yet.");
    }

    @Test
    void refusesWhatIsNoLoad() {
        assertThatThrownBy(() -> new LoadScale.Tolerance(1, 2, 3, Double.NaN, 5))
                .hasMessageContaining("must rise");
        assertThatThrownBy(() -> new LoadScale.Bar(3, 2, 4, "x")).hasMessageContaining("were 3.0, 2.0, 4.0");
        assertThatThrownBy(() -> new LoadScale.Test(Double.NaN, "x")).hasMessageContaining("number and a label");
        assertThatThrownBy(() -> LoadRuler.svg(example(), Palette.PAPER, 100, "r"))
                .hasMessageContaining("was 100");
    }
}
