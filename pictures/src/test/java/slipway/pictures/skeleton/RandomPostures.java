package slipway.pictures.skeleton;

import java.util.Random;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;

/** Any legal posture, seeded. */
final class RandomPostures {
    private final Random random;

    RandomPostures(long seed) {
        this.random = new Random(seed);
    }

    Posture next() {
        Posture posture = Posture.reference();
        for (Limb limb : Limb.values()) {
            for (Joint joint : Joint.values()) {
                double angle = joint.lowDeg() + random.nextDouble() * (joint.highDeg() - joint.lowDeg());
                posture = posture.with(joint, limb, angle);
            }
        }
        return posture;
    }
}
