package slipway.reasoning.course;

import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import slipway.reasoning.measures.Measure;

/**
 * What a score will probably be on a later day if things go on as they do: Student's t around the robust line. The spread
 * mixes the published error of the measure, worth a few observations, with the scatter of this person's scores (scaled
 * inverse chi-square prior; Gelman, Bayesian Data Analysis, ch. 14), and grows with the distance from what was seen.
 *
 * @param centre the line on that day
 * @param spread scale of the distribution, points
 * @param freedom degrees of freedom
 */
record Prediction(double centre, double spread, double freedom) {
    /** Of a trend at a week; empty if nothing tells how the scores scatter. */
    static java.util.Optional<Prediction> at(Trend trend, Measure measure, double week) {
        OptionalDouble error = errorOf(measure);
        Trend.Scatter scatter = trend.scatter();
        double weight = error.isPresent() ? CourseData.value("error-weight") : 0;
        double freedom = weight + scatter.n() - 2;
        double square = (weight * error.orElse(0) * error.orElse(0) + scatter.squares()) / freedom;
        if (!(freedom > 0) || !(square > 0)) {
            return java.util.Optional.empty();
        }
        double away = week - scatter.meanWeek();
        double grown = 1 + 1.0 / scatter.n() + away * away / scatter.weekSquares();
        return java.util.Optional.of(new Prediction(trend.at(week), Math.sqrt(square * grown), freedom));
    }

    /** Standard error of measurement, points: MDC / (z x sqrt 2). */
    static OptionalDouble errorOf(Measure measure) {
        double z = new NormalDistribution().inverseCumulativeProbability(0.5 + 0.5 * CourseData.value("mdc-level"));
        return measure.thresholds()
                .mdc()
                .map(mdc -> OptionalDouble.of(mdc.value() / (z * Math.sqrt(2))))
                .orElse(OptionalDouble.empty());
    }

    /** Chance of a score at least as good as a target. */
    double chance(Measure measure, double target) {
        double gap = measure.range().better().gain(target, centre) / spread;
        return new TDistribution(freedom).cumulativeProbability(gap);
    }
}
