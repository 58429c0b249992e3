package slipway.app.serve;

import java.time.Instant;
import java.util.Optional;
import slipway.store.session.KeptSession;
import slipway.store.session.SessionStore;
import slipway.web.SessionShelf;

/** Sessions of the pages in the store. */
record StoreShelf(SessionStore store) implements SessionShelf {
    @Override
    public void save(Kept session) {
        store.save(new KeptSession(session.id(), session.content(), session.lastSeenAt(), session.expiresAt()));
    }

    @Override
    public Optional<Kept> find(String id, Instant now) {
        return store.find(id, now)
                .map(kept -> new Kept(kept.id(), kept.content(), kept.lastSeenAt(), kept.expiresAt()));
    }

    @Override
    public void delete(String id) {
        store.delete(id);
    }

    @Override
    public void sweep(Instant now) {
        store.deleteExpired(now);
    }
}
