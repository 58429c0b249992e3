package slipway.reasoning.tolerance;

import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.reasoning.basis.Coefficients;

/**
 * Postures whose loads may be compared. A tolerance that was measured in one family is not carried to the other, because
 * a reading of strain puts sitting against lying wrongly by 20 degrees of leg raise and more.
 */
public enum TestFamily {
    /** Lying, standing upright: the straight leg raise and its variants. */
    RAISED_LEG("a raised leg"),
    /** Both hips flexed or the low back rounded: slump, sitting, long sitting, bending forward. */
    SITTING("sitting");

    private final String words;

    TestFamily(String words) {
        this.words = words;
    }

    /** For use in a sentence. */
    public String words() {
        return words;
    }

    /** The family of a posture. */
    public static TestFamily of(Posture posture) {
        Coefficients data = ToleranceData.COEFFICIENTS;
        double bothHipsDeg = Math.min(posture.angleDeg(Joint.HIP), posture.angleDeg(Joint.HIP, Limb.OTHER));
        boolean seated = bothHipsDeg >= data.value("sitting-hip")
                || posture.angleDeg(Joint.SPINE) >= data.value("sitting-spine");
        return seated ? SITTING : RAISED_LEG;
    }
}
