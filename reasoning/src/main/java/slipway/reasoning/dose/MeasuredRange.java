package slipway.reasoning.dose;

import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;

/** How far a joint of this person goes, as measured, seen from the affected side. */
public record MeasuredRange(Joint joint, Limb limb, double lowDeg, double highDeg) {
    public MeasuredRange {
        joint.checked(lowDeg);
        joint.checked(highDeg);
        if (!(lowDeg <= highDeg)) {
            throw new IllegalArgumentException(
                    "the measured range of the %s must rise, was %s to %s deg".formatted(joint.key(), lowDeg, highDeg));
        }
    }

    /** The same range without its ends; the middle if nothing else is left. */
    MeasuredRange without(double endsDeg) {
        double less = Math.min(endsDeg, 0.5 * (highDeg - lowDeg));
        return new MeasuredRange(joint, limb, lowDeg + less, highDeg - less);
    }

    /** Whether a posture keeps this joint within its range. */
    boolean allows(Posture posture) {
        double angleDeg = posture.angleDeg(joint, limb);
        return angleDeg >= lowDeg && angleDeg <= highDeg;
    }
}
