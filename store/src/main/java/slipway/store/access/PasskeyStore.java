package slipway.store.access;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.access.Passkey;
import slipway.care.record.access.Passkeys;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.store.db.Db;
import slipway.store.tables.StaffTable;
import slipway.store.tables.UserCredentialsTable;
import slipway.store.tables.UserEntitiesTable;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;

/** Passkeys, which the web library writes; its user entities carry the login as name. */
public final class PasskeyStore implements Passkeys {
    private final Db db;
    private final TrailWriter trail;

    public PasskeyStore(Db db, TrailWriter trail) {
        this.db = db;
        this.trail = trail;
    }

    @Override
    public List<Passkey> list(String staffId) {
        return db.read(query -> query.select(
                        UserCredentialsTable.CREDENTIAL_ID,
                        UserCredentialsTable.LABEL,
                        UserCredentialsTable.CREATED,
                        UserCredentialsTable.LAST_USED)
                .from(UserCredentialsTable.USER_CREDENTIALS)
                .join(UserEntitiesTable.USER_ENTITIES)
                .on(UserEntitiesTable.ID.eq(UserCredentialsTable.USER_ENTITY_USER_ID))
                .join(StaffTable.STAFF)
                .on(StaffTable.LOGIN.eq(UserEntitiesTable.NAME))
                .where(StaffTable.ID.eq(staffId))
                .orderBy(UserCredentialsTable.CREDENTIAL_ID)
                .fetch(row -> passkey(row, staffId)));
    }

    private static Passkey passkey(Record row, String staffId) {
        return new Passkey(
                row.get(UserCredentialsTable.CREDENTIAL_ID),
                staffId,
                row.get(UserCredentialsTable.LABEL),
                instant(row.get(UserCredentialsTable.CREATED)).orElse(Instant.EPOCH),
                instant(row.get(UserCredentialsTable.LAST_USED)));
    }

    /** The web library writes timestamps without a zone, in that of the machine. */
    private static Optional<Instant> instant(@Nullable LocalDateTime written) {
        return Optional.ofNullable(written)
                .map(time -> time.atZone(ZoneId.systemDefault()).toInstant());
    }

    @Override
    public void remove(String passkeyId, Act act) {
        Chain chain = Chain.ofClinic(act.clinicId());
        trail.write(chain, tx -> {
            int removed = tx.deleteFrom(UserCredentialsTable.USER_CREDENTIALS)
                    .where(UserCredentialsTable.CREDENTIAL_ID.eq(passkeyId))
                    .execute();
            if (removed == 0) {
                throw new NotThere("passkey", passkeyId);
            }
            trail.append(tx, chain, act, Note.plain(Action.CHANGE, "passkey/removed", passkeyId));
            return removed;
        });
    }
}
