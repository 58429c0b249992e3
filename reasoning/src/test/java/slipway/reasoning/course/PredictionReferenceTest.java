package slipway.reasoning.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import slipway.reasoning.measures.Measures;

class PredictionReferenceTest {
    private static final double ROUNDING = 1e-9;

    /** SEM from MDC90: LEFS 9 / (1.6449 x 1.4142) = 3.87; Binkley 1999 prints 3.9 for the error and 9 for the change. */
    @Test
    void errorOfLefsIsThePublishedOne() {
        assertThat(Prediction.errorOf(Measures.bundled().get("lefs")).orElseThrow())
                .isCloseTo(3.87, within(0.005));
        assertThat(Prediction.errorOf(Measures.bundled().get("ears"))).isEmpty();
    }

    /**
     * Without a published error the prediction is the textbook one of a regression line: scatter of n - 2 degrees of
     * freedom times 1 + 1/n + (x - mean)^2 / Sxx. Scores on a line of slope 2 but for one that is 1 above it, which does not
     * turn the robust line; figures by hand.
     */
    @Test
    void withoutPublishedErrorItIsTheTextbookInterval() {
        // over
        double[] weeks = {0, 1, 2, 3, 4};
        double[] scores = {4, 6, 9, 10, 12};
        Trend trend = Trend.of(weeks, scores, 0.9);
        assertThat(trend.slope()).isCloseTo(2, within(ROUNDING));
        Prediction prediction =
                Prediction.at(trend, Measures.bundled().get("ears"), 8).orElseThrow();
        // squares 1; 1 / 3 at 3 degrees of freedom; 1 + 1/5 + 36/10 = 4.8
        assertThat(prediction.freedom()).isEqualTo(3);
        assertThat(prediction.centre()).isCloseTo(20, within(ROUNDING));
        assertThat(prediction.spread()).isCloseTo(Math.sqrt(1.0 / 3 * 4.8), within(ROUNDING));
        // Student's t at 3 degrees of freedom: F(0.7) = 0.7328365008476182 (SciPy 1.17.1)
        assertThat(prediction.chance(Measures.bundled().get("ears"), 20 - 0.7 * prediction.spread()))
                .isCloseTo(0.7328365008476182, within(1e-12));
    }

    /**
     * Of people who get better in a straight line and are measured with the published error, the later score lies below
     * each quantile of its prediction as often as the quantile says. 4000 people: 4 standard errors are at most 0.032.
     */
    @Test
    void laterScoresFallWhereThePredictionSays() {
        var random = new Random(20260105);
        var lefs = Measures.bundled().get("lefs");
        double error = Prediction.errorOf(lefs).orElseThrow();
        double[] levels = {0.1, 0.25, 0.5, 0.75, 0.9};
        int people = 4000;
        double[] below = new double[levels.length];
        for (int person = 0; person < people; person++) {
            double rate = 4 * random.nextDouble();
            double[] weeks = {0, 1, 2, 3, 4};
            double[] scores = new double[weeks.length];
            for (int i = 0; i < weeks.length; i++) {
                scores[i] = 40 + rate * weeks[i] + error * random.nextGaussian();
            }
            double later = 40 + rate * 8 + error * random.nextGaussian();
            // P(score at least as good as the later one) = 1 - its place in the prediction
            double place = 1
                    - Prediction.at(Trend.of(weeks, scores, 0.9), lefs, 8)
                            .orElseThrow()
                            .chance(lefs, later);
            for (int i = 0; i < levels.length; i++) {
                below[i] += place < levels[i] ? 1.0 / people : 0;
            }
        }
        for (int i = 0; i < levels.length; i++) {
            assertThat(below[i]).isCloseTo(levels[i], within(4 * Math.sqrt(0.25 / people)));
        }
    }
}
