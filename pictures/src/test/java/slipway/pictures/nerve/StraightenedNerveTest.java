package slipway.pictures.nerve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.pictures.look.Palette;
import slipway.pictures.svg.SvgReader;

public class StraightenedNerveTest {
    /** Invented numbers, shaped like a raised leg. */
    public static NerveStrip example() {
        var samples = new ArrayList<NerveStrip.Sample>();
        for (int i = 0; i <= 120; i++) {
            double t = i / 120.0;
            double strain = 6.5 * Math.exp(-Math.pow((t - 0.52) / 0.13, 2))
                    + 1.4 * Math.exp(-Math.pow((t - 0.95) / 0.05, 2))
                    - 0.3;
            double glide =
                    6 * Math.exp(-Math.pow((t - 0.40) / 0.10, 2)) - 4.5 * Math.exp(-Math.pow((t - 0.68) / 0.10, 2));
            samples.add(new NerveStrip.Sample(t, strain, glide, true));
        }
        return new NerveStrip(
                samples,
                List.of(
                        new NerveStrip.Landmark(0, "brainstem"),
                        new NerveStrip.Landmark(0.36, "conus"),
                        new NerveStrip.Landmark(0.44, "root"),
                        new NerveStrip.Landmark(0.51, "buttock"),
                        new NerveStrip.Landmark(0.54, "hip"),
                        new NerveStrip.Landmark(0.72, "knee"),
                        new NerveStrip.Landmark(0.74, "fibular neck"),
                        new NerveStrip.Landmark(0.92, "ankle"),
                        new NerveStrip.Landmark(1, "toes")),
                List.of(
                        new NerveStrip.SuspectedSite(0.51, 0.62, "deep gluteal space"),
                        new NerveStrip.SuspectedSite(0.44, 0.25, "root S1")));
    }

    @ParameterizedTest
    @ValueSource(ints = {280, 360, 720})
    void isWellFormedAndSaysEverythingInWords(int width) {
        SvgReader picture = SvgReader.of(StraightenedNerve.svg(example(), Palette.PAPER, width, "nerve"));
        assertThat(picture.text("desc"))
                .contains("Largest strain 6.2 % at 52 % of the way")
                .contains("At knee: strain")
                .contains("Suspected: deep gluteal space, 62 %.");
    }

    @Test
    void aNerveThatDoesNotMoveDraws() {
        var still = new NerveStrip(
                List.of(new NerveStrip.Sample(0, 0, 0, true), new NerveStrip.Sample(1, 0, 0, true)),
                List.of(),
                List.of());
        assertThat(SvgReader.of(StraightenedNerve.svg(still, Palette.DARK, 360, "n"))
                        .text("title"))
                .isNotBlank();
    }

    /** A false direction is worse than none. */
    @Test
    void drawsNoArrowWhereTheWayIsNotKnown() {
        var unsure = new NerveStrip(
                List.of(new NerveStrip.Sample(0, 0, 3, true), new NerveStrip.Sample(1, 1, -4, false)),
                List.of(new NerveStrip.Landmark(1, "hip")),
                List.of());
        String picture = StraightenedNerve.svg(unsure, Palette.PAPER, 720, "n");
        assertThat(picture).contains("which way is not known").contains(">?<");
        assertThat(SvgReader.of(picture).text("desc")).contains("At hip: strain 1.0 %, glide not known.");
        assertThat(StraightenedNerve.svg(example(), Palette.PAPER, 720, "n")).doesNotContain(">?<");
    }

    @Test
    void refusesWhatIsNoNerve() {
        assertThatThrownBy(() -> new NerveStrip(List.of(), List.of(), List.of()))
                .hasMessageContaining("at least 2");
        assertThatThrownBy(() -> new NerveStrip.Sample(0.5, Double.NaN, 0, true))
                .hasMessageContaining("NaN");
        assertThatThrownBy(() -> new NerveStrip.Sample(1.5, 0, 0, true)).hasMessageContaining("within 0 and 1");
        assertThatThrownBy(() -> new NerveStrip(
                        List.of(new NerveStrip.Sample(0.5, 0, 0, true), new NerveStrip.Sample(0.5, 0, 0, true)),
                        List.of(),
                        List.of()))
                .hasMessageContaining("sample 2");
    }
}
