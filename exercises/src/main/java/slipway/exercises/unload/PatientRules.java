package slipway.exercises.unload;

import java.util.List;
import slipway.exercises.exercise.Phrase;
import tools.jackson.databind.JsonNode;

/**
 * What holds for every exercise, in the words that patients read ({@code patient-rules.yaml}).
 *
 * @param stop when to stop
 * @param permitted what may be felt, and for how long after
 * @param tooMuch what to do when it gets strong
 * @param pace how to move in a glide
 */
public record PatientRules(Phrase stop, Phrase permitted, Phrase tooMuch, Phrase pace) {
    private static final PatientRules BUNDLED = load();

    /** The rules that ship with the program. */
    public static PatientRules bundled() {
        return BUNDLED;
    }

    /** All of them. */
    public List<Phrase> patientTexts() {
        return List.of(stop, permitted, tooMuch, pace);
    }

    private static PatientRules load() {
        JsonNode root = BundledFile.read("patient-rules");
        return new PatientRules(
                BundledFile.phrase(root.path("stop")),
                BundledFile.phrase(root.path("permitted")),
                BundledFile.phrase(root.path("too-much")),
                BundledFile.phrase(root.path("pace")));
    }
}
