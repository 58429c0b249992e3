package slipway.exercises.exercise;

import java.util.OptionalDouble;

/**
 * An angle that the plan chooses for the person, between the one that asks least of the nerve and the one that asks
 * most. Chosen values lie on steps of {@value #STEP_DEG} degrees: nobody keeps to a finer one at home (common practice).
 *
 * @param joint the joint that is open
 * @param easiestDeg the least demanding angle
 * @param farthestDeg the most demanding angle; above or below the easiest
 * @param shownDeg the angle in pictures when no plan has chosen one
 */
public record OpenAngle(BodyJoint joint, double easiestDeg, double farthestDeg, double shownDeg) {
    /** Distance of the angles that can be chosen. */
    public static final double STEP_DEG = 5;

    public OpenAngle {
        joint.joint().checked(easiestDeg);
        joint.joint().checked(farthestDeg);
        if (easiestDeg == farthestDeg) {
            throw new IllegalArgumentException(
                    "the open angle of %s needs a range, was %s to %s deg".formatted(joint, easiestDeg, farthestDeg));
        }
        for (double angle : new double[] {easiestDeg, farthestDeg, shownDeg}) {
            if (!(angle % STEP_DEG == 0)) {
                throw new IllegalArgumentException("the open angle of %s must lie on steps of %.0f deg, was %s deg"
                        .formatted(joint, STEP_DEG, angle));
            }
        }
        if (!within(easiestDeg, farthestDeg, shownDeg)) {
            throw new IllegalArgumentException("the shown angle of %s must be within %s and %s deg, was %s deg"
                    .formatted(joint, easiestDeg, farthestDeg, shownDeg));
        }
    }

    private static boolean within(double one, double two, double angle) {
        return angle >= Math.min(one, two) && angle <= Math.max(one, two);
    }

    /** Whether the plan may choose this angle (any angle of the range, on a step or not). */
    public boolean allows(double angleDeg) {
        return within(easiestDeg, farthestDeg, angleDeg);
    }

    /**
     * The most demanding step that does not go beyond the limit; empty if even the easiest angle does, or for NaN.
     *
     * @param limitDeg the angle that must not be passed
     */
    public OptionalDouble stepWithin(double limitDeg) {
        double sign = Math.signum(farthestDeg - easiestDeg);
        double room = (limitDeg - easiestDeg) * sign;
        if (!(room >= 0)) {
            return OptionalDouble.empty();
        }
        double steps = Math.floor(Math.min(room, Math.abs(farthestDeg - easiestDeg)) / STEP_DEG);
        return OptionalDouble.of(easiestDeg + sign * steps * STEP_DEG);
    }
}
