package slipway.reasoning.dose;

import java.util.List;
import slipway.mechanics.body.Posture;
import slipway.mechanics.motion.Motion;
import slipway.reasoning.basis.Reason;

/**
 * An exercise with the range that this person may use.
 *
 * @param end the furthest posture of a repetition; its moving angles are multiples of 5 deg
 * @param guards the guards that ended the range; empty if the limit or the exercise itself did
 * @param reasons why the range ends where it does
 */
public record DesignedRange(
        ExerciseCandidate candidate, Posture end, Effect effect, List<Reason> guards, List<Reason> reasons) {
    public DesignedRange {
        guards = List.copyOf(guards);
        reasons = List.copyOf(reasons);
    }

    /** One repetition: out and back, the end passed without a hold. */
    public Motion motion(double secondsPerDirection) {
        return new Motion(List.of(
                new Motion.Key(candidate.start(), 0),
                new Motion.Key(end, secondsPerDirection),
                new Motion.Key(candidate.start(), 2 * secondsPerDirection)));
    }
}
