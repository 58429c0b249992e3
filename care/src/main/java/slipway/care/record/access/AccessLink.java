package slipway.care.record.access;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A link that lets a patient in without an account. The token itself is never kept.
 *
 * @param tokenSha256 SHA-256 of the token, in hexadecimal
 * @param planVersion the plan it was printed with; empty for an intake
 * @param birthYearAsked whether the year of birth is asked for as well
 * @param failures wrong years in a row
 */
public record AccessLink(
        String id,
        String episodeId,
        LinkPurpose purpose,
        OptionalInt planVersion,
        String tokenSha256,
        Instant createdAt,
        Instant expiresAt,
        Optional<Instant> revokedAt,
        boolean birthYearAsked,
        int failures,
        Optional<Instant> lockedUntil) {
    /** Whether it lets anybody in at some time. */
    public boolean isUsableAt(Instant time) {
        return revokedAt.isEmpty()
                && time.isBefore(expiresAt)
                && lockedUntil.filter(time::isBefore).isEmpty();
    }
}
