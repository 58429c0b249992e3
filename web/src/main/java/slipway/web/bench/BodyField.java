package slipway.web.bench;

import java.util.List;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;

/** A joint as a field of the bench. */
record BodyField(Joint joint, Limb limb) {
    /** The joints that a leg posture has; arms go where the position puts them. */
    static final List<Joint> SHOWN = List.of(
            Joint.HIP,
            Joint.KNEE,
            Joint.ANKLE,
            Joint.SPINE,
            Joint.NECK,
            Joint.HIP_ABDUCTION,
            Joint.HIP_ROTATION,
            Joint.ANKLE_INVERSION,
            Joint.TOES,
            Joint.SPINE_SIDE);

    /** The name of the field, as postures are written. */
    String name() {
        return (limb == Limb.OTHER ? "other-" : "") + joint.key();
    }
}
