package slipway.app.nerve;

import org.hipparchus.stat.descriptive.rank.Percentile;

/** Median of the draws and the interval that holds 90 % of them. */
record Interval(double median, double low, double high) {
    static Interval of(double[] draws) {
        var percentile = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
        percentile.setData(draws);
        return new Interval(percentile.evaluate(50), percentile.evaluate(5), percentile.evaluate(95));
    }

    /** As text with a unit: {@code 3.1 (1.2 to 5.0)}. */
    String text(int decimals) {
        return MarkdownTable.number(median, decimals) + " (" + MarkdownTable.number(low, decimals) + " to "
                + MarkdownTable.number(high, decimals) + ")";
    }
}
