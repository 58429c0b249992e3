package slipway.exercises.exercise;

import java.util.Map;
import java.util.stream.Collectors;
import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Posture;

/**
 * A posture that an exercise passes or holds.
 *
 * @param id its name within the exercise, for example {@code start}
 * @param fixed all angles but the open ones; an open one is at its base value here
 * @param open the joints whose angle the plan chooses
 * @param arms where the hands are
 * @param reachSeconds time to move here from the pose before; for the first pose, from the last one
 * @param holdSeconds time to stay
 */
public record KeyPose(
        String id, Posture fixed, Map<BodyJoint, OpenAngle> open, Arms arms, double reachSeconds, double holdSeconds) {
    public KeyPose {
        open = Map.copyOf(open);
        if (!(reachSeconds > 0 && reachSeconds <= 60)) {
            throw new IllegalArgumentException(
                    "pose %s: the time to reach it must be above 0 and at most 60 s, was %s s"
                            .formatted(id, reachSeconds));
        }
        if (!(holdSeconds >= 0 && holdSeconds <= 600)) {
            throw new IllegalArgumentException(
                    "pose %s: the hold must be within 0 and 600 s, was %s s".formatted(id, holdSeconds));
        }
    }

    /**
     * The posture with the chosen angles; those that were not chosen are as shown in pictures.
     *
     * @throws IllegalArgumentException if a chosen angle is outside the range that the exercise allows
     */
    public Posture posture(Map<BodyJoint, Double> chosenDeg) {
        Posture posture = fixed;
        for (OpenAngle angle : open.values()) {
            BodyJoint joint = angle.joint();
            double degrees = chosenDeg.getOrDefault(joint, angle.shownDeg());
            if (!angle.allows(degrees)) {
                throw new IllegalArgumentException("%s must be within %s and %s deg in this exercise, was %s deg"
                        .formatted(joint, angle.easiestDeg(), angle.farthestDeg(), degrees));
            }
            posture = posture.with(joint.joint(), joint.limb(), degrees);
        }
        return posture;
    }

    @Override
    public String toString() {
        return id + ": " + fixed
                + open.keySet().stream()
                        .map(joint -> " " + joint + " open")
                        .sorted()
                        .collect(Collectors.joining());
    }
}
