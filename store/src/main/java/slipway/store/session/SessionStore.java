package slipway.store.session;

import java.time.Instant;
import java.util.Optional;
import org.jooq.DSLContext;
import slipway.care.record.trail.TrailForm;
import slipway.store.db.Db;
import slipway.store.tables.StaffSessionTable;
import slipway.store.tables.StaffTable;

/** Sessions. The id is a secret, so that only its SHA-256 is in the database: whoever reads a backup is not signed in. */
public final class SessionStore {
    private final Db db;

    public SessionStore(Db db) {
        this.db = db;
    }

    /** Keeps a session that was not kept before under its id. */
    public void add(KeptSession session) {
        db.write(tx -> tx.insertInto(StaffSessionTable.STAFF_SESSION)
                .set(StaffSessionTable.ID_SHA256, TrailForm.sha256(session.id()))
                .set(StaffSessionTable.STAFF_ID, session.staffId().orElse(null))
                .set(StaffSessionTable.CONTENT, session.content())
                .set(StaffSessionTable.LAST_SEEN_AT, session.lastSeenAt())
                .set(StaffSessionTable.EXPIRES_AT, session.expiresAt())
                .execute());
    }

    /**
     * Keeps a session in place of what was kept under its id. One that was dropped meanwhile stays away: an answer that
     * was under way then must not bring it back.
     */
    public void change(KeptSession session) {
        db.write(tx -> tx.update(StaffSessionTable.STAFF_SESSION)
                .set(StaffSessionTable.STAFF_ID, session.staffId().orElse(null))
                .set(StaffSessionTable.CONTENT, session.content())
                .set(StaffSessionTable.LAST_SEEN_AT, session.lastSeenAt())
                .set(StaffSessionTable.EXPIRES_AT, session.expiresAt())
                .where(StaffSessionTable.ID_SHA256.eq(TrailForm.sha256(session.id())))
                .execute());
    }

    /** A session that has not expired and whose account, if it has one, is not blocked. */
    public Optional<KeptSession> find(String id, Instant now) {
        return db.read(query -> query.select(
                        StaffSessionTable.STAFF_ID,
                        StaffSessionTable.CONTENT,
                        StaffSessionTable.LAST_SEEN_AT,
                        StaffSessionTable.EXPIRES_AT)
                .from(StaffSessionTable.STAFF_SESSION)
                .leftJoin(StaffTable.STAFF)
                .on(StaffTable.ID.eq(StaffSessionTable.STAFF_ID))
                .where(
                        StaffSessionTable.ID_SHA256.eq(TrailForm.sha256(id)),
                        StaffSessionTable.EXPIRES_AT.gt(now),
                        StaffSessionTable.STAFF_ID.isNull().or(StaffTable.ACTIVE.isTrue()))
                .fetchOptional(row -> new KeptSession(
                        id, Optional.ofNullable(row.value1()), row.value2(), row.value3(), row.value4())));
    }

    /** Drops all sessions of an account, within the change of the account that asks for it. */
    public static void endAll(DSLContext tx, String staffId) {
        tx.deleteFrom(StaffSessionTable.STAFF_SESSION)
                .where(StaffSessionTable.STAFF_ID.eq(staffId))
                .execute();
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
