package slipway.web.gallery;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Language;
import slipway.exercises.format.ExerciseReader;
import slipway.exercises.readability.ReadingLevel;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.MistakesException;

/**
 * A text of the writer: the exercise that it describes, or everything that is wrong with it.
 *
 * @param levels how hard the patient's words are to read, English and Spanish; empty if it is no exercise yet
 */
public record Draft(String text, Optional<Exercise> exercise, List<Mistake> mistakes, List<String> levels) {
    static Draft of(String text) {
        try {
            Exercise read = ExerciseReader.read(
                    "exercise",
                    text.getBytes(StandardCharsets.UTF_8),
                    Catalogue.bundled().ids());
            return new Draft(text, Optional.of(read), List.of(), levels(read));
        } catch (MistakesException e) {
            return new Draft(
                    text, Optional.empty(), e.mistakes().stream().sorted().toList(), List.of());
        }
    }

    static List<String> levels(Exercise exercise) {
        return List.of(Language.values()).stream()
                .map(language -> ReadingLevel.of(
                                language,
                                exercise.patientTexts().stream()
                                        .skip(1)
                                        .map(text -> text.in(language))
                                        .toList())
                        .toString())
                .toList();
    }
}
