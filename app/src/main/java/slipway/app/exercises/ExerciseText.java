package slipway.app.exercises;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import slipway.exercises.exercise.Dose;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.KeyPose;
import slipway.exercises.exercise.Language;
import slipway.exercises.exercise.OpenAngle;
import slipway.exercises.exercise.Purpose;
import slipway.exercises.readability.ReadingLevel;
import slipway.exercises.unload.PatientRules;

/** Exercises as text for a terminal. */
final class ExerciseText {
    private ExerciseText() {}

    static String list(List<Exercise> exercises, Language language) {
        var lines = new ArrayList<String>();
        int width = exercises.stream().mapToInt(e -> e.id().length()).max().orElse(0);
        for (Purpose purpose : Purpose.values()) {
            var group = exercises.stream().filter(e -> e.purpose() == purpose).toList();
            if (!group.isEmpty()) {
                lines.add((lines.isEmpty() ? "" : "\n") + purpose.key());
                group.forEach(e -> lines.add("  %s  %s  (%s)"
                        .formatted(
                                padded(e.id(), width),
                                e.name().in(language),
                                e.setting().support().key())));
            }
        }
        lines.add("\n%d exercises".formatted(exercises.size()));
        return String.join("\n", lines);
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(width - text.length());
    }

    static String one(Exercise exercise, Language language) {
        var lines = new ArrayList<String>();
        lines.add(exercise.name().in(language) + "  [" + exercise.id() + "]");
        lines.add("purpose   " + exercise.purpose().key());
        lines.add("position  %s, from %s; %s side moves"
                .formatted(
                        exercise.setting().support().key(),
                        exercise.setting().base().name(),
                        exercise.movement().side().key()));
        addUnlessEmpty(
                lines,
                "props     ",
                exercise.setting().props().stream()
                        .map(use -> use.prop().key() + " " + use.place().key())
                        .toList());
        addUnlessEmpty(lines, "tracts    ", exercise.use().tractKeys());
        addUnlessEmpty(
                lines,
                "suits     ",
                exercise.use().suits().stream().map(s -> s.key()).sorted().toList());
        addUnlessEmpty(
                lines,
                "not for   ",
                exercise.use().notFor().stream().map(n -> n.key()).sorted().toList());
        addMovement(lines, exercise);
        addWords(lines, exercise, language);
        lines.add("dose      " + dose(exercise.dose()));
        addUnlessEmpty(lines, "easier    ", exercise.neighbours().easier());
        addUnlessEmpty(lines, "harder    ", exercise.neighbours().harder());
        lines.add("reading   " + level(exercise, language));
        return String.join("\n", lines);
    }

    private static void addMovement(List<String> lines, Exercise exercise) {
        for (KeyPose pose : exercise.movement().poses()) {
            lines.add("pose      %s: %s; %s; reached in %s s%s"
                    .formatted(
                            pose.id(),
                            pose.posture(Map.of()),
                            pose.arms().key(),
                            pose.reachSeconds(),
                            pose.holdSeconds() > 0 ? ", held " + pose.holdSeconds() + " s" : ""));
        }
        for (OpenAngle open : exercise.movement().openAngles()) {
            lines.add("open      %s from %.0f to %.0f deg, shown at %.0f deg"
                    .formatted(open.joint(), open.easiestDeg(), open.farthestDeg(), open.shownDeg()));
        }
    }

    private static void addWords(List<String> lines, Exercise exercise, Language language) {
        var words = exercise.instructions();
        for (int i = 0; i < words.steps().size(); i++) {
            lines.add("%d. %s".formatted(i + 1, words.steps().get(i).text().in(language)));
        }
        words.errors()
                .forEach(error -> lines.add(
                        "avoid     %s  (drawn as %s)".formatted(error.text().in(language), error.wrong())));
        words.feel().forEach(phrase -> lines.add("feel      " + phrase.in(language)));
        lines.add("stop      " + PatientRules.bundled().stop().in(language));
        words.stop().forEach(phrase -> lines.add("stop      " + phrase.in(language)));
        words.cautions().forEach(phrase -> lines.add("mind      " + phrase.in(language)));
    }

    private static String dose(Dose dose) {
        String amount = dose.minutes().isPresent()
                ? dose.minutes().getAsInt() + " min"
                : "%d x %d".formatted(dose.sets(), dose.repetitions());
        return "%s, %d a day, %d days a week (%s)"
                .formatted(amount, dose.sessionsPerDay(), dose.daysPerWeek(), dose.basis());
    }

    static String level(Exercise exercise, Language language) {
        return ReadingLevel.of(
                        language,
                        exercise.patientTexts().stream()
                                .skip(1)
                                .map(text -> text.in(language))
                                .collect(Collectors.toList()))
                .toString();
    }

    private static void addUnlessEmpty(List<String> lines, String label, List<String> values) {
        if (!values.isEmpty()) {
            lines.add(label + String.join(", ", values));
        }
    }
}
