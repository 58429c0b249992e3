package slipway.store.access;

import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.access.KeptPasskey;
import slipway.care.record.access.Passkey;
import slipway.care.record.access.PasskeyKey;
import slipway.care.record.access.PasskeyUse;
import slipway.care.record.access.Passkeys;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.store.db.Db;
import slipway.store.db.Ids;
import slipway.store.tables.PasskeyTable;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;

/** Passkeys in the database. */
public final class PasskeyStore implements Passkeys {
    private static final String ENTITY = "passkey";
    private static final List<Field<?>> FIELDS = List.of(
            PasskeyTable.ID,
            PasskeyTable.CREDENTIAL_ID,
            PasskeyTable.STAFF_ID,
            PasskeyTable.LABEL,
            PasskeyTable.CREATED_AT,
            PasskeyTable.LAST_USED_AT,
            PasskeyTable.PUBLIC_KEY,
            PasskeyTable.SIGNATURE_COUNT,
            PasskeyTable.BACKUP_ELIGIBLE,
            PasskeyTable.BACKED_UP);

    private final Db db;
    private final TrailWriter trail;
    private final Ids ids;

    public PasskeyStore(Db db, TrailWriter trail, Ids ids) {
        this.db = db;
        this.trail = trail;
        this.ids = ids;
    }

    @Override
    public List<Passkey> list(String staffId) {
        return db.read(query -> list(query, PasskeyTable.STAFF_ID.eq(staffId)));
    }

    private static List<Passkey> list(DSLContext query, Condition... which) {
        return query.select(FIELDS)
                .from(PasskeyTable.PASSKEY)
                .where(which)
                .orderBy(PasskeyTable.CREATED_AT, PasskeyTable.ID)
                .fetch(PasskeyStore::passkey);
    }

    @Override
    public Passkey add(String staffId, String credentialId, String label, PasskeyKey key, Act act) {
        var passkey = new Passkey(ids.next(act.at()), credentialId, staffId, label, act.at(), Optional.empty());
        Chain chain = Chain.ofClinic(act.clinicId());
        return trail.write(chain, tx -> {
            needAccount(tx, staffId, act);
            if (!list(tx, PasskeyTable.CREDENTIAL_ID.eq(credentialId)).isEmpty()) {
                throw new IllegalArgumentException("this passkey is known already");
            }
            tx.insertInto(PasskeyTable.PASSKEY)
                    .set(PasskeyTable.ID, passkey.id())
                    .set(PasskeyTable.STAFF_ID, staffId)
                    .set(PasskeyTable.CREDENTIAL_ID, credentialId)
                    .set(PasskeyTable.PUBLIC_KEY, key.publicKey())
                    .set(PasskeyTable.SIGNATURE_COUNT, key.signatureCount())
                    .set(PasskeyTable.BACKUP_ELIGIBLE, key.backupEligible())
                    .set(PasskeyTable.BACKED_UP, key.backedUp())
                    .set(PasskeyTable.LABEL, label)
                    .set(PasskeyTable.CREATED_AT, passkey.createdAt())
                    .execute();
            trail.append(tx, chain, act, Note.created(ENTITY, passkey.id(), 1, passkey));
            return passkey;
        });
    }

    @Override
    public Optional<KeptPasskey> find(String credentialId) {
        return db.read(query -> query.select(FIELDS)
                .from(PasskeyTable.PASSKEY)
                .where(PasskeyTable.CREDENTIAL_ID.eq(credentialId))
                .fetchOptional(row -> new KeptPasskey(passkey(row), key(row))));
    }

    @Override
    public boolean use(PasskeyUse use) {
        Condition newChallenge = PasskeyTable.LAST_CHALLENGE_SHA256
                .isNull()
                .or(PasskeyTable.LAST_CHALLENGE_SHA256.ne(use.challengeSha256()));
        Condition notBack = use.signatureCount() == 0
                ? PasskeyTable.SIGNATURE_COUNT.eq(0L)
                : PasskeyTable.SIGNATURE_COUNT.lt(use.signatureCount());
        return db.write(tx -> tx.update(PasskeyTable.PASSKEY)
                        .set(PasskeyTable.SIGNATURE_COUNT, use.signatureCount())
                        .set(PasskeyTable.BACKED_UP, use.backedUp())
                        .set(PasskeyTable.LAST_USED_AT, use.at())
                        .set(PasskeyTable.LAST_CHALLENGE_SHA256, use.challengeSha256())
                        .where(PasskeyTable.ID.eq(use.passkeyId()), newChallenge, notBack)
                        .execute())
                == 1;
    }

    @Override
    public void countWentBack(Passkey passkey, Act act) {
        Chain chain = Chain.ofClinic(act.clinicId());
        trail.write(chain, tx -> {
            needAccount(tx, passkey.staffId(), act);
            trail.append(tx, chain, act, Note.plain(Action.SIGN_IN_FAILED, ENTITY + "/count-went-back", passkey.id()));
            return passkey;
        });
    }

    @Override
    public void remove(String staffId, String passkeyId, Act act) {
        trail.write(Chain.ofClinic(act.clinicId()), tx -> {
            needAccount(tx, staffId, act);
            List<Passkey> found = list(tx, PasskeyTable.ID.eq(passkeyId), PasskeyTable.STAFF_ID.eq(staffId));
            if (found.isEmpty()) {
                throw new NotThere(ENTITY, passkeyId);
            }
            return remove(tx, found, act);
        });
    }

    @Override
    public void removeAll(String staffId, Act act) {
        trail.write(Chain.ofClinic(act.clinicId()), tx -> {
            needAccount(tx, staffId, act);
            return remove(tx, list(tx, PasskeyTable.STAFF_ID.eq(staffId)), act);
        });
    }

    private List<Passkey> remove(DSLContext tx, List<Passkey> passkeys, Act act) {
        for (Passkey passkey : passkeys) {
            tx.deleteFrom(PasskeyTable.PASSKEY)
                    .where(PasskeyTable.ID.eq(passkey.id()))
                    .execute();
            trail.append(
                    tx,
                    Chain.ofClinic(act.clinicId()),
                    act,
                    Note.plain(Action.CHANGE, ENTITY + "/removed", passkey.id()));
        }
        return passkeys;
    }

    private static void needAccount(DSLContext tx, String staffId, Act act) {
        boolean ours = StaffRows.find(tx, staffId)
                .filter(account -> account.clinicId().equals(act.clinicId()))
                .isPresent();
        if (!ours) {
            throw new NotThere("account", staffId);
        }
    }

    private static Passkey passkey(Record row) {
        return new Passkey(
                row.get(PasskeyTable.ID),
                row.get(PasskeyTable.CREDENTIAL_ID),
                row.get(PasskeyTable.STAFF_ID),
                row.get(PasskeyTable.LABEL),
                row.get(PasskeyTable.CREATED_AT),
                Optional.ofNullable(row.get(PasskeyTable.LAST_USED_AT)));
    }

    private static PasskeyKey key(Record row) {
        return new PasskeyKey(
                row.get(PasskeyTable.PUBLIC_KEY),
                row.get(PasskeyTable.SIGNATURE_COUNT),
                row.get(PasskeyTable.BACKUP_ELIGIBLE),
                row.get(PasskeyTable.BACKED_UP));
    }
}
