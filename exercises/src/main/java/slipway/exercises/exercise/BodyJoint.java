package slipway.exercises.exercise;

import java.util.Optional;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;

/** A joint of the own or the other limb; joints without a side count as own. */
public record BodyJoint(Joint joint, Limb limb) {
    private static final String OTHER = "other-";

    public BodyJoint {
        if (limb == Limb.OTHER && !joint.paired()) {
            throw new IllegalArgumentException(joint.key() + " has no other side");
        }
    }

    /** As in posture texts: {@code knee}, {@code other-knee}. */
    public String key() {
        return (limb == Limb.OTHER ? OTHER : "") + joint.key();
    }

    /** The joint of this name in posture texts. */
    public static Optional<BodyJoint> find(String key) {
        boolean other = key.startsWith(OTHER);
        return Joint.find(other ? key.substring(OTHER.length()) : key)
                .filter(joint -> !other || joint.paired())
                .map(joint -> new BodyJoint(joint, other ? Limb.OTHER : Limb.OWN));
    }

    @Override
    public String toString() {
        return key();
    }
}
