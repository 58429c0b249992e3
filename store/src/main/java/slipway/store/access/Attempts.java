package slipway.store.access;

import java.time.Instant;
import slipway.care.record.access.Credentials;
import slipway.store.db.Db;
import slipway.store.tables.StaffTable;

/** Attempts to sign in, counted where all servers see them; each change holds only if nobody else changed meanwhile. */
final class Attempts {
    private Attempts() {}

    static boolean count(Db db, String staffId, int failures, Instant nextAllowedAt) {
        return db.write(tx -> tx.update(StaffTable.STAFF)
                        .set(StaffTable.FAILURES, failures + 1)
                        .set(StaffTable.NEXT_ALLOWED_AT, nextAllowedAt)
                        .where(StaffTable.ID.eq(staffId), StaffTable.FAILURES.eq(failures))
                        .execute()
                == 1);
    }

    static void uncount(Db db, Credentials before) {
        db.write(tx -> tx.update(StaffTable.STAFF)
                .set(StaffTable.FAILURES, before.failures())
                .set(StaffTable.NEXT_ALLOWED_AT, before.nextAllowedAt().orElse(null))
                .where(StaffTable.ID.eq(before.account().id()), StaffTable.FAILURES.eq(before.failures() + 1))
                .execute());
    }
}
