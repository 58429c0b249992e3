package slipway.care.casefile;

import java.util.Arrays;
import java.util.Optional;
import slipway.mechanics.body.Joint;

/** A movement as a clinic names and measures it, and the joint angle that it stands for. */
enum Movement {
    HIP_FLEXION("hip", "flexion", Joint.HIP, 1),
    HIP_EXTENSION("hip", "extension", Joint.HIP, -1),
    HIP_ABDUCTION("hip", "abduction", Joint.HIP_ABDUCTION, 1),
    HIP_ADDUCTION("hip", "adduction", Joint.HIP_ABDUCTION, -1),
    HIP_INTERNAL("hip", "internalRotation", Joint.HIP_ROTATION, 1),
    HIP_EXTERNAL("hip", "externalRotation", Joint.HIP_ROTATION, -1),
    KNEE_FLEXION("knee", "flexion", Joint.KNEE, 1),
    KNEE_EXTENSION("knee", "extension", Joint.KNEE, -1),
    ANKLE_DORSIFLEXION("ankle", "dorsiflexion", Joint.ANKLE, 1),
    ANKLE_PLANTARFLEXION("ankle", "plantarflexion", Joint.ANKLE, -1),
    ANKLE_INVERSION("ankle", "inversion", Joint.ANKLE_INVERSION, 1),
    ANKLE_EVERSION("ankle", "eversion", Joint.ANKLE_INVERSION, -1),
    TOE_EXTENSION("toes", "extension", Joint.TOES, 1),
    TOE_FLEXION("toes", "flexion", Joint.TOES, -1),
    SPINE_FLEXION("spine", "flexion", Joint.SPINE, 1),
    SPINE_EXTENSION("spine", "extension", Joint.SPINE, -1),
    NECK_FLEXION("neck", "flexion", Joint.NECK, 1),
    NECK_EXTENSION("neck", "extension", Joint.NECK, -1);

    private final String part;
    private final String key;
    private final Joint joint;
    private final int sign;

    Movement(String part, String key, Joint joint, int sign) {
        this.part = part;
        this.key = key;
        this.joint = joint;
        this.sign = sign;
    }

    static Optional<Movement> find(String part, String key) {
        return Arrays.stream(values())
                .filter(movement -> movement.part.equals(part) && movement.key.equals(key))
                .findFirst();
    }

    Joint joint() {
        return joint;
    }

    boolean towardsPositive() {
        return sign > 0;
    }

    /** The joint angle that a measured end of this movement stands for: 10 of extension is -10. */
    double jointDeg(double measuredDeg) {
        // 0.0 - x rather than -x, so that no negative zero appears.
        return sign > 0 ? measuredDeg : 0.0 - measuredDeg;
    }
}
