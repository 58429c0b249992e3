package slipway.mechanics.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PostureTest {
    @Test
    void readsOwnAndOtherLimb() {
        Posture posture = Posture.parse("hip 60 knee 5 other-hip 30 neck 10");
        assertThat(posture.angleDeg(Joint.HIP)).isEqualTo(60);
        assertThat(posture.angleDeg(Joint.HIP, Limb.OTHER)).isEqualTo(30);
        assertThat(posture.angleDeg(Joint.NECK, Limb.OTHER)).isEqualTo(10);
        assertThat(posture.text()).isEqualTo("hip 60 knee 5 neck 10 other-hip 30");
    }

    @Test
    void namesAllMistakesAtOnce() {
        assertThatThrownBy(() -> Posture.parse("hip 200 elbo 3 knee x ankle NaN hip 10 other-neck 3 toes"))
                .hasMessageContaining("hip must be within -40 and 140 deg, was 200")
                .hasMessageContaining("unknown joint \"elbo\"")
                .hasMessageContaining("knee needs an angle in degrees, was \"x\"")
                .hasMessageContaining("ankle must be within -60 and 40 deg, was NaN")
                .hasMessageContaining("hip is given twice")
                .hasMessageContaining("neck has no other side")
                .hasMessageContaining("toes lacks its angle");
    }

    @Test
    void mirroringTwiceGivesTheSamePosture() {
        Posture posture = Posture.parse("hip 60 other-knee 30 spine-side 12 neck 5");
        assertThat(posture.mirrored().mirrored()).isEqualTo(posture);
        assertThat(posture.mirrored().angleDeg(Joint.SPINE_SIDE)).isEqualTo(-12);
        assertThat(Posture.reference().mirrored()).isEqualTo(Posture.reference());
    }

    @Test
    void everyNamedPositionReads() {
        assertThat(Position.all()).containsKeys("lying", "slump", "lying knees bent");
        assertThat(Position.get("sitting").posture().angleDeg(Joint.HIP, Limb.OTHER))
                .isEqualTo(90);
        assertThatThrownBy(() -> Position.get("flying")).hasMessageContaining("known: lying");
    }
}
