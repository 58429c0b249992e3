package slipway.pictures.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.pictures.svg.SvgReader;

class MovingFigureTest {
    private static String picture(String far, String near) {
        return "<svg viewBox=\"0 0 9 9\"><g fill=\"none\"><path stroke=\"#000\" d=\"%s\"/><path d=\"%s\"/></g><path d=\"%s\"/></svg>"
                .formatted(far, near, near);
    }

    @Test
    void tellsWhatStandsStillOnceAndSharesEqualTracks() {
        var figure = MovingFigure.of(List.of(picture("M0 0l1 1", "M2 2l3 0"), picture("M0 0l1 1", "M2 2l3-1")));
        assertThat(figure.tracks())
                .containsExactly(new MovingFigure.Track(
                        List.of(new MovingFigure.Spot(2, "d"), new MovingFigure.Spot(3, "d")),
                        List.of("M2 2l3 0", "M2 2l3-1")));
    }

    @Test
    void movesThereAndBackByItself() {
        var figure =
                MovingFigure.of(List.of(picture("M0 0", "M2 2"), picture("M0 0", "M2 3"), picture("M0 0", "M2 5")));
        SvgReader moving = SvgReader.of(figure.animated(3));
        assertThat(moving.all("animate")).hasSize(2).allSatisfy(animate -> {
            assertThat(animate.getAttribute("values")).isEqualTo("M2 2;M2 3;M2 5;M2 3;M2 2");
            assertThat(animate.getAttribute("dur")).isEqualTo("6.00s");
        });
        assertThatThrownBy(() -> figure.animated(0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** A curve more, an element more, another colour: nothing lies between, but the movement still goes on. */
    @Test
    void picturesBetweenWhichThereIsNothingFadeIntoEachOther() {
        String first = picture("M0 0l1 1", "M0 0");
        for (String other : List.of(
                picture("M0 0c1 1", "M0 0"),
                first.replace("#000", "#111"),
                first.replace("</g>", "<path d=\"M1 1\"/></g>"))) {
            var figure = MovingFigure.of(List.of(first, other));
            assertThat(figure.tracks())
                    .extracting(MovingFigure.Track::values)
                    .containsExactly(List.of("1", "0"), List.of("0", "1"));
            var elements = SvgReader.of(figure.start()).all("*");
            for (MovingFigure.Track track : figure.tracks()) {
                // The root is not counted.
                var group = elements.get(track.spots().get(0).element() + 1);
                assertThat(group.getTagName()).isEqualTo("g");
                assertThat(group.getAttribute("opacity"))
                        .isEqualTo(track.values().get(0));
            }
            assertThat(SvgReader.of(figure.animated(1)).all("animate")).hasSize(2);
        }
    }
}
