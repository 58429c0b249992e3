package slipway.reasoning.course;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A robust line through scores (Theil 1950, Sen 1968): the slope is the median of the slopes of all pairs, so that one bad
 * day can't turn it. The interval of the slope comes from the exact distribution of Kendall's statistic.
 *
 * @param slope points a week
 * @param start value of the line at week 0: the median of score - slope x week
 * @param low end of the interval of the slope, {@code high} the other
 * @param coverage what the interval covers; less than asked for when the scores are so few that no interval covers that
 * @param scatter mean square of the distances from the line times n
 */
public record Trend(double slope, double start, double low, double high, double coverage, Scatter scatter) {

    /**
     * How the scores lie around the line.
     *
     * @param squares sum of the squared distances from the line
     * @param meanWeek mean of the weeks
     * @param weekSquares sum of the squared distances of the weeks from their mean
     */
    record Scatter(int n, double squares, double meanWeek, double weekSquares) {}

    public Trend {
        if (!(low <= slope && slope <= high) || !Double.isFinite(low + high + start)) {
            throw new IllegalArgumentException(
                    "a slope must lie within its interval, was %s in %s..%s".formatted(slope, low, high));
        }
    }

    /**
     * The trend of some scores.
     *
     * @param weeks at least two different ones
     * @param coverage wanted of the interval, below 1
     */
    public static Trend of(double[] weeks, double[] scores, double coverage) {
        double[] slopes = slopes(weeks, scores);
        int wanted = KendallCounts.leaveOut(weeks.length, coverage);
        // Fewer slopes than pairs: scores on one day have none. Then the middle of what is there is kept.
        int leftOut = Math.min(Math.max(0, wanted), (slopes.length - 1) / 2);
        double slope = Medians.of(slopes);
        double start = Medians.of(IntStream.range(0, weeks.length)
                .mapToDouble(i -> scores[i] - slope * weeks[i])
                .toArray());
        return new Trend(
                slope,
                start,
                slopes[leftOut],
                slopes[slopes.length - 1 - leftOut],
                KendallCounts.coverage(weeks.length, leftOut),
                scatter(weeks, scores, slope, start));
    }

    private static double[] slopes(double[] weeks, double[] scores) {
        int n = weeks.length;
        double[] slopes = IntStream.range(0, n)
                .boxed()
                .flatMapToDouble(i -> IntStream.range(i + 1, n)
                        .filter(j -> weeks[i] != weeks[j])
                        .mapToDouble(j -> (scores[j] - scores[i]) / (weeks[j] - weeks[i])))
                .toArray();
        if (slopes.length == 0) {
            throw new IllegalArgumentException("a trend needs scores of at least two different days, had " + n);
        }
        Arrays.sort(slopes);
        return slopes;
    }

    private static Scatter scatter(double[] weeks, double[] scores, double slope, double start) {
        double mean = Arrays.stream(weeks).average().orElse(0);
        double weekSquares =
                Arrays.stream(weeks).map(w -> (w - mean) * (w - mean)).sum();
        double squares = IntStream.range(0, weeks.length)
                .mapToDouble(i -> scores[i] - start - slope * weeks[i])
                .map(distance -> distance * distance)
                .sum();
        return new Scatter(weeks.length, squares, mean, weekSquares);
    }

    /** The line at a week. */
    public double at(double week) {
        return start + slope * week;
    }

    /** Whether the interval of the slope is on one side of 0. */
    public boolean clear() {
        return low > 0 || high < 0;
    }
}
