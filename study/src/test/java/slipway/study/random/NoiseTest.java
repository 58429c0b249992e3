package slipway.study.random;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NoiseTest {
    private static final int MANY = 40_000;
    /** Sampling: four standard errors of a mean of numbers with standard deviation 1. */
    private static final double SAMPLING = 4 / Math.sqrt(MANY);

    @Test
    void isTheSameWhateverWasAskedBefore() {
        var one = Noise.of(7, "usual", 12);
        var other = Noise.of(7, "usual", 12);
        one.normal(1, 2, 3);
        assertThat(one.uniform(5, 6, 7)).isEqualTo(other.uniform(5, 6, 7));
        assertThat(Noise.of(8, "usual", 12).uniform(5, 6, 7)).isNotEqualTo(other.uniform(5, 6, 7));
        assertThat(Noise.of(7, "healing", 12).uniform(5, 6, 7)).isNotEqualTo(other.uniform(5, 6, 7));
        assertThat(Noise.of(7, "usual", 13).uniform(5, 6, 7)).isNotEqualTo(other.uniform(5, 6, 7));
    }

    @Test
    void normalAndLaplaceHaveMeanNoughtAndSpreadOne() {
        double[] sums = new double[6];
        for (int i = 0; i < MANY; i++) {
            Noise noise = Noise.of(1, "usual", i);
            double z = noise.normal(3, 4, 0);
            double heavy = noise.laplace(4, 4, 0);
            sums[0] += z;
            sums[1] += z * z;
            sums[2] += heavy;
            sums[3] += heavy * heavy;
            sums[4] += noise.exponential(5, 4, 0);
            // Neighbours in day and person are not correlated.
            sums[5] += z * noise.normal(3, 5, 0);
        }
        assertThat(sums[0] / MANY).isEqualTo(0, within(SAMPLING));
        // Variances of squares: 2 for the normal, 5 for the Laplace distribution (kurtosis 6).
        assertThat(sums[1] / MANY).isEqualTo(1, within(Math.sqrt(2) * SAMPLING));
        assertThat(sums[2] / MANY).isEqualTo(0, within(SAMPLING));
        assertThat(sums[3] / MANY).isEqualTo(1, within(Math.sqrt(5) * SAMPLING));
        assertThat(sums[4] / MANY).isEqualTo(1, within(SAMPLING));
        assertThat(sums[5] / MANY).isEqualTo(0, within(SAMPLING));
    }
}
