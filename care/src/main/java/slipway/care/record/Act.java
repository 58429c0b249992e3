package slipway.care.record;

import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * Who does something, in which role and when. It goes with every reading and writing of a person's record and from there
 * into the trail.
 *
 * @param userId id of the staff account; for a patient the id of the access link; for the program a word such as
 *     {@code import}
 * @param clinicId the clinic in whose name
 * @param at to the microsecond, which is what both databases keep; finer parts are dropped
 * @param tokenId the token by which another program acts in the name of the user; empty text if none
 */
public record Act(String userId, Role role, String clinicId, Instant at, String tokenId) {
    public Act {
        if (userId.isBlank() || clinicId.isBlank()) {
            throw new IllegalArgumentException("an act needs a user and a clinic");
        }
        at = at.truncatedTo(ChronoUnit.MICROS);
    }

    /** Done by the user, without another program between. */
    public Act(String userId, Role role, String clinicId, Instant at) {
        this(userId, role, clinicId, at, "");
    }

    /** The same at another time. */
    public Act at(Instant other) {
        return new Act(userId, role, clinicId, other, tokenId);
    }

    /** Who it is in the trail: the user, and the token if another program acted. */
    public String who() {
        return tokenId.isEmpty() ? userId : userId + "/" + tokenId;
    }
}
