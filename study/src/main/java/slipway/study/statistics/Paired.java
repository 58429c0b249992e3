package slipway.study.statistics;

import java.math.BigInteger;

/**
 * Two measurements on the same people, as sums: x of the one looked at, y of the comparator.
 *
 * <p>Intervals are normal ones from the paired variance, the ratio's by the delta method on its logarithm. With some
 * hundred people and more the sums are near normal; a share of 0 or 1 has an interval of no width, which is said beside it.
 *
 * @param n people, at least 2
 */
public record Paired(long n, long sumX, long sumY, long squaresX, long squaresY, long products) {
    public Paired {
        if (n < 2) {
            throw new IllegalArgumentException("a spread needs 2 people or more, was " + n);
        }
    }

    private double meanX() {
        return (double) sumX / n;
    }

    private double meanY() {
        return (double) sumY / n;
    }

    private double varianceX() {
        return covariance(squaresX, sumX, sumX);
    }

    private double varianceY() {
        return covariance(squaresY, sumY, sumY);
    }

    /** Unbiased. In whole numbers up to the last division: large values that differ little would cancel otherwise. */
    private double covariance(long sumOfProducts, long sumA, long sumB) {
        BigInteger spread = BigInteger.valueOf(n)
                .multiply(BigInteger.valueOf(sumOfProducts))
                .subtract(BigInteger.valueOf(sumA).multiply(BigInteger.valueOf(sumB)));
        return spread.doubleValue() / ((double) n * (n - 1));
    }

    private double varianceOfDifference() {
        return Math.max(0, varianceX() + varianceY() - 2 * covariance(products, sumX, sumY));
    }

    /** Mean of x. */
    public Spread95 mean() {
        return Spread95.of(meanX(), Math.sqrt(Math.max(0, varianceX()) / n));
    }

    /** Mean of x − y. */
    public Spread95 difference() {
        return Spread95.of(meanX() - meanY(), Math.sqrt(varianceOfDifference() / n));
    }

    /** Mean difference over the standard deviation of the differences; 0 if they do not vary. */
    public double effectSize() {
        double sd = Math.sqrt(varianceOfDifference());
        return sd == 0 ? 0 : (meanX() - meanY()) / sd;
    }

    /** Mean of x over mean of y; not a number if either is not above 0. */
    public Spread95 ratio() {
        if (!(sumX > 0 && sumY > 0)) {
            return new Spread95(Double.NaN, Double.NaN, Double.NaN);
        }
        double ratio = meanX() / meanY();
        double relative = varianceX() / (meanX() * meanX())
                + varianceY() / (meanY() * meanY())
                - 2 * covariance(products, sumX, sumY) / (meanX() * meanY());
        // Around 0 and then times the ratio: the interval holds its value whatever the rounding.
        Spread95 log = Spread95.of(0, Math.sqrt(Math.max(0, relative) / n));
        return new Spread95(ratio, ratio * Math.exp(log.low()), ratio * Math.exp(log.high()));
    }
}
