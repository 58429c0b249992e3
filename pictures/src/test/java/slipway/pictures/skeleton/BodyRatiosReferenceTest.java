package slipway.pictures.skeleton;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Support;

/** Drillis R, Contini R, Body Segment Parameters, 1966, as tabled by Winter, fractions of stature. */
class BodyRatiosReferenceTest {
    /** The table prints three digits. */
    private static final double PRINTED_DIGITS = 0.0005;
    /** Feet are drawn rounded: the outline may miss the landmark by about 3 mm of a person. */
    private static final double ROUNDED_OUTLINE = 0.002;

    @ParameterizedTest
    @CsvSource({
        "thigh, 0.245",
        "shank, 0.246",
        "foot length, 0.152",
        "hip height, 0.530",
        "knee height, 0.285",
        "ankle height, 0.039",
        "upper arm, 0.186",
        "forearm, 0.146",
        "hand, 0.108"
    })
    void ratiosAreThePublishedOnes(String measure, double published) {
        assertThat(BodyRatios.get(measure)).isEqualTo(published);
        assertThat(BodyRatios.lengthCm(measure, 170)).isCloseTo(170 * published, within(1e-9));
    }

    @Test
    void theStandingBodyHasThePublishedHeights() {
        Body body = Body.of(Support.STANDING, Posture.reference(), Arms.ALONG_SIDES, Ground.FLOOR);
        assertThat(body.bones().own().hip().z()).isCloseTo(0.530, within(PRINTED_DIGITS));
        assertThat(body.bones().own().knee().z()).isCloseTo(0.285, within(PRINTED_DIGITS));
        assertThat(body.bones().own().ankle().z()).isCloseTo(0.039, within(PRINTED_DIGITS));
        assertThat(body.ownArm().shoulder().z()).isCloseTo(0.818, within(PRINTED_DIGITS));
        double top = -Solid.lowest(body.solids(), new slipway.pictures.space.V3(0, 0, -1));
        assertThat(top).as("stature").isCloseTo(1.0, within(ROUNDED_OUTLINE));
    }

    @Test
    void theDrawnFootHasThePublishedLength() {
        Body body = Body.of(Support.STANDING, Posture.reference(), Arms.ALONG_SIDES, Ground.FLOOR);
        var forward = slipway.pictures.space.V3.X;
        double heel = Solid.lowest(Flesh.foot(body.bones().own()), forward);
        double toe = -Solid.lowest(Flesh.foot(body.bones().own()), forward.times(-1));
        assertThat(toe - heel).isCloseTo(0.152, within(ROUNDED_OUTLINE));
    }

    @Test
    void refusesWhatIsNoStatureOrMeasure() {
        assertThatThrownBy(() -> BodyRatios.lengthCm("thigh", Double.NaN)).hasMessageContaining("50 and 250 cm");
        assertThatThrownBy(() -> BodyRatios.get("tail")).hasMessageContaining("known: thigh");
    }
}
