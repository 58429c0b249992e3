package slipway.store.session;

import java.time.Instant;
import java.util.Optional;

/**
 * A session as kept.
 *
 * @param id the secret of the browser
 * @param staffId account that is signed in by it; empty before anybody is
 * @param content what the session holds; a copy
 * @param expiresAt it is found before this time only
 */
public record KeptSession(String id, Optional<String> staffId, byte[] content, Instant lastSeenAt, Instant expiresAt) {
    public KeptSession {
        content = content.clone();
    }

    /** A copy of the content. */
    @Override
    public byte[] content() {
        return content.clone();
    }

    /** Says nothing secret: this may end in a log. */
    @Override
    public String toString() {
        return "session until " + expiresAt;
    }
}
