package slipway.pictures.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.pictures.look.Palette;
import slipway.pictures.svg.SvgReader;

class FunnelPictureTest {
    private static final List<FunnelPicture.Limit> LIMITS =
            List.of(new FunnelPicture.Limit(5, 0, 0.1, 0.9, 1), new FunnelPicture.Limit(40, 0.3, 0.4, 0.6, 0.7));

    private static String svg(FunnelPicture.Point... points) {
        return FunnelPicture.svg(new FunnelPicture.Funnel(0.5, LIMITS, List.of(points)), Palette.PAPER, 362, "funnel");
    }

    @Test
    void itSaysInWordsWhatItShows() {
        SvgReader svg =
                SvgReader.of(svg(new FunnelPicture.Point(10, 20, false), new FunnelPicture.Point(36, 40, true)));
        assertThat(svg.rootAttribute("role")).isEqualTo("img");
        assertThat(svg.text("desc")).contains("50 %", "10 of 20 better, within", "36 of 40 better, outside");
    }

    /** 0 to 40 people lie on 48 to 348 px, shares of 0 to 1 on 250 to 30 px. */
    @Test
    void pointsLieWhereTheirCountsSay() {
        assertThat(svg(new FunnelPicture.Point(10, 20, false))).contains("d=\"" + Marks.circle(198, 140, 5) + "\"");
        assertThat(svg(new FunnelPicture.Point(40, 40, true))).contains("d=\"" + Marks.diamond(348, 30, 7) + "\"");
    }

    @Test
    void aTargetAtTheEndIsRefused() {
        assertThatThrownBy(() -> new FunnelPicture.Funnel(1, LIMITS, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
