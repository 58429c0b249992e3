package slipway.study.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.stream.LongStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The sums of the study against the certified means and standard deviations of NIST's univariate reference data
 * ({@code nist-strd.csv}). Counted in whole units, as outcomes are; the squares of NumAcc4 in tenths are beyond a long,
 * which the study refuses when it adds. How near two numbers are is the log relative error: the
 * number of digits that agree.
 */
class NistReferenceTest {
    private static final double Z = 1.959963984540054;
    /** What NIST prints. */
    private static final double CERTIFIED_DIGITS = 15;

    @ParameterizedTest
    @ValueSource(strings = {"Lottery", "Lew", "NumAcc1", "NumAcc2", "NumAcc3"})
    void meanAndSpreadHaveTheCertifiedDigits(String dataset) throws IOException {
        CSVRecord certified = certified(dataset);
        double unit = Double.parseDouble(certified.get("unit"));
        double mean = Double.parseDouble(certified.get("mean"));
        double sd = Double.parseDouble(certified.get("sd"));
        long[] values = values(dataset);
        assertThat(values).hasSize(Integer.parseInt(certified.get("n")));
        Paired paired = of(values, 3);
        Spread95 found = paired.mean();
        assertThat(digits(found.value() * unit, mean)).isGreaterThan(CERTIFIED_DIGITS - 1);
        // A constant comparator takes nothing from the spread; the effect is the mean difference in units of it.
        double effect = (mean - 3 * unit) / sd;
        assertThat(digits(paired.effectSize(), effect)).isGreaterThan(CERTIFIED_DIGITS - 1.5);
        double width = (found.high() - found.low()) * unit;
        double expected = 2 * Z * sd / Math.sqrt(values.length);
        // The ends are rounded to the size of the mean, the width to that of the spread.
        double lost = Math.max(0, Math.log10(Math.abs(mean) / expected));
        assertThat(digits(width, expected)).isGreaterThan(CERTIFIED_DIGITS - 1.5 - lost);
    }

    private static double digits(double found, double certified) {
        return found == certified ? 16 : -Math.log10(Math.abs(found - certified) / Math.abs(certified));
    }

    private static Paired of(long[] values, long constant) {
        long sum = LongStream.of(values).sum();
        long n = values.length;
        return new Paired(
                n,
                sum,
                constant * n,
                LongStream.of(values).map(v -> v * v).sum(),
                constant * constant * n,
                constant * sum);
    }

    private static CSVRecord certified(String dataset) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .get();
        try (Reader text = open("nist-strd.csv")) {
            return format.parse(text).stream()
                    .filter(row -> row.get("dataset").equals(dataset))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static long[] values(String dataset) throws IOException {
        return switch (dataset) {
            case "NumAcc1" -> new long[] {10_000_001, 10_000_003, 10_000_002};
            case "NumAcc2" -> numAcc(12);
            case "NumAcc3" -> numAcc(10_000_002);
            default -> file(dataset);
        };
    }

    /** By construction the middle once, and 500 times one unit below and above. */
    private static long[] numAcc(long middle) {
        return LongStream.range(0, 1001)
                .map(i -> i == 0 ? middle : middle + (i % 2 == 1 ? -1 : 1))
                .toArray();
    }

    private static long[] file(String dataset) throws IOException {
        try (Reader text = open(dataset + ".csv")) {
            return CSVFormat.DEFAULT.builder().setCommentMarker('#').get().parse(text).stream()
                    .flatMap(CSVRecord::stream)
                    .mapToLong(Long::parseLong)
                    .toArray();
        }
    }

    private static Reader open(String name) {
        return new InputStreamReader(
                Objects.requireNonNull(NistReferenceTest.class.getResourceAsStream(name)), StandardCharsets.UTF_8);
    }
}
