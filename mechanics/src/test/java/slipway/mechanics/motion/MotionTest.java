package slipway.mechanics.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Posture;

class MotionTest {
    private static final Posture BENT = Posture.parse("knee 90");
    private static final Posture STRAIGHT = Posture.parse("knee 10");
    private static final Motion OUT_HOLD_BACK = new Motion(List.of(
            new Motion.Key(BENT, 0),
            new Motion.Key(STRAIGHT, 4),
            new Motion.Key(STRAIGHT, 6),
            new Motion.Key(BENT, 10)));

    @Test
    void anglesChangeInProportionToTime() {
        assertThat(OUT_HOLD_BACK.at(1).angleDeg(Joint.KNEE)).isEqualTo(70);
        assertThat(OUT_HOLD_BACK.at(5).angleDeg(Joint.KNEE)).isEqualTo(10);
        assertThat(OUT_HOLD_BACK.at(10)).isEqualTo(BENT);
        assertThat(OUT_HOLD_BACK.at(0)).isEqualTo(BENT);
    }

    @Test
    void samplesHoldBothEnds() {
        assertThat(OUT_HOLD_BACK.sampled(6).stream().map(posture -> posture.angleDeg(Joint.KNEE)))
                .containsExactly(90.0, 50.0, 10.0, 10.0, 50.0, 90.0);
        assertThat(Motion.still(BENT).sampled(2)).containsExactly(BENT, BENT);
    }

    @Test
    void refusesTimesThatDoNotRise() {
        assertThatThrownBy(() -> new Motion(List.of())).hasMessageContaining("at least one key posture");
        assertThatThrownBy(() -> new Motion(List.of(new Motion.Key(BENT, 1)))).hasMessageContaining("at 0 s");
        assertThatThrownBy(() -> new Motion(List.of(new Motion.Key(BENT, 0), new Motion.Key(BENT, 0))))
                .hasMessageContaining("key 2 at 0.0 s");
        assertThatThrownBy(() -> new Motion.Key(BENT, Double.NaN)).hasMessageContaining("was NaN s");
        assertThatThrownBy(() -> OUT_HOLD_BACK.at(10.5)).hasMessageContaining("within 0 and 10.0 s, was 10.5 s");
    }
}
