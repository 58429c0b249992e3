package slipway.reasoning.dose;

import java.util.List;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Posture;
import slipway.reasoning.tolerance.Movement;

/**
 * An end position that provokes by pressure or rotation rather than by strain, for example the seated piriformis
 * stretch: no exercise enters it.
 *
 * @param id of the finding
 * @param why one sentence for the therapist
 * @param zones the posture is in the end position when every one of these joints lies within its range
 */
public record KeptOut(String id, String why, List<MeasuredRange> zones) {
    public KeptOut {
        zones = List.copyOf(zones);
        if (zones.isEmpty()) {
            throw new IllegalArgumentException("the end position " + id + " needs at least one joint");
        }
    }

    /**
     * Everything from an angle of one joint on: exercises stay short of it.
     *
     * @param limit from an angle that is allowed to the one that provokes
     */
    public static KeptOut from(String id, String why, Movement limit) {
        Joint joint = limit.joint();
        double endDeg = limit.direction() > 0 ? joint.highDeg() : joint.lowDeg();
        double lowDeg = Math.min(limit.toDeg(), endDeg);
        double highDeg = Math.max(limit.toDeg(), endDeg);
        return new KeptOut(id, why, List.of(new MeasuredRange(joint, limit.limb(), lowDeg, highDeg)));
    }

    /** Whether a posture is in the end position. */
    public boolean contains(Posture posture) {
        return zones.stream().allMatch(zone -> zone.allows(posture));
    }
}
