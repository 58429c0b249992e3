package slipway.mechanics.calibration.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.NerveModel;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;

class LoadFactsTest {
    /** A nerve whose loads can be told in the head: 1 % a degree of the hip, 0.2 % a degree of the ankle, bent knee -0.4 %. */
    private record StraightNerve() implements NerveModel {
        @Override
        public int draws() {
            return 1;
        }

        @Override
        public PostureResponse respond(Posture posture) {
            double hip = posture.angleDeg(Joint.HIP);
            double ankle = posture.angleDeg(Joint.ANKLE);
            double knee = posture.angleDeg(Joint.KNEE);
            return new Answer(0.01 * hip - 0.004 * knee, 0.01 * hip + 0.002 * ankle - 0.006 * knee);
        }
    }

    private record Answer(double strain, double mean) implements PostureResponse {
        @Override
        public double[] strainAt(Site site) {
            return new double[] {strain};
        }

        @Override
        public double[] glideMmAt(Site site) {
            return new double[] {0};
        }

        @Override
        public double[] meanPositiveStrain(Tract tract) {
            return new double[] {mean};
        }
    }

    @Test
    void raiseWithTheSameLoadIsFoundBetweenTheSteps() {
        var facts = new LoadFacts(new StraightNerve());
        assertThat(facts.raiseShiftDeg(0)[0]).isCloseTo(0, within(1e-9));
        assertThat(facts.raiseShiftDeg(1)[0]).isCloseTo(-6, within(1e-9));
        assertThat(facts.raiseShiftDeg(0.5)[0]).isCloseTo(-3, within(1e-9));
        assertThat(facts.sittingAsRaiseDeg(0)[0]).isCloseTo(90 - 0.4 * 90, within(1e-9));
        assertThat(facts.sittingAsRaiseDeg(1)[0]).isCloseTo(90 - 0.6 * 90, within(1e-9));
    }

    @Test
    void shareOfTheMeanStrainIsWithinZeroAndOne() {
        var facts = new LoadFacts(new StraightNerve());
        assertThatThrownBy(() -> facts.raiseShiftDeg(Double.NaN)).hasMessageContaining("was NaN");
        assertThatThrownBy(() -> facts.raiseShiftDeg(1.1)).hasMessageContaining("within 0 and 1");
    }
}
