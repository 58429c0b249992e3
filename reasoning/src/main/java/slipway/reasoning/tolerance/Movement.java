package slipway.reasoning.tolerance;

import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;

/**
 * One joint moving from one angle to another.
 *
 * @param limb for a joint without sides {@link Limb#OWN}
 */
public record Movement(Joint joint, Limb limb, double fromDeg, double toDeg) {
    public Movement {
        joint.checked(fromDeg);
        joint.checked(toDeg);
        if (fromDeg == toDeg) {
            throw new IllegalArgumentException(
                    "a movement of the %s needs two different angles, was %s deg twice".formatted(joint.key(), toDeg));
        }
        if (limb == Limb.OTHER && !joint.paired()) {
            throw new IllegalArgumentException(joint.key() + " has no other side");
        }
    }

    /** 1 if the angle rises, -1 if it falls. */
    public int direction() {
        return toDeg > fromDeg ? 1 : -1;
    }

    /** A posture with this joint at an angle. */
    public Posture at(Posture base, double angleDeg) {
        return base.with(joint, limb, angleDeg);
    }
}
