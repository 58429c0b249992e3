package slipway.reasoning.course;

import java.util.Optional;
import slipway.reasoning.measures.Change;
import slipway.reasoning.measures.Measure;
import slipway.reasoning.measures.Numbers;

/**
 * How one measure went.
 *
 * @param change from the first to the latest score; empty with fewer than two
 * @param trend empty with fewer than three
 * @param stall whether it stands still
 */
public record MeasureCourse(Series series, Optional<Change> change, Optional<Trend> trend, Stall.Verdict stall) {
    static MeasureCourse of(Series series, Stall.Verdict stall) {
        return new MeasureCourse(series, series.change(), series.trend(), stall);
    }

    /** The measure. */
    public Measure measure() {
        return series.measure();
    }

    /** In one sentence. */
    public String sentence() {
        String name = measure().name();
        if (series.scores().isEmpty()) {
            return name + " was not measured.";
        }
        Dated first = series.scores().get(0);
        if (change.isEmpty()) {
            return "%s was %s on %s; one score shows no change."
                    .formatted(name, measure().text(first.score()), first.day());
        }
        return "%s went from %s on %s to %s on %s: %s, %s."
                .formatted(
                        name,
                        measure().text(change.get().from()),
                        first.day(),
                        measure().text(change.get().to()),
                        series.scores().get(series.scores().size() - 1).day(),
                        direction(change.get()),
                        words(change.get().kind()));
    }

    /** The trend in one sentence, or why there is none. */
    public String trendSentence() {
        return trend.map(line -> "Trend of %s: %s points a week (%s to %s, covering %s %%)."
                        .formatted(
                                measure().name(),
                                Numbers.text(line.slope()),
                                Numbers.text(line.low()),
                                Numbers.text(line.high()),
                                Numbers.text(Math.floor(100 * line.coverage()))))
                .orElse("%d scores of %s are too few for a trend: it takes %d."
                        .formatted(series.scores().size(), measure().name(), CourseData.whole("trend-points")));
    }

    private static String direction(Change change) {
        if (change.gain() == 0) {
            return "no change";
        }
        return "%s by %s".formatted(change.gain() > 0 ? "better" : "worse", Numbers.text(Math.abs(change.gain())));
    }

    private static String words(Change.Kind kind) {
        return switch (kind) {
            case WITHIN_ERROR -> "within the error of the measure";
            case REAL -> "more than the error of the measure";
            case IMPORTANT -> "an important change";
            case NOT_KNOWN -> "with no published error to hold it against";
        };
    }
}
