package slipway.reasoning.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.reasoning.HipOnlyNerve;
import slipway.reasoning.basis.Coefficients;

/**
 * Worked by hand on a nerve with 0.1 % of load per degree of hip flexion. A leg raise is read with a standard error of
 * 4 deg, so a load at its onset with 0.4 %.
 */
class ToleranceReferenceTest {
    /** Sampling: 4096 strata, a 5 % quantile of a normal of sd 0.4 lies within one stratum, below 0.002 %. */
    private static final double STRATUM_PCT = 0.002;

    /** The prior of the spread weighs nothing here, but margins of two columns together are random: 5 standard errors. */
    private static final double SAMPLING_PCT = 5 * 0.4 / Math.sqrt(4096);

    @Test
    void oneOnsetGivesTheLoadAtItsAngleAndTheErrorOfItsReading() {
        SiteTolerance tolerance = estimate(raise("a", 50, SymptomResponse.FAMILIAR_SYMPTOM));
        assertThat(tolerance.medianPct()).isCloseTo(5.0, within(STRATUM_PCT));
        // Normal quantiles at 5 and 95 %: 1.6449 standard deviations.
        assertThat(tolerance.lowPct()).isCloseTo(5.0 - 1.6449 * 0.4, within(STRATUM_PCT));
        assertThat(tolerance.highPct()).isCloseTo(5.0 + 1.6449 * 0.4, within(STRATUM_PCT));
    }

    @Test
    void twoOnsetsGiveTheirMeanAndTheErrorOfAMean() {
        SiteTolerance tolerance = estimate(
                raise("a", 50, SymptomResponse.FAMILIAR_SYMPTOM), raise("b", 56, SymptomResponse.FAMILIAR_SYMPTOM));
        assertThat(tolerance.medianPct()).isCloseTo(5.3, within(STRATUM_PCT));
        assertThat(tolerance.lowPct()).isCloseTo(5.3 - 1.6449 * 0.4 / Math.sqrt(2), within(STRATUM_PCT));
    }

    /**
     * An onset at 50 deg and a negative test at 50 deg, both with 0.4 %: tau is the larger of two equal normals, given
     * by the density 2 phi Phi, whose median is 5 + 0.4 Phi^-1(sqrt(0.5)) = 5 + 0.4 x 0.5449.
     */
    @Test
    void aNegativeTestAtTheOnsetLiftsTheMedianAsTheLargerOfTwoNormals() {
        SiteTolerance tolerance =
                estimate(raise("a", 50, SymptomResponse.FAMILIAR_SYMPTOM), raise("b", 50, SymptomResponse.NONE));
        assertThat(tolerance.medianPct()).isCloseTo(5.0 + 0.4 * 0.5449, within(2 * SAMPLING_PCT));
    }

    @Test
    void negativeTestsAloneGiveTheLargestLoadReached() {
        SiteTolerance tolerance = estimate(raise("a", 70, SymptomResponse.STRETCH_ONLY));
        assertThat(tolerance.medianPct()).isCloseTo(7.0, within(STRATUM_PCT));
    }

    @Test
    void aConflictIsDecidedForTheLowerTolerance() {
        ToleranceReport report = report(
                raise("low", 30, SymptomResponse.FAMILIAR_SYMPTOM),
                raise("high", 60, SymptomResponse.FAMILIAR_SYMPTOM));
        assertThat(report.perSite().get(0).medianPct()).isCloseTo(3.0, within(STRATUM_PCT));
        // |3 - 6| / (0.4 sqrt 2) = 5.3 standard errors.
        assertThat(report.reasons())
                .anySatisfy(reason -> assertThat(reason.text())
                        .contains("\"high\" does not fit \"low\" (5.3 standard errors apart)"));
    }

    @Test
    void theErrorsOfReadingAreThePublishedOnes() {
        Coefficients data = ToleranceData.COEFFICIENTS;
        // J Sports Sci Med 2009;8:116, Table 1: 4.0-4.2 deg in women, 2.8-3.0 in men; all goniometer errors 3-5 deg.
        assertThat(data.value("onset-error-hip")).isBetween(2.8, 4.2);
        for (Joint joint : List.of(Joint.HIP, Joint.KNEE, Joint.ANKLE, Joint.NECK, Joint.SPINE)) {
            assertThat(ToleranceData.onsetErrorDeg(joint)).isBetween(3.0, 5.0);
        }
        // Boyd & Villa 2012: 57.1 - 48.5 = 8.6 deg; side difference 5.0 (3.5) deg.
        assertThat(data.value("spread-hip-high") - data.value("spread-hip-low"))
                .isCloseTo(data.value("spread-shift-mean"), within(1e-9));
        assertThat(data.value("side-difference-mean")).isEqualTo(5.0);
        assertThat(data.value("side-difference-sd")).isEqualTo(3.5);
    }

    private static SiteTolerance estimate(NeuralTest... tests) {
        return report(tests).perSite().get(0);
    }

    private static ToleranceReport report(NeuralTest... tests) {
        var findings = new NeuralFindings(
                Side.RIGHT,
                List.of(SuspectedSite.named("deep gluteal space", 1)),
                Posture.reference(),
                List.of(tests),
                List.of(),
                false,
                List.of());
        return ToleranceEstimator.estimate(new HipOnlyNerve(), findings).report();
    }

    private static NeuralTest raise(String id, double onsetDeg, SymptomResponse response) {
        return new NeuralTest(
                id,
                Side.RIGHT,
                Posture.reference(),
                new Movement(Joint.HIP, Limb.OWN, 0, onsetDeg),
                response,
                RemoteChange.NOT_TESTED);
    }
}
