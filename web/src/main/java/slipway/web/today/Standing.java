package slipway.web.today;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import slipway.care.record.caseload.TodayRow;
import slipway.care.record.follow.Alert;
import slipway.documents.words.Words;
import slipway.web.shell.Times;

/**
 * An alert that nobody has taken.
 *
 * @param what happened
 * @param owner name of whoever has to look
 * @param since when it was raised and how long ago that is
 * @param raised that it was handed on, and when; empty text if not
 */
public record Standing(String episodeId, String name, String what, String owner, String since, String raised) {
    /** Those of the people in a list, and those that are mine whoever they are about; most pressing first. */
    static List<Standing> of(
            List<Alert> open,
            List<TodayRow> shown,
            List<TodayRow> reach,
            String me,
            Map<String, String> names,
            Now now) {
        Map<String, TodayRow> byEpisode =
                reach.stream().collect(Collectors.toMap(TodayRow::episodeId, Function.identity(), (one, other) -> one));
        var listed = shown.stream().map(TodayRow::episodeId).collect(Collectors.toSet());
        return open.stream()
                .filter(alert ->
                        listed.contains(alert.episodeId()) || alert.ownerId().equals(me))
                .filter(alert -> byEpisode.containsKey(alert.episodeId()))
                .map(alert -> of(alert, Objects.requireNonNull(byEpisode.get(alert.episodeId())), names, now))
                .toList();
    }

    /** The time, and the words to say it with. */
    record Now(Instant time, Words words) {}

    private static Standing of(Alert alert, TodayRow row, Map<String, String> names, Now now) {
        Duration stands = Duration.between(alert.raisedAt(), now.time());
        String since = now.words()
                .get(
                        stands.toHours() == 0 ? "alert.since.minutes" : "alert.since.hours",
                        Times.minute(alert.raisedAt()),
                        stands.toHours() == 0 ? stands.toMinutes() : stands.toHours());
        return new Standing(
                row.episodeId(),
                row.name(),
                alert.words(),
                names.getOrDefault(alert.ownerId(), alert.ownerId()),
                since,
                alert.level() == 0 ? "" : now.words().get("alert.raised", Times.minute(alert.levelAt())));
    }
}
