package slipway.web.today;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import slipway.care.record.caseload.TodayRow;
import slipway.care.record.chart.PlanState;

/**
 * Somebody with a plan at home of whom nothing was heard for a while. All of them are one line of the day: safety comes
 * in a list of its own, and nobody is hurried for forgetting.
 *
 * @param days since the last report, or since the plan was given
 */
public record Silent(String episodeId, String name, long days) {
    private static final int LEAST_DAYS = 7;

    /** Whoever was seen within these days needs no reminder, nor does who has an alert: that is looked at anyway. */
    static List<Silent> of(List<TodayRow> rows, Instant now) {
        return rows.stream()
                .filter(row -> row.openAlerts() == 0)
                .filter(row -> row.newestPlan()
                        .filter(plan -> plan.state() == PlanState.RELEASED)
                        .isPresent())
                .filter(row -> row.lastVisitAt().map(at -> days(at, now)).orElse((long) LEAST_DAYS) >= LEAST_DAYS)
                .flatMap(row -> of(row, now).stream())
                .toList();
    }

    private static Optional<Silent> of(TodayRow row, Instant now) {
        Instant last = row.lastCheckIn()
                .map(TodayRow.LastCheckIn::receivedAt)
                .orElseGet(() -> row.newestPlan().orElseThrow().stateAt());
        long days = days(last, now);
        return days >= LEAST_DAYS ? Optional.of(new Silent(row.episodeId(), row.name(), days)) : Optional.empty();
    }

    private static long days(Instant from, Instant to) {
        return Duration.between(from, to).toDays();
    }
}
