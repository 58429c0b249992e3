package slipway.web.patient;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.UUID;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A report as its form sends it: on a session, on the morning after one, or on a danger sign alone.
 *
 * @param fields by the names of the form
 */
public record Report(Map<String, String> fields) {
    /** What may differ when the same is sent again. */
    private static final Set<String> NOT_CONTENT = Set.of(
            "checkin_id", "session_id", "started_at", "reported_at", "clock", "phone_made_at_ms", "phone_sent_at_ms");

    private static final String YES = "yes";
    private static final String NO = "no";
    private static final int MOST_TEXT = 60;
    private static final int LARGE_RISE = 4;

    public Report {
        fields = Map.copyOf(fields);
    }

    public String text(String key) {
        String value = fields.getOrDefault(key, "").strip();
        return value.length() > MOST_TEXT ? "" : value;
    }

    private boolean yes(String key) {
        return text(key).equals(YES);
    }

    /** Made by the phone, so that sending it twice keeps one. */
    String id() {
        return idOr(
                "id",
                UUID.nameUUIDFromBytes(fields.toString().getBytes(StandardCharsets.UTF_8))
                        .toString());
    }

    /** The session that it is about; several reports may be. */
    String session() {
        return idOr("session", id());
    }

    private String idOr(String key, String otherwise) {
        // Whatever a browser did to it: a report is never lost for its id.
        return text(key).matches("[A-Za-z0-9-]{8,64}") ? text(key) : otherwise;
    }

    String exercise() {
        return text("exercise");
    }

    /** The plan that the phone had. */
    OptionalInt plan() {
        return text("plan").matches("[0-9]{1,6}")
                ? OptionalInt.of(Integer.parseInt(text("plan")))
                : OptionalInt.empty();
    }

    /** Whom the phone made it for; empty text without one. */
    String who() {
        return text("who");
    }

    PhoneTimes.Told times() {
        return new PhoneTimes.Told(whole("begunAt"), whole("madeAt"), whole("sentAt"), whole("zone"));
    }

    private OptionalLong whole(String key) {
        return text(key).matches("-?[0-9]{1,15}") ? OptionalLong.of(Long.parseLong(text(key))) : OptionalLong.empty();
    }

    boolean byMistake() {
        return text("emergency").equals("mistake");
    }

    boolean anySign() {
        return yes("emergency") || byMistake() || yes("weak") || yes("numb");
    }

    boolean isMorning() {
        return !text("morning").isEmpty();
    }

    /** The rule of the gravest sign; empty without one. */
    Optional<String> signRule() {
        if (yes("emergency")) {
            return Optional.of("emergency");
        }
        if (byMistake()) {
            return Optional.of("emergency-by-mistake");
        }
        return yes("weak") ? Optional.of("new-weakness") : yes("numb") ? Optional.of("still-numb") : Optional.empty();
    }

    /** Keys of the words that say what is missing; a danger sign needs nothing else. */
    List<String> missing() {
        var missing = new ArrayList<String>();
        if (anySign()) {
            return missing;
        }
        // A sign counts even beside "none of these": the more careful answer wins.
        need(missing, yes("none"), "wrong.signs");
        need(missing, scale("before").isPresent(), "wrong.before");
        need(missing, repetitions().isPresent(), "wrong.done");
        if (!rested()) {
            need(missing, scale("worst").isPresent(), "wrong.worst");
            need(missing, !text("kind").isEmpty() && !feltNothingYetWorse(), "wrong.kind");
            need(missing, !text("kind").equals("pain") || !text("usualPain").isEmpty(), "wrong.usualPain");
            need(missing, !text("settle").isEmpty(), "wrong.settle");
        }
        return missing;
    }

    private static void need(List<String> missing, boolean there, String otherwise) {
        if (!there) {
            missing.add(otherwise);
        }
    }

    private boolean feltNothingYetWorse() {
        return text("kind").equals("none")
                && scale("worst").orElse(0) > scale("before").orElse(0);
    }

    private OptionalInt scale(String key) {
        return text(key).matches("[0-9]|10") ? OptionalInt.of(Integer.parseInt(text(key))) : OptionalInt.empty();
    }

    /** A day without exercise. */
    private boolean rested() {
        return text("done").equals("none");
    }

    /** All that the plan says where "all of them" was left standing. */
    private OptionalInt repetitions() {
        String count = rested() ? "0" : text(text("done").equals("some") ? "repetitions" : "planned");
        return count.matches("[0-9]{1,3}") ? OptionalInt.of(Integer.parseInt(count)) : OptionalInt.empty();
    }

    /** Whether it went so far up that one waits, whoever has to answer. */
    boolean roseMuch() {
        return scale("worst").orElse(0) - scale("before").orElse(0) >= LARGE_RISE;
    }

    /** Whether two reports say the same, whenever they were sent. */
    static boolean sameAnswers(ObjectNode one, ObjectNode other) {
        return one.deepCopy().without(NOT_CONTENT).equals(other.deepCopy().without(NOT_CONTENT));
    }

    /** The report under the names of the file of reports, and what the phone said of its clock. */
    ObjectNode body(PhoneTimes times) {
        ObjectNode body = JsonMapper.shared().createObjectNode();
        body.put("checkin_id", id()).put("session_id", session()).put("exercise", exercise());
        body.put("started_at", started(times).toString());
        session(body);
        // A sign without the rest is a report too: the file wants to know that nothing had settled.
        body.put("settle_minutes", !text("settle").isEmpty() ? text("settle") : rested() ? "0" : "not settled");
        put(body, "next_morning", "morning");
        body.put("still_numb", yes("numb") ? YES : NO).put("new_weakness", yes("weak") ? YES : NO);
        body.put("emergency", yes("emergency") ? YES : byMistake() ? "mistake" : NO);
        body.put("reported_at", times.reportedAt().toString());
        plan().ifPresent(number -> body.put("plan", number));
        whole("madeAt").ifPresent(made -> body.put("phone_made_at_ms", made));
        whole("sentAt").ifPresent(sent -> body.put("phone_sent_at_ms", sent));
        return times.unsure() ? body.put("clock", "unsure") : body;
    }

    /** The morning after tells when its session began; anything else begins when the phone says. */
    private OffsetDateTime started(PhoneTimes times) {
        try {
            return Optional.of(text("started"))
                    .filter(text -> isMorning() && !text.isEmpty())
                    .map(OffsetDateTime::parse)
                    .filter(told -> told.isBefore(times.reportedAt()))
                    .orElse(times.startedAt());
        } catch (DateTimeParseException e) {
            return times.startedAt();
        }
    }

    private void session(ObjectNode body) {
        boolean whole = scale("before").isPresent()
                && (rested() || (scale("worst").isPresent() && !text("kind").isEmpty()));
        if (!whole) {
            return;
        }
        body.put("before", text("before")).put("worst", rested() ? text("before") : text("worst"));
        body.put("kind", rested() ? "none" : text("kind"));
        body.put("repetitions_done", String.valueOf(repetitions().orElse(1)));
        if (text("done").equals("all")) {
            // Nobody counted: the number of the plan was left standing.
            body.put("repetitions_assumed", YES);
        }
        if (text("kind").equals("pain")) {
            put(body, "usual_pain", "usualPain");
        }
        put(body, "reach", "reach");
        put(body, "flare_exercise", "flare");
    }

    private void put(ObjectNode body, String column, String key) {
        if (!text(key).isEmpty()) {
            body.put(column, text(key));
        }
    }
}
