package slipway.reasoning.course;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slipway.reasoning.measures.Change;
import slipway.reasoning.measures.Measure;

/**
 * The scores of one measure in the order of their days, one for each day.
 *
 * @param scores each a possible score of the measure; visits at which nothing was measured are simply absent
 */
public record Series(Measure measure, List<Dated> scores) {
    private static final double DAYS_PER_WEEK = 7;

    /** Sorts by day; several scores of one day become their median. */
    public Series {
        var byDay = new TreeMap<LocalDate, List<Double>>();
        for (Dated each : scores) {
            byDay.computeIfAbsent(each.day(), none -> new ArrayList<>()).add(measure.total(each.score()));
        }
        scores = byDay.entrySet().stream().map(Series::middle).toList();
    }

    private static Dated middle(Map.Entry<LocalDate, List<Double>> day) {
        double[] values =
                day.getValue().stream().mapToDouble(Double::doubleValue).toArray();
        return new Dated(day.getKey(), Medians.of(values));
    }

    /** The scores up to a day, that day included. */
    public Series upTo(LocalDate day) {
        return new Series(
                measure, scores.stream().filter(s -> !s.day().isAfter(day)).toList());
    }

    /** The scores from a day on, that day included. */
    public Series from(LocalDate day) {
        return new Series(
                measure, scores.stream().filter(s -> !s.day().isBefore(day)).toList());
    }

    /** The first score, if there is one. */
    public Optional<Dated> first() {
        return scores.isEmpty() ? Optional.empty() : Optional.of(scores.get(0));
    }

    /** The latest score, if there is one. */
    public Optional<Dated> last() {
        return scores.isEmpty() ? Optional.empty() : Optional.of(scores.get(scores.size() - 1));
    }

    /** What the change from the first to the latest score is worth; empty with fewer than two. */
    public Optional<Change> change() {
        return scores.size() < 2
                ? Optional.empty()
                : Optional.of(measure.change(
                        scores.get(0).score(), scores.get(scores.size() - 1).score()));
    }

    /** The trend in points a week, or empty with fewer than three scores. */
    public Optional<Trend> trend() {
        if (scores.size() < CourseData.whole("trend-points")) {
            return Optional.empty();
        }
        double[] weeks = scores.stream().mapToDouble(s -> weeks(s.day())).toArray();
        double[] values = scores.stream().mapToDouble(Dated::score).toArray();
        return Optional.of(Trend.of(weeks, values, CourseData.value("trend-coverage")));
    }

    /** Weeks from the first score to a day. */
    double weeks(LocalDate day) {
        return ChronoUnit.DAYS.between(scores.get(0).day(), day) / DAYS_PER_WEEK;
    }
}
