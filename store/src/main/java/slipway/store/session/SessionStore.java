package slipway.store.session;

import java.time.Instant;
import java.util.Optional;
import slipway.care.record.trail.TrailForm;
import slipway.store.db.Db;
import slipway.store.tables.StaffSessionTable;

/** Sessions. The id is a secret, so that only its SHA-256 is in the database: whoever reads a backup is not signed in. */
public final class SessionStore {
    private final Db db;

    public SessionStore(Db db) {
        this.db = db;
    }

    /** Keeps a session in place of what was kept under its id. */
    public void save(KeptSession session) {
        db.write(tx -> tx.insertInto(StaffSessionTable.STAFF_SESSION)
                .set(StaffSessionTable.ID_SHA256, TrailForm.sha256(session.id()))
                .set(StaffSessionTable.CONTENT, session.content())
                .set(StaffSessionTable.LAST_SEEN_AT, session.lastSeenAt())
                .set(StaffSessionTable.EXPIRES_AT, session.expiresAt())
                .onConflict(StaffSessionTable.ID_SHA256)
                .doUpdate()
                .set(StaffSessionTable.CONTENT, session.content())
                .set(StaffSessionTable.LAST_SEEN_AT, session.lastSeenAt())
                .set(StaffSessionTable.EXPIRES_AT, session.expiresAt())
                .execute());
    }

    /** A session that has not expired. */
    public Optional<KeptSession> find(String id, Instant now) {
        return db.read(query -> query.select(
                        StaffSessionTable.CONTENT, StaffSessionTable.LAST_SEEN_AT, StaffSessionTable.EXPIRES_AT)
                .from(StaffSessionTable.STAFF_SESSION)
                .where(StaffSessionTable.ID_SHA256.eq(TrailForm.sha256(id)), StaffSessionTable.EXPIRES_AT.gt(now))
                .fetchOptional(row -> new KeptSession(id, row.value1(), row.value2(), row.value3())));
    }

    /** Drops a session; nothing happens if there is none. */
    public void delete(String id) {
        db.write(tx -> tx.deleteFrom(StaffSessionTable.STAFF_SESSION)
                .where(StaffSessionTable.ID_SHA256.eq(TrailForm.sha256(id)))
                .execute());
    }

    /** Drops what has expired; gives how many. */
    public int deleteExpired(Instant now) {
        return db.write(tx -> tx.deleteFrom(StaffSessionTable.STAFF_SESSION)
                .where(StaffSessionTable.EXPIRES_AT.le(now))
                .execute());
    }
}
