package slipway.reasoning.course;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * Where an episode stands on a day.
 *
 * @param week of care, 1 is the first
 * @param measures in the order of the input, scores up to the day only
 */
public record CourseReport(
        LocalDate asOf,
        int week,
        List<MeasureCourse> measures,
        List<Outlook> goals,
        Stall stall,
        List<Milestone> milestones,
        Discharge discharge) {
    private static final int DAYS_PER_WEEK = 7;

    public CourseReport {
        measures = List.copyOf(measures);
        goals = List.copyOf(goals);
        milestones = List.copyOf(milestones);
    }

    /** The report of a day, which must not be before the first day of care. */
    public static CourseReport of(CourseInput input, LocalDate asOf) {
        if (asOf.isBefore(input.start())) {
            throw new IllegalArgumentException(
                    "the day of a report must not be before %s, was %s".formatted(input.start(), asOf));
        }
        List<MeasureCourse> measures = input.series().stream()
                .map(series -> MeasureCourse.of(series.upTo(asOf), Stall.of(series, asOf)))
                .toList();
        List<Outlook> goals = input.goals().stream()
                .map(goal -> Outlook.of(goal, find(input, goal.measure().id()), asOf))
                .toList();
        int week = 1 + (int) (ChronoUnit.DAYS.between(input.start(), asOf) / DAYS_PER_WEEK);
        return new CourseReport(
                asOf,
                week,
                measures,
                goals,
                Stall.of(measures, goals),
                Milestones.of(input.start(), asOf, measures),
                Discharge.of(goals, input.alone(), input.relapsePlan()));
    }

    private static Optional<Series> find(CourseInput input, String measureId) {
        return input.series().stream()
                .filter(series -> series.measure().id().equals(measureId))
                .findFirst();
    }
}
