package slipway.web;

import java.time.Instant;
import java.util.Optional;

/** Where sessions of staff are kept, so that a restart or another server does not sign anybody out. */
public interface SessionShelf {
    /**
     * A session as kept.
     *
     * @param id a secret of the browser; only its digest needs to be kept
     * @param content what the session holds, for whoever made it
     */
    record Kept(String id, byte[] content, Instant lastSeenAt, Instant expiresAt) {
        public Kept {
            content = content.clone();
        }

        /** A copy. */
        @Override
        public byte[] content() {
            return content.clone();
        }
    }

    void save(Kept session);

    /** A session that has not expired. */
    Optional<Kept> find(String id, Instant now);

    void delete(String id);

    /** Drops what has expired. */
    void sweep(Instant now);
}
