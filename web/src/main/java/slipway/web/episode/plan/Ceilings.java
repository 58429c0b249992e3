package slipway.web.episode.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import slipway.care.follow.HomeSetting;
import slipway.care.visit.VisitPlan;
import slipway.reasoning.dose.Dose;
import slipway.reasoning.dose.DoseLadder;
import slipway.reasoning.dose.DosedExercise;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The most that the therapist allows before the next visit, from the fields of the form. */
final class Ceilings {
    private Ceilings() {}

    /** What came of reading: ceilings by exercise, or what is wrong. */
    record Reading(ObjectNode content, List<String> mistakes) {}

    static Reading read(Map<String, String[]> fields, VisitPlan visit) {
        ObjectNode content = JsonMapper.shared().createObjectNode();
        var mistakes = new ArrayList<String>();
        for (DosedExercise dosed : visit.given()) {
            String id = dosed.range().candidate().id();
            Dose usual = DoseLadder.ceiling(dosed.dose());
            int repetitions = number(
                    fields,
                    "ceiling." + id + ".repetitions",
                    usual.repetitions(),
                    dosed.dose().repetitions(),
                    HomeSetting.MOST_REPETITIONS,
                    mistakes);
            int sessions = number(
                    fields,
                    "ceiling." + id + ".sessionsPerDay",
                    usual.sessionsPerDay(),
                    dosed.dose().sessionsPerDay(),
                    HomeSetting.MOST_SESSIONS,
                    mistakes);
            content.putObject(id)
                    .put("repetitions", repetitions)
                    .put("sessionsPerDay", sessions)
                    .put("rangeFraction", 1);
        }
        return new Reading(content, mistakes);
    }

    private static int number(
            Map<String, String[]> fields, String field, int otherwise, int least, int most, List<String> mistakes) {
        String[] given = fields.get(field);
        if (given == null || given[0].isBlank()) {
            return otherwise;
        }
        OptionalInt value = whole(given[0].strip());
        if (value.isEmpty() || value.getAsInt() < least || value.getAsInt() > most) {
            mistakes.add("%s must be a whole number within %d and %d, was %s".formatted(field, least, most, given[0]));
            return otherwise;
        }
        return value.getAsInt();
    }

    private static OptionalInt whole(String text) {
        return text.matches("\\d{1,4}") ? OptionalInt.of(Integer.parseInt(text)) : OptionalInt.empty();
    }
}
