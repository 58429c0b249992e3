package slipway.reasoning.tolerance;

import slipway.mechanics.body.Joint;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Coefficients;

/** The coefficients of {@code tolerance.csv}. */
final class ToleranceData {
    static final Coefficients COEFFICIENTS = Coefficients.load("tolerance.csv");

    private ToleranceData() {}

    /** Standard deviation of a reading of this joint's angle, in degrees. */
    static double onsetErrorDeg(Joint joint) {
        return switch (joint) {
            case HIP, KNEE, ANKLE -> COEFFICIENTS.value("onset-error-" + joint.key());
            default -> COEFFICIENTS.value("onset-error-other");
        };
    }

    /** Whether a site is so far up that a movement of the ankle reaches it only through the nerve. */
    static boolean proximal(Site site) {
        return switch (site.segment()) {
            case CORD, CANAL, PELVIS -> true;
            case THIGH -> site.position() <= COEFFICIENTS.value("spread-proximal-thigh");
            case SHANK, FOOT -> false;
        };
    }
}
