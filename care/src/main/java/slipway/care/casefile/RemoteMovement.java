package slipway.care.casefile;

import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;

/**
 * A joint far from the symptom that was moved at the end of a test.
 *
 * @param limb seen from the leg of the test
 * @param limbHeld whether the tested limb was held still
 */
public record RemoteMovement(Joint joint, Limb limb, double fromDeg, double toDeg, boolean limbHeld, Change change) {
    /** What it did to the symptom. */
    public enum Change {
        EASED,
        WORSENED,
        NONE
    }
}
