package slipway.web.patient;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.care.record.chart.Chart;
import slipway.care.record.follow.CheckIn;
import slipway.web.episode.home.HomeCourse;
import tools.jackson.databind.node.ObjectNode;

/**
 * The question of the morning after: which session it is about, and what was told of it. The report of a morning
 * carries the session along, so that it stands alone and may arrive before it.
 *
 * @param day of the session by the person's calendar, {@code 2026-01-05}; asked from the next day on
 * @param fields hidden fields of its form
 */
public record Morning(String day, Map<String, String> fields) {
    private static final Map<String, String> FIELDS = Map.of(
            "before", "before",
            "worst", "worst",
            "kind", "kind",
            "usual_pain", "usualPain",
            "reach", "reach",
            "settle_minutes", "settle",
            "flare_exercise", "flare");

    public Morning {
        fields = Map.copyOf(fields);
    }

    /** For the newest session with an exercise; empty if its morning was told, or if there is none on this plan. */
    static Optional<Morning> of(Chart chart, HomeCourse.Home home) {
        List<CheckIn> all = chart.checkIns().list();
        var told = new HashSet<String>();
        for (int i = all.size() - 1; i >= 0; i--) {
            CheckIn each = all.get(i);
            ObjectNode body = each.body();
            if (body.has("next_morning")) {
                told.add(each.sessionId());
            } else if (body.has("worst")
                    && !body.path("repetitions_done").asString("").equals("0")) {
                boolean open = !told.contains(each.sessionId())
                        && home.exercises().contains(each.exerciseId())
                        && body.path("plan").asInt(home.plan().number())
                                == home.plan().number();
                return open ? of(each, body) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static Optional<Morning> of(CheckIn session, ObjectNode body) {
        try {
            OffsetDateTime started =
                    OffsetDateTime.parse(body.path("started_at").asString(""));
            var fields = new LinkedHashMap<String, String>();
            fields.put("session", session.sessionId());
            fields.put("exercise", session.exerciseId());
            fields.put("started", started.toString());
            fields.put("done", "some");
            fields.put("repetitions", body.path("repetitions_done").asString(""));
            FIELDS.forEach((column, field) -> {
                if (body.has(column)) {
                    fields.put(field, body.path(column).asString(""));
                }
            });
            return Optional.of(new Morning(started.toLocalDate().toString(), fields));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
