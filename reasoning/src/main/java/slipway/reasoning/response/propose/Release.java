package slipway.reasoning.response.propose;

import java.time.OffsetDateTime;

/**
 * A clinician lets the person go on after a stop.
 *
 * @param id tells a repeated entry from a new one
 * @param who name or id of the clinician
 */
public record Release(String id, String who, OffsetDateTime at) {
    public Release {
        if (id.isBlank() || who.isBlank()) {
            throw new IllegalArgumentException("a release needs its id and who gave it");
        }
    }
}
