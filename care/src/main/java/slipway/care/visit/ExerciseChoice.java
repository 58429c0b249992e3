package slipway.care.visit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.Choices;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;

/**
 * Which exercises are put before the range design: the therapist's picks where there are any, otherwise the first
 * glides of the back-of-leg nerve (common practice: ankle, then knee, then hip, lying, with a strap).
 */
final class ExerciseChoice {
    private static final List<String> FIRST_GLIDES =
            List.of("glide-ankle-lying", "glide-knee-lying", "glide-hip-lying");

    private ExerciseChoice() {}

    /** The exercises by id, in the order in which they were chosen. */
    static Map<String, Exercise> of(CaseFile file) {
        Choices choices = file.choices();
        List<String> ids = new ArrayList<>(choices.exercises().isEmpty() ? FIRST_GLIDES : choices.exercises());
        ids.removeAll(choices.refused().keySet());
        var chosen = new LinkedHashMap<String, Exercise>();
        for (String id : ids) {
            chosen.put(id, Catalogue.bundled().get(id));
        }
        return chosen;
    }
}
