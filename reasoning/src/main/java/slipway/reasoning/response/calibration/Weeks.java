package slipway.reasoning.response.calibration;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalLong;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.response.course.Course;
import slipway.reasoning.response.course.DoneSession;
import slipway.reasoning.response.course.Flare;
import slipway.reasoning.response.course.RungChange;

/**
 * The weeks of one person that a prediction can be held against. They do not overlap, and the dose was kept up to the
 * first flare or to their end: a flare brings the dose down, so that weeks kept to the end alone would hide flares.
 *
 * @param weeks those that count
 * @param leftOut weeks that were begun and do not count: the dose changed without a flare, or nobody told how they ended
 */
public record Weeks(List<Week> weeks, int leftOut) {
    private static final long WEEK_MINUTES = 7 * 24 * 60;
    private static final long EDGE_MINUTES =
            (long) (60 * Coefficients.load("response/calibration.csv").value("edge-hours"));

    public Weeks {
        weeks = List.copyOf(weeks);
    }

    /**
     * The weeks of a log.
     *
     * @param forecasts in the order of time
     * @param courses of all exercises of the person
     */
    public static Weeks of(List<Forecast> forecasts, Collection<Course> courses) {
        var weeks = new ArrayList<Week>();
        int leftOut = 0;
        long free = Long.MIN_VALUE;
        for (Forecast forecast : forecasts) {
            long start = forecast.minute();
            if (start < free) {
                continue;
            }
            long end = start + WEEK_MINUTES;
            OptionalLong flare = firstFlare(courses, start, end);
            OptionalLong change = firstChange(courses, start, end);
            boolean kept = change.isEmpty() || (flare.isPresent() && flare.getAsLong() <= change.getAsLong());
            if (kept && (flare.isPresent() || told(courses, end))) {
                weeks.add(new Week(forecast.chance(), flare.isPresent()));
            } else {
                leftOut++;
            }
            free = kept ? end : change.getAsLong();
        }
        return new Weeks(weeks, leftOut);
    }

    private static OptionalLong firstFlare(Collection<Course> courses, long start, long end) {
        return courses.stream()
                .filter(course -> !course.companion())
                .flatMap(course -> course.sessions().stream())
                .map(DoneSession::session)
                .filter(session -> session.startMinute() > start && session.startMinute() <= end)
                .filter(Flare::reported)
                .mapToLong(session -> session.startMinute())
                .min();
    }

    private static OptionalLong firstChange(Collection<Course> courses, long start, long end) {
        return courses.stream()
                .flatMap(course -> course.changes().stream())
                .mapToLong(RungChange::minute)
                .filter(minute -> minute > start && minute < end)
                .min();
    }

    private static boolean told(Collection<Course> courses, long end) {
        return courses.stream()
                .flatMap(course -> course.sessions().stream())
                .anyMatch(done -> done.session().startMinute() >= end - EDGE_MINUTES);
    }
}
