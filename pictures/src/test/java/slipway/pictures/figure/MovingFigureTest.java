package slipway.documents.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

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
    void refusesPicturesBetweenWhichThereIsNothing() {
        assertThatThrownBy(() -> MovingFigure.of(List.of(picture("M0 0l1 1", "M0 0"), picture("M0 0c1 1", "M0 0"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("numbers only");
        assertThatThrownBy(() -> MovingFigure.of(List.of(picture("M0 0", "M0 0"), "<svg></svg>")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("same elements");
    }
}
