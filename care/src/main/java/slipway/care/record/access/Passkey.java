package slipway.care.record.access;

import java.time.Instant;
import java.util.Optional;

/**
 * A passkey of an account as it is listed: a key pair whose secret half never leaves the device or the store of keys of
 * its owner (W3C Web Authentication).
 *
 * @param id ours
 * @param credentialId as the device names it, in base64url; unique over all accounts
 * @param label what its owner calls it, 1 to 80 characters
 */
public record Passkey(
        String id, String credentialId, String staffId, String label, Instant createdAt, Optional<Instant> lastUsedAt) {
    /** A credential id has at most 1023 bytes (W3C Web Authentication, level 3, section 4). */
    public static final int LONGEST_ID = 1364;

    private static final int LONGEST_LABEL = 80;

    public Passkey {
        if (!credentialId.matches("[A-Za-z0-9_-]{1," + LONGEST_ID + "}")) {
            throw new IllegalArgumentException("the id of a credential must be 1 to 1364 characters of base64url");
        }
        if (!isLabel(label)) {
            throw new IllegalArgumentException("the name of a passkey must have 1 to 80 characters");
        }
    }

    /** Whether a passkey may be called so. */
    public static boolean isLabel(String label) {
        return !label.isBlank()
                && label.length() <= LONGEST_LABEL
                && label.codePoints().noneMatch(Character::isISOControl);
    }
}
