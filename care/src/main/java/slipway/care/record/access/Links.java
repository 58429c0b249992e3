package slipway.care.record.access;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slipway.care.record.Act;

/** Access links of patients. */
public interface Links {
    /** A new link for an episode that the act may see. */
    AccessLink add(
            String episodeId,
            LinkPurpose purpose,
            OptionalInt planVersion,
            String tokenSha256,
            Instant expiresAt,
            boolean birthYearAsked,
            Act act);

    /** The link of a token, usable or not. */
    Optional<AccessLink> find(String tokenSha256);

    /** By id, for a session that has already shown the token. */
    Optional<AccessLink> findById(String linkId);

    /** Links of an episode, newest first. */
    List<AccessLink> list(String episodeId, Act act);

    /** Takes note of a wrong year of birth. */
    AccessLink failed(String linkId, Optional<Instant> lockedUntil, Act act);

    /** Takes note of a use and forgets failures. */
    void used(String linkId, Act act);

    void revoke(String linkId, Act act);
}
