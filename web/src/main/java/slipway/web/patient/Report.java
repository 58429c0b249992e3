package slipway.web.patient;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import slipway.web.form.FormReader;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The report of a session as its form sends it.
 *
 * @param id made when the form was shown, so that sending it twice keeps one
 * @param none "none of these" below the signs
 */
record Report(
        String id,
        String exercise,
        String before,
        String worst,
        String kind,
        String usualPain,
        String settle,
        String repetitions,
        String emergency,
        String weak,
        String numb,
        String none) {
    private static final Set<String> TIMES = Set.of("started_at", "reported_at");

    Report(
            @Nullable String id,
            @Nullable String exercise,
            @Nullable String before,
            @Nullable String worst,
            @Nullable String kind,
            @Nullable String usualPain,
            @Nullable String settle,
            @Nullable String repetitions,
            @Nullable String emergency,
            @Nullable String weak,
            @Nullable String numb,
            @Nullable String none) {
        String sent = FormReader.text(id).strip();
        // Whatever a browser did to it: a report is never lost for its id.
        this.id = sent.matches("[A-Za-z0-9-]{8,64}") ? sent : UUID.randomUUID().toString();
        this.exercise = FormReader.text(exercise).strip();
        this.before = FormReader.text(before).strip();
        this.worst = FormReader.text(worst).strip();
        this.kind = FormReader.text(kind).strip();
        this.usualPain = FormReader.text(usualPain).strip();
        this.settle = FormReader.text(settle).strip();
        this.repetitions = FormReader.text(repetitions).strip();
        this.emergency = FormReader.text(emergency).strip();
        this.weak = FormReader.text(weak).strip();
        this.numb = FormReader.text(numb).strip();
        this.none = FormReader.text(none).strip();
    }

    boolean anySign() {
        return !emergency.isEmpty() || !weak.isEmpty() || !numb.isEmpty();
    }

    /** The rule of the gravest sign; empty without one. */
    Optional<String> signRule() {
        if (!emergency.isEmpty()) {
            return Optional.of("emergency");
        }
        return !weak.isEmpty()
                ? Optional.of("new-weakness")
                : numb.isEmpty() ? Optional.empty() : Optional.of("still-numb");
    }

    /** Keys of the words that say what is missing; a danger sign needs nothing else. */
    List<String> missing() {
        var missing = new ArrayList<String>();
        // A sign counts even beside "none of these": the more careful answer wins.
        if (!anySign() && !none.equals("yes")) {
            missing.add("wrong.signs");
        }
        if (!anySign()) {
            if (!before.matches("[0-9]|10")) {
                missing.add("wrong.before");
            }
            if (!worst.matches("[0-9]|10")) {
                missing.add("wrong.worst");
            }
            if (kind.isEmpty()) {
                missing.add("wrong.kind");
            }
            if (kind.equals("pain") && usualPain.isEmpty()) {
                missing.add("wrong.usualPain");
            }
            if (settle.isEmpty()) {
                missing.add("wrong.settle");
            }
        }
        return missing;
    }

    /** Whether two reports say the same, whenever they were sent. */
    static boolean sameAnswers(ObjectNode one, ObjectNode other) {
        return one.deepCopy().without(TIMES).equals(other.deepCopy().without(TIMES));
    }

    /** The report under the names of the file of reports. */
    ObjectNode body(Instant now) {
        String at = now.truncatedTo(ChronoUnit.SECONDS).atOffset(ZoneOffset.UTC).toString();
        boolean session = !before.isEmpty() && !worst.isEmpty() && !kind.isEmpty();
        ObjectNode body = JsonMapper.shared().createObjectNode();
        body.put("checkin_id", id)
                .put("session_id", id)
                .put("exercise", exercise)
                .put("started_at", at);
        if (session) {
            body.put("before", before).put("worst", worst).put("kind", kind);
            body.put("repetitions_done", repetitions.isEmpty() ? "1" : repetitions);
            if (kind.equals("pain")) {
                body.put("usual_pain", usualPain);
            }
        }
        // A sign without the rest is a report too: the file wants to know that nothing had settled.
        body.put("settle_minutes", settle.isEmpty() ? "not settled" : settle);
        body.put("still_numb", numb.isEmpty() ? "no" : "yes").put("new_weakness", weak.isEmpty() ? "no" : "yes");
        return body.put("emergency", emergency.isEmpty() ? "no" : "yes").put("reported_at", at);
    }
}
