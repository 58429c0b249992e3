package slipway.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Student 1908, "The probable error of a mean", Biometrika 6:1, sleep gained with two drugs, 10 patients, in tenths of an
 * hour; paired t = 4.0621 (the figure that statistics packages give for these data; from memory).
 */
class PairedReferenceTest {
    private static final long[] FIRST = {7, -16, -2, -12, -1, 34, 37, 8, 0, 20};
    private static final long[] SECOND = {19, 8, 11, 1, -1, 44, 55, 16, 46, 34};
    private static final double T = 4.0621;
    private static final double PRINTED_DIGITS = 5e-4;

    private static Paired of(long[] x, long[] y) {
        long[] sums = new long[5];
        for (int i = 0; i < x.length; i++) {
            sums[0] += x[i];
            sums[1] += y[i];
            sums[2] += x[i] * x[i];
            sums[3] += y[i] * y[i];
            sums[4] += x[i] * y[i];
        }
        return new Paired(x.length, sums[0], sums[1], sums[2], sums[3], sums[4]);
    }

    @Test
    void sleepOfStudent() {
        Spread95 difference = of(SECOND, FIRST).difference();
        double standardError = (difference.high() - difference.value()) / 1.959963984540054;
        assertThat(difference.value()).isEqualTo(15.8, within(1e-12));
        assertThat(difference.value() / standardError).isEqualTo(T, within(PRINTED_DIGITS));
        assertThat(of(SECOND, FIRST).effectSize()).isEqualTo(T / Math.sqrt(10), within(PRINTED_DIGITS));
        assertThat(of(SECOND, FIRST).mean().value()).isEqualTo(23.3, within(1e-12));
    }

    /** The delta method against drawing the people anew 4000 times: another way to the same interval. */
    @Test
    void ratioAgreesWithDrawingPeopleAnew() {
        var random = new java.util.Random(1);
        int n = 400;
        long[] x = new long[n];
        long[] y = new long[n];
        for (int i = 0; i < n; i++) {
            y[i] = (long) (-4 * Math.log(1 - random.nextDouble()));
            x[i] = random.nextInt(3) + y[i] / 2;
        }
        double[] ratios = new double[4000];
        for (int b = 0; b < ratios.length; b++) {
            double sumX = 0;
            double sumY = 0;
            for (int i = 0; i < n; i++) {
                int drawn = random.nextInt(n);
                sumX += x[drawn];
                sumY += y[drawn];
            }
            ratios[b] = sumX / sumY;
        }
        java.util.Arrays.sort(ratios);
        Spread95 ratio = of(x, y).ratio();
        // Sampling of the quantile of 4000 draws and skewness: a tenth of the width of the interval.
        double close = (ratio.high() - ratio.low()) / 10;
        assertThat(ratio.low()).isEqualTo(ratios[100], within(close));
        assertThat(ratio.high()).isEqualTo(ratios[3899], within(close));
    }

    @Test
    void aRatioToNothingIsNoNumber() {
        assertThat(of(new long[] {1, 2}, new long[] {0, 0}).ratio().value()).isNaN();
        assertThat(of(new long[] {3, 3}, new long[] {3, 3}).effectSize()).isZero();
    }

    /** One person in ten against all alike: the ratio does not vary, and its interval holds it in spite of rounding. */
    @Test
    void aRatioWithoutSpreadHoldsItself() {
        for (int x = 1; x < 40; x++) {
            for (int y = 1; y < 40; y++) {
                Spread95 ratio = of(new long[] {x, x}, new long[] {y, y}).ratio();
                assertThat(ratio.high() - ratio.low()).isLessThan(1e-6);
            }
        }
    }
}
