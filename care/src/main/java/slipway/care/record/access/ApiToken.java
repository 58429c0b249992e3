package slipway.care.record.access;

import java.time.Instant;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * A token by which another program acts in the name of an account. The token itself is never kept.
 *
 * @param id 12 small letters and digits; part of the token, so that a leaked one can be told apart
 * @param staffId the account whose reach and roles it has
 * @param label what it is for, 1 to 80 characters
 * @param scopes at least one
 * @param lastUsedAt to the minute
 */
public record ApiToken(
        String id,
        String clinicId,
        String staffId,
        String label,
        Set<ApiScope> scopes,
        Instant createdAt,
        String createdBy,
        Instant expiresAt,
        Optional<Instant> revokedAt,
        Optional<Instant> lastUsedAt) {
    public ApiToken {
        if (!id.matches("[a-z0-9]{12}")) {
            throw new IllegalArgumentException("the id of a token must be 12 small letters and digits");
        }
        if (label.isBlank() || label.length() > 80) {
            throw new IllegalArgumentException("the label of a token must have 1 to 80 characters");
        }
        if (scopes.isEmpty()) {
            throw new IllegalArgumentException("a token needs at least one scope");
        }
        if (!createdAt.isBefore(expiresAt)) {
            throw new IllegalArgumentException("a token must expire after it is made");
        }
        scopes = Collections.unmodifiableSet(EnumSet.copyOf(scopes));
    }

    /** Whether it lets anybody in at some time. */
    public boolean isUsableAt(Instant time) {
        return revokedAt.isEmpty() && time.isBefore(expiresAt);
    }
}
