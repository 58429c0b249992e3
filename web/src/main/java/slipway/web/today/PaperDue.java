package slipway.web.today;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import slipway.care.facts.PapersDue;
import slipway.care.record.caseload.PaperTrailRow;
import slipway.care.record.caseload.TodayRow;
import slipway.reasoning.deadlines.Deadline;
import slipway.reasoning.deadlines.PaperWarnings;

/**
 * A paper that is over its time or near it.
 *
 * @param over whether its time is over
 * @param text what is due and why
 */
public record PaperDue(String episodeId, String name, boolean over, String text) {
    /** Those that are over first. */
    static List<PaperDue> of(List<TodayRow> rows, List<PaperTrailRow> trails, Instant now) {
        ZoneId zone = ZoneId.systemDefault();
        LocalDate today = LocalDate.ofInstant(now, zone);
        Map<String, String> names = rows.stream().collect(Collectors.toMap(TodayRow::episodeId, TodayRow::name));
        var due = new ArrayList<PaperDue>();
        for (PaperTrailRow trail : trails) {
            int treated = (int) trail.visits().stream()
                    .map(at -> LocalDate.ofInstant(at, zone))
                    .distinct()
                    .count();
            for (Deadline each : PaperWarnings.of(PapersDue.of(trail, today, zone), treated, today)) {
                due.add(new PaperDue(
                        trail.episodeId(),
                        names.getOrDefault(trail.episodeId(), ""),
                        each.state() == Deadline.State.OVERDUE,
                        each.text()));
            }
        }
        due.sort(Comparator.comparing(PaperDue::over).reversed().thenComparing(PaperDue::name));
        return due;
    }
}
