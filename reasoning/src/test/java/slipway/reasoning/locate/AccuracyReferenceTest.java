package slipway.reasoning.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import slipway.reasoning.locate.Accuracy.Counts;

/** Published accuracies recomputed from their counts. Tolerances are half of the last printed digit. */
class AccuracyReferenceTest {
    private static final double PRINTED_2 = 0.005;
    private static final double PRINTED_3 = 0.0005;
    private static final double PRINTED_PERMILLE = 0.0005;

    /** Martin 2014, Knee Surg Sports Traumatol Arthrosc 22:882: active piriformis 18/23, 8/10. */
    @Test
    void activePiriformisTest() {
        var counts = new Counts(18, 23, 8, 10);
        assertThat(counts.sensitivity()).isCloseTo(0.78, within(PRINTED_2));
        assertThat(counts.specificity()).isCloseTo(0.80, within(PRINTED_2));
        assertThat(counts.positiveRatio()).isCloseTo(3.91, within(PRINTED_2));
        assertThat(counts.negativeRatio()).isCloseTo(0.27, within(PRINTED_2));
    }

    /** Martin 2014: either test positive, 21/23 and 8/10. */
    @Test
    void eitherPiriformisTest() {
        var counts = new Counts(21, 23, 8, 10);
        assertThat(counts.positiveRatio()).isCloseTo(4.57, within(PRINTED_2));
        assertThat(counts.negativeRatio()).isCloseTo(0.11, within(PRINTED_2));
    }

    /** Martin 2014: straight leg raise 3/23 and 10/10 with half a person in each cell: 3.208 and 0.895. */
    @Test
    void halfAPersonInEachCell() {
        Counts corrected = new Counts(3, 23, 10, 10).corrected();
        assertThat(corrected.positiveRatio()).isCloseTo(3.208, within(PRINTED_3));
        assertThat(corrected.negativeRatio()).isCloseTo(0.895, within(PRINTED_3));
    }

    /** Homayouni 2018: modified Bragard 79 of 114 and 60 of 89; printed 2.13 and 0.46. */
    @Test
    void modifiedBragard() {
        var counts = new Counts(79, 114, 60, 89);
        assertThat(counts.sensitivity()).isCloseTo(0.693, within(PRINTED_3));
        assertThat(counts.positiveRatio()).isCloseTo(2.13, within(PRINTED_2));
        assertThat(counts.negativeRatio()).isCloseTo(0.46, within(PRINTED_2));
    }

    /** 6.25 % (Singh 2013: 182/2910) with the 4.57 of 21/23 and 8/10 gives 23.3 %, with its 0.11 gives 0.73 %. */
    @Test
    void postTestProbability() {
        assertThat(Accuracy.postTest(0.0625, new Counts(21, 23, 8, 10).positiveRatio()))
                .isCloseTo(0.233, within(PRINTED_PERMILLE));
        assertThat(Accuracy.postTest(0.0625, 0.11)).isCloseTo(0.0073, within(0.00005));
    }

    @Test
    void ratiosAreCapped() {
        Accuracy caseControl = Accuracy.ofCounts(new Counts(36, 44, 100, 100), 5);
        assertThat(caseControl.sensitivity() / caseControl.falsePositive()).isCloseTo(5, within(1e-9));
        Accuracy perfect = Accuracy.ofCounts(new Counts(200, 200, 200, 200), 10);
        assertThat((1 - perfect.sensitivity()) / (1 - perfect.falsePositive())).isCloseTo(0.1, within(1e-9));
    }

    /** Al Nezari 2013: specificity 0.79 per person over about eight muscles is a false alarm of about 0.03 each. */
    @Test
    void falseAlarmPerMuscleFollowsFromTheOnePerPerson() {
        double perMuscle = 1 - Math.pow(0.79, 1.0 / 8);
        assertThat(LocateCoefficients.load().value("strength.falseAlarm.5")).isCloseTo(perMuscle, within(PRINTED_2));
    }
}
