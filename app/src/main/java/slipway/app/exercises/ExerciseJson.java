package slipway.app.exercises;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.KeyPose;
import slipway.exercises.exercise.Language;
import slipway.exercises.exercise.OpenAngle;
import slipway.exercises.exercise.Phrase;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Exercises as JSON; angles in degrees, times in seconds. */
final class ExerciseJson {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private ExerciseJson() {}

    static String list(List<Exercise> exercises, Language language) {
        return MAPPER.writeValueAsString(
                exercises.stream().map(exercise -> summary(exercise, language)).toList());
    }

    static String one(Exercise exercise, Language language) {
        var json = summary(exercise, language);
        json.put(
                "suits",
                exercise.use().suits().stream().map(s -> s.key()).sorted().toList());
        json.put(
                "notFor",
                exercise.use().notFor().stream().map(n -> n.key()).sorted().toList());
        json.put(
                "poses",
                exercise.movement().poses().stream().map(ExerciseJson::pose).toList());
        json.put(
                "openAnglesDeg",
                exercise.movement().openAngles().stream()
                        .map(ExerciseJson::openAngle)
                        .toList());
        var words = exercise.instructions();
        json.put("steps", texts(words.steps().stream().map(step -> step.text()).toList(), language));
        json.put("feel", texts(words.feel(), language));
        json.put("stop", texts(words.stop(), language));
        json.put(
                "avoid",
                texts(words.errors().stream().map(error -> error.text()).toList(), language));
        json.put("cautions", texts(words.cautions(), language));
        json.put("easier", exercise.neighbours().easier());
        json.put("harder", exercise.neighbours().harder());
        json.put("readingLevel", ExerciseText.level(exercise, language));
        return MAPPER.writeValueAsString(json);
    }

    private static Map<String, Object> openAngle(OpenAngle open) {
        var json = new LinkedHashMap<String, Object>();
        json.put("joint", open.joint().key());
        json.put("easiest", open.easiestDeg());
        json.put("farthest", open.farthestDeg());
        json.put("shown", open.shownDeg());
        return json;
    }

    private static Map<String, Object> summary(Exercise exercise, Language language) {
        var json = new LinkedHashMap<String, Object>();
        json.put("id", exercise.id());
        json.put("language", language.code());
        json.put("name", exercise.name().in(language));
        json.put("purpose", exercise.purpose().key());
        json.put("tracts", exercise.use().tractKeys());
        json.put("support", exercise.setting().support().key());
        json.put("side", exercise.movement().side().key());
        json.put(
                "props",
                exercise.setting().props().stream()
                        .map(use -> use.prop().key())
                        .distinct()
                        .toList());
        json.put("dose", dose(exercise));
        return json;
    }

    private static Map<String, Object> dose(Exercise exercise) {
        var dose = exercise.dose();
        var json = new LinkedHashMap<String, Object>();
        json.put("repetitions", dose.repetitions());
        json.put("sets", dose.sets());
        json.put("sessionsPerDay", dose.sessionsPerDay());
        json.put("daysPerWeek", dose.daysPerWeek());
        dose.minutes().ifPresent(minutes -> json.put("minutes", minutes));
        json.put("basis", dose.basis());
        return json;
    }

    private static Map<String, Object> pose(KeyPose pose) {
        var json = new LinkedHashMap<String, Object>();
        json.put("id", pose.id());
        json.put("posture", pose.posture(Map.of()).text());
        json.put("arms", pose.arms().key());
        json.put("reachSeconds", pose.reachSeconds());
        json.put("holdSeconds", pose.holdSeconds());
        return json;
    }

    private static List<String> texts(List<Phrase> phrases, Language language) {
        return phrases.stream().map(phrase -> phrase.in(language)).toList();
    }
}
