package slipway.reasoning.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lines against NIST's Norris data and SciPy 1.17.1 ({@code scipy.stats.theilslopes}, method {@code joint}); the
 * distribution of Kendall's statistic against {@code scipy.stats.kendalltau(method="exact")}.
 */
class TrendReferenceTest {
    private static final double ROUNDING = 1e-10;

    /** NIST StRD "Norris", y then x, in the order of the file. */
    private static final double[] NORRIS = {
        0.1, 0.2, 338.8, 337.4, 118.1, 118.2, 888.0, 884.6, 9.2, 10.1, 228.1, 226.5, 668.5, 666.3, 998.5, 996.3, 449.1,
        448.6, 778.9, 777.0, 559.2, 558.2, 0.3, 0.4, 0.1, 0.6, 778.1, 775.5, 668.8, 666.9, 339.3, 338.0, 448.9, 447.5,
        10.8, 11.6, 557.7, 556.0, 228.3, 228.1, 998.0, 995.8, 888.8, 887.6, 119.6, 120.2, 0.3, 0.3, 0.6, 0.3, 557.6,
        556.8, 339.3, 339.1, 888.0, 887.2, 998.5, 999.0, 778.9, 779.0, 10.2, 11.1, 117.6, 118.3, 228.9, 229.2, 668.4,
        669.1, 449.2, 448.9, 0.2, 0.5
    };

    @Test
    void norrisLineIsScipysAndHoldsTheCertifiedSlope() {
        double[] x = new double[NORRIS.length / 2];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            y[i] = NORRIS[2 * i];
            x[i] = NORRIS[2 * i + 1];
        }
        Trend trend = Trend.of(x, y, 0.9);
        assertThat(trend.slope()).isCloseTo(1.0021968365553604, within(ROUNDING));
        assertThat(trend.start()).isCloseTo(-0.3010984182776848, within(ROUNDING));
        // NIST's certified least-squares slope is 1.00211681802045
        assertThat(1.00211681802045).isBetween(trend.low(), trend.high());
        assertThat(trend.coverage()).isBetween(0.9, 0.91);
    }

    @Test
    void fewScoresWithUnevenGapsGiveScipysLine() {
        double[] days = {0, 7, 14, 21, 35, 49};
        double[] scores = {14, 13, 11, 12, 8, 6};
        Trend trend = Trend.of(days, scores, 0.9);
        assertThat(trend.slope()).isCloseTo(-0.16326530612244897, within(ROUNDING));
        assertThat(trend.start()).isCloseTo(14.0, within(ROUNDING));
        // n = 6: leaving out two at each end covers 1 - 2 x 0.027778
        assertThat(trend.coverage()).isCloseTo(1 - 2 * 0.027777777777777776, within(ROUNDING));
    }

    @ParameterizedTest(name = "n {0}, {1} inversions")
    @CsvSource({
        "5, 0, 0.016666666666666666",
        "5, 1, 0.08333333333333333",
        "8, 4, 0.014136904761904762",
        "10, 8, 0.009148478835978836",
        "12, 10, 0.0009744810873283095",
        "20, 40, 0.00019531614824281216",
    })
    void inversionsHaveTheExactDistribution(int n, int inversions, double twoSided) {
        assertThat(1 - KendallCounts.coverage(n, inversions)).isCloseTo(twoSided, within(ROUNDING));
    }

    @Test
    void threeScoresSayHowLittleTheyCover() {
        Trend trend = Trend.of(new double[] {0, 1, 2}, new double[] {8, 6, 5}, 0.9);
        assertThat(trend.coverage()).isCloseTo(2.0 / 3, within(ROUNDING));
        assertThat(new double[] {trend.low(), trend.slope(), trend.high()}).containsExactly(-2, -1.5, -1);
    }

    @Test
    void oneBadDayDoesNotTurnTheLine() {
        double[] weeks = {0, 1, 2, 3, 4, 5, 6};
        double[] scores = {12, 11, 10, 24, 8, 7, 6};
        assertThat(Trend.of(weeks, scores, 0.9).slope()).isCloseTo(-1, within(ROUNDING));
    }

    @Test
    void tiesKeepTheIntervalWithinTheSlopes() {
        Trend flat = Trend.of(new double[] {0, 1, 2, 3}, new double[] {5, 5, 5, 5}, 0.9);
        assertThat(new double[] {flat.low(), flat.slope(), flat.high()}).containsOnly(0);
        assertThat(flat.clear()).isFalse();
        Trend sameDay = Trend.of(new double[] {0, 0, 1}, new double[] {4, 6, 8}, 0.9);
        assertThat(new double[] {sameDay.low(), sameDay.slope(), sameDay.high()})
                .containsExactly(2, 3, 4);
        double[] sums = KendallCounts.probabilities(7);
        assertThat(Arrays.stream(sums).sum()).isCloseTo(1, within(ROUNDING));
    }
}
