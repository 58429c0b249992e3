package slipway.reasoning.response.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Weighted mean and spread of the particles against the certified values of NIST's Statistical Reference Datasets,
 * univariate (itl.nist.gov/div898/strd): NumAcc1 to NumAcc4, whose data are given by a rule. Stated as digits that agree
 * (log relative error).
 */
class ParticlesNistReferenceTest {
    /**
     * Digits of the mean: a plain sum of a thousand products loses at most three of sixteen.
     * Digits of the spread: a tenth beside ten million has eight digits in a double, beside a million nine.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "NumAcc1, 10000002, 1, 13, 7",
        "NumAcc2, 1.2, 0.1, 13, 13",
        "NumAcc3, 1000000.2, 0.1, 13, 9",
        "NumAcc4, 10000000.2, 0.1, 13, 8"
    })
    void meanAndSpread(String dataset, double mean, double sd, double digitsOfMean, double digitsOfSpread) {
        double[] values = dataset.equals("NumAcc1")
                ? new double[] {10000001, 10000003, 10000002}
                : IntStream.range(0, 1001)
                        .mapToDouble(i -> i == 0 ? mean : mean + (i % 2 == 1 ? -sd : sd))
                        .toArray();
        int n = values.length;
        double[] equal = new double[n];
        Arrays.fill(equal, 1.0 / n);
        var state = new FilterState(0, n, values, new double[n], new double[n], equal);
        Particles particles = Particles.from(FilterModel.bundled(), state, 1);
        assertThat(digits(particles.meanLogTolerance(), mean)).isGreaterThanOrEqualTo(digitsOfMean);
        // Certified with n - 1, the particles are a distribution of their own.
        double unbiased = particles.sdLogTolerance() * Math.sqrt(n / (n - 1.0));
        assertThat(digits(unbiased, sd)).isGreaterThanOrEqualTo(digitsOfSpread);
    }

    private static double digits(double found, double certified) {
        return found == certified ? 16 : -Math.log10(Math.abs(found - certified) / Math.abs(certified));
    }
}
