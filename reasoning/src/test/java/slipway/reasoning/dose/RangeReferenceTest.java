package slipway.reasoning.dose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.mechanics.body.Support;
import slipway.reasoning.HipOnlyNerve;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.tolerance.Movement;
import slipway.reasoning.tolerance.NeuralFindings;
import slipway.reasoning.tolerance.NeuralTest;
import slipway.reasoning.tolerance.RemoteChange;
import slipway.reasoning.tolerance.SuspectedSite;
import slipway.reasoning.tolerance.SymptomResponse;

/**
 * Worked by hand on a nerve with 0.1 % of load and 0.2 mm of glide per degree of hip flexion. Onset at 50 deg, read with
 * a standard error of 4 deg: the tolerance is normal with mean 5 % and standard deviation 0.4 %. A raise to h deg stays
 * below the share f in 90 % of the draws if h <= 10 f (5 - 1.2816 x 0.4) = 44.87 f.
 */
class RangeReferenceTest {
    /** Sampling: the tolerance has 4096 equal strata. */
    private static final double STRATUM = 1.5 / 4096;

    private static final double DIGITS = 5e-5;

    /** Largest multiple of 5 below 44.87 f, and P(tolerance < h / (10 f)) by the normal table. */
    @ParameterizedTest
    @CsvSource({"HIGH, 25, 0.0186", "MODERATE, 35, 0.0591", "LOW, 40, 0.0242"})
    void theRangeIsTheOneWorkedOutByHand(Irritability irritability, double endDeg, double above) {
        DosePlan plan = plan(irritability, 90);
        DesignedRange range = plan.exercises().get(0).range();
        Effect effect = range.effect();
        assertThat(range.end().angleDeg(Joint.HIP)).isEqualTo(endDeg);
        assertThat(effect.probabilityAboveLimit()).isCloseTo(above, within(STRATUM + DIGITS));
        assertThat(effect.peakLoadPct().median()).isCloseTo(endDeg * 0.1, within(1e-9));
        assertThat(effect.glideMm().median()).isCloseTo(endDeg * 0.2, within(1e-9));
        assertThat(effect.glideToLoad()).isCloseTo(2.0, within(1e-9));
        assertThat(effect.limitPct()).isCloseTo(StartRule.of(irritability).fraction() * 5, within(0.001));
        assertThat(range.reasons()).extracting("rule").contains("range.limit");
    }

    @Test
    void anExerciseThatEndsEarlierIsGivenWhole() {
        DesignedRange range = plan(Irritability.MODERATE, 22).exercises().get(0).range();
        assertThat(range.end().angleDeg(Joint.HIP)).isEqualTo(20);
        assertThat(range.effect().probabilityAboveLimit()).isLessThan(0.001);
        assertThat(range.reasons()).extracting("rule").contains("range.whole");
    }

    @Test
    void oneRepetitionGoesOutAndBackAtThreeSecondsEachWay() {
        DosedExercise dosed = plan(Irritability.LOW, 90).exercises().get(0);
        var motion = dosed.range().motion(dosed.dose().secondsPerDirection());
        assertThat(motion.seconds()).isEqualTo(6);
        assertThat(motion.at(3)).isEqualTo(dosed.range().end());
        assertThat(motion.at(6)).isEqualTo(motion.at(0));
    }

    private static DosePlan plan(Irritability irritability, double toDeg) {
        var test = new NeuralTest(
                "raise",
                Side.RIGHT,
                Posture.reference(),
                new Movement(Joint.HIP, Limb.OWN, 0, 50),
                SymptomResponse.FAMILIAR_SYMPTOM,
                RemoteChange.CHANGED);
        var neural = new NeuralFindings(
                Side.RIGHT,
                List.of(SuspectedSite.named("deep gluteal space", 1)),
                Posture.reference(),
                List.of(test),
                List.of(),
                false,
                List.of());
        var raise = new ExerciseCandidate(
                "hip",
                "lying",
                Support.LYING,
                Posture.reference(),
                List.of(new Movement(Joint.HIP, Limb.OWN, 0, toDeg)),
                Purpose.SLIDE);
        return Cases.plan(new HipOnlyNerve(), neural, irritability, DoseFindings.none(), List.of(raise));
    }
}
