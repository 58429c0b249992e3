package slipway.care.facts;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.care.record.caseload.OutcomeRow;
import slipway.reasoning.caseload.EpisodeFacts;
import slipway.reasoning.course.CourseInput;
import slipway.reasoning.course.CourseReport;
import slipway.reasoning.course.Dated;
import slipway.reasoning.course.Discharge;
import slipway.reasoning.course.Series;
import slipway.reasoning.course.Stall;
import slipway.reasoning.measures.Change;
import slipway.reasoning.measures.Measures;

/** What an episode adds to the figures of a caseload. */
public final class Outcomes {
    private Outcomes() {}

    /** The facts of the rows, in their order, as they stand now; a score that is not understood counts as not taken. */
    public static List<EpisodeFacts> of(List<OutcomeRow> rows, Instant now, ZoneId zone) {
        return rows.stream().map(row -> of(row, now, zone)).toList();
    }

    private static EpisodeFacts of(OutcomeRow row, Instant now, ZoneId zone) {
        Instant end = row.closedAt().orElse(now);
        return new EpisodeFacts(
                row.therapistId(),
                days(row.startedAt(), end),
                row.closedAt().isPresent(),
                reportedDays(row, end),
                row.closedAt().isPresent() ? Optional.empty() : stalled(row, LocalDate.ofInstant(now, zone)),
                changes(row));
    }

    private static int days(Instant from, Instant to) {
        return (int) Math.max(0, Duration.between(from, to).toDays());
    }

    /** Share of the days at home, first and last among them, on which a report came; empty before a plan was given. */
    private static OptionalDouble reportedDays(OutcomeRow row, Instant end) {
        return row.homeSince()
                .map(home -> OptionalDouble.of(Math.min(1, row.reportDays() / (double) daysTouched(home, end))))
                .orElseGet(OptionalDouble::empty);
    }

    /** By the same clock as the days with a report are counted. */
    private static long daysTouched(Instant from, Instant to) {
        return 1
                + Math.max(
                        0,
                        ChronoUnit.DAYS.between(
                                LocalDate.ofInstant(from, ZoneOffset.UTC), LocalDate.ofInstant(to, ZoneOffset.UTC)));
    }

    /** Whether the care stands still; empty while fewer measures than a stall takes have two scores in the last weeks. */
    private static Optional<Boolean> stalled(OutcomeRow row, LocalDate today) {
        List<Series> series = series(row.recent().stream()
                .filter(entry -> !entry.day().isAfter(today))
                .toList());
        CourseReport report = CourseReport.of(
                new CourseInput(
                        series.stream()
                                .flatMap(each -> each.first().stream())
                                .map(Dated::day)
                                .min(LocalDate::compareTo)
                                .orElse(today),
                        series,
                        List.of(),
                        Discharge.Alone.UNKNOWN,
                        Optional.empty()),
                today);
        long judged = report.measures().stream()
                .filter(each -> each.stall() != Stall.Verdict.NOT_KNOWN)
                .count();
        return judged < Stall.measures()
                ? Optional.empty()
                : Optional.of(report.stall().stalled() && !row.goalsReached());
    }

    private static Map<String, Change> changes(OutcomeRow row) {
        var changes = new LinkedHashMap<String, Change>();
        series(row.ends())
                .forEach(each -> each.change()
                        .ifPresent(change -> changes.put(each.measure().id(), change)));
        return changes;
    }

    private static List<Series> series(List<OutcomeRow.Taken> entries) {
        var dated = new LinkedHashMap<String, List<Dated>>();
        for (OutcomeRow.Taken entry : entries) {
            score(entry)
                    .ifPresent(score -> dated.computeIfAbsent(entry.measureId(), none -> new ArrayList<>())
                            .add(new Dated(entry.day(), score)));
        }
        var series = new ArrayList<Series>();
        dated.forEach((id, scores) -> series.add(new Series(Measures.bundled().get(id), scores)));
        return series;
    }

    private static Optional<Double> score(OutcomeRow.Taken entry) {
        try {
            return ScoreBody.read(Measures.bundled().get(entry.measureId()), entry.day(), entry.body())
                    .score();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
