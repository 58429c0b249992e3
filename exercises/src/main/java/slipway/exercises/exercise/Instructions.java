package slipway.exercises.exercise;

import java.util.List;
import java.util.Optional;
import slipway.mechanics.body.Posture;

/**
 * What the patient reads.
 *
 * @param steps what to do, in order
 * @param feel what may be felt
 * @param stop when to stop, besides the rule for every exercise
 * @param errors what often goes wrong
 * @param cautions what to mind
 */
public record Instructions(
        List<Step> steps, List<Phrase> feel, List<Phrase> stop, List<CommonError> errors, List<Phrase> cautions) {
    /** One step and the pose that it leads to, if it leads to one. */
    public record Step(Phrase text, Optional<String> pose) {}

    /**
     * What often goes wrong, and how that looks.
     *
     * @param text what to avoid, in words
     * @param pose the pose that goes wrong
     * @param wrong the posture that can be drawn
     */
    public record CommonError(Phrase text, String pose, Posture wrong) {}

    public Instructions {
        steps = List.copyOf(steps);
        feel = List.copyOf(feel);
        stop = List.copyOf(stop);
        errors = List.copyOf(errors);
        cautions = List.copyOf(cautions);
    }
}
