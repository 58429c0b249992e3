package slipway.care.record.access;

import java.time.Instant;
import java.util.Optional;

/**
 * What signing in needs.
 *
 * @param passwordHash in the encoding of whoever hashes; never the password
 * @param totpSecret secret of the second factor, sealed by whoever gives it; empty if there is none
 * @param failures failed attempts in a row
 * @param nextAllowedAt before this no attempt is taken
 */
public record Credentials(
        StaffAccount account,
        String passwordHash,
        Optional<String> totpSecret,
        int failures,
        Optional<Instant> nextAllowedAt) {
    /** Says nothing secret: this may end in a log. */
    @Override
    public String toString() {
        return "credentials of account " + account.id();
    }
}
