package slipway.care.record.access;

import java.time.Instant;
import java.util.Optional;

/**
 * A passkey of an account as it is listed; the keys themselves are kept in the tables of the web library.
 *
 * @param id of the credential, in base64url
 */
public record Passkey(String id, String staffId, String label, Instant createdAt, Optional<Instant> lastUsedAt) {}
