package slipway.reasoning.dose;

import java.util.List;
import slipway.mechanics.body.Posture;

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

    boolean contains(Posture posture) {
        return zones.stream().allMatch(zone -> zone.allows(posture));
    }
}
