package slipway.store.access;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jooq.DSLContext;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Role;
import slipway.care.record.Saving;
import slipway.care.record.access.Credentials;
import slipway.care.record.access.Grant;
import slipway.care.record.access.Reach;
import slipway.care.record.access.Staff;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.access.Team;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.store.db.Db;
import slipway.store.db.Ids;
import slipway.store.session.SessionStore;
import slipway.store.tables.StaffTable;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;

/** Accounts in the database. Their trail is that of their clinic. */
public final class StaffStore implements Staff {
    private final Db db;
    private final TrailWriter trail;
    private final Ids ids;
    private final Teams teams;
    private final Grants grants;

    public StaffStore(Db db, TrailWriter trail, Ids ids) {
        this.db = db;
        this.trail = trail;
        this.ids = ids;
        this.teams = new Teams(db, trail, ids);
        this.grants = new Grants(db, trail, ids);
    }

    @Override
    public StaffAccount add(
            String login, String displayName, Set<Role> roles, Reach reach, String passwordHash, Act act) {
        var account = new StaffAccount(ids.next(act.at()), login, displayName, act.clinicId(), roles, reach, true, 1);
        return trail.write(Chain.ofClinic(act.clinicId()), tx -> {
            if (tx.fetchExists(tx.selectOne().from(StaffTable.STAFF).where(StaffTable.LOGIN.eq(login)))) {
                throw new IllegalArgumentException("this login is taken");
            }
            tx.insertInto(StaffTable.STAFF)
                    .set(StaffTable.ID, account.id())
                    .set(StaffTable.CLINIC_ID, account.clinicId())
                    .set(StaffTable.LOGIN, login)
                    .set(StaffTable.DISPLAY_NAME, displayName)
                    .set(StaffTable.ROLES, StaffRows.text(roles))
                    .set(StaffTable.REACH, reach)
                    .set(StaffTable.ACTIVE, true)
                    .set(StaffTable.PASSWORD_HASH, passwordHash)
                    .set(StaffTable.TOTP_STEP, 0L)
                    .set(StaffTable.FAILURES, 0)
                    .set(StaffTable.VERSION, 1L)
                    .execute();
            note(tx, account, act, Note.created("staff", account.id(), 1, account));
            return account;
        });
    }

    @Override
    public Optional<StaffAccount> find(String staffId) {
        return db.read(query -> StaffRows.find(query, staffId));
    }

    @Override
    public Optional<Credentials> credentials(String login) {
        return db.read(query -> query.select(StaffRows.FIELDS)
                .select(
                        StaffTable.PASSWORD_HASH,
                        StaffTable.TOTP_SECRET,
                        StaffTable.FAILURES,
                        StaffTable.NEXT_ALLOWED_AT)
                .from(StaffTable.STAFF)
                .where(StaffTable.LOGIN.eq(login))
                .fetchOptional(StaffRows::credentials));
    }

    @Override
    public List<StaffAccount> list(String clinicId) {
        return db.read(query -> query.select(StaffRows.FIELDS)
                .from(StaffTable.STAFF)
                .where(StaffTable.CLINIC_ID.eq(clinicId))
                .orderBy(StaffTable.DISPLAY_NAME, StaffTable.ID)
                .fetch(StaffRows::account));
    }

    @Override
    public Saving<StaffAccount> change(StaffAccount account, Act act) {
        return withAccount(account.id(), act, (tx, before) -> {
            if (before.version() != account.version()) {
                return new Saving.Stale<>(before);
            }
            var after = new StaffAccount(
                    before.id(),
                    before.login(),
                    account.displayName(),
                    before.clinicId(),
                    account.roles(),
                    account.reach(),
                    account.active(),
                    before.version() + 1);
            tx.update(StaffTable.STAFF)
                    .set(StaffTable.DISPLAY_NAME, after.displayName())
                    .set(StaffTable.ROLES, StaffRows.text(after.roles()))
                    .set(StaffTable.REACH, after.reach())
                    .set(StaffTable.ACTIVE, after.active())
                    .set(StaffTable.VERSION, after.version())
                    .where(StaffTable.ID.eq(after.id()))
                    .execute();
            if (!after.active() || !after.roles().equals(before.roles())) {
                SessionStore.endAll(tx, after.id());
            }
            note(tx, after, act, Note.changed("staff", after.id(), after.version(), before, after));
            return new Saving.Saved<>(after);
        });
    }

    @Override
    public void setPassword(String staffId, String passwordHash, Act act) {
        withAccount(staffId, act, (tx, account) -> {
            tx.update(StaffTable.STAFF)
                    .set(StaffTable.PASSWORD_HASH, passwordHash)
                    .set(StaffTable.FAILURES, 0)
                    .setNull(StaffTable.NEXT_ALLOWED_AT)
                    .where(StaffTable.ID.eq(staffId))
                    .execute();
            SessionStore.endAll(tx, staffId);
            note(tx, account, act, Note.plain(Action.CHANGE, "staff/password", staffId));
            return account;
        });
    }

    @Override
    public void rehash(String staffId, String passwordHash) {
        db.write(tx -> tx.update(StaffTable.STAFF)
                .set(StaffTable.PASSWORD_HASH, passwordHash)
                .where(StaffTable.ID.eq(staffId))
                .execute());
    }

    @Override
    public void setTotp(String staffId, Optional<String> sealedSecret, Act act) {
        withAccount(staffId, act, (tx, account) -> {
            tx.update(StaffTable.STAFF)
                    .set(StaffTable.TOTP_SECRET, sealedSecret.orElse(null))
                    .where(StaffTable.ID.eq(staffId))
                    .execute();
            String entity = sealedSecret.isPresent() ? "staff/second-factor" : "staff/second-factor-removed";
            note(tx, account, act, Note.plain(Action.CHANGE, entity, staffId));
            return account;
        });
    }

    @Override
    public boolean useTotpStep(String staffId, long timeStep) {
        return db.write(tx -> tx.update(StaffTable.STAFF)
                        .set(StaffTable.TOTP_STEP, timeStep)
                        .where(StaffTable.ID.eq(staffId), StaffTable.TOTP_STEP.lt(timeStep))
                        .execute())
                == 1;
    }

    @Override
    public void signedIn(String staffId, Act act) {
        withAccount(staffId, act, (tx, account) -> {
            tx.update(StaffTable.STAFF)
                    .set(StaffTable.FAILURES, 0)
                    .setNull(StaffTable.NEXT_ALLOWED_AT)
                    .where(StaffTable.ID.eq(staffId))
                    .execute();
            note(tx, account, act, Note.plain(Action.SIGN_IN, "staff", staffId));
            return account;
        });
    }

    @Override
    public void signedOut(String staffId, Act act) {
        withAccount(staffId, act, (tx, account) -> {
            note(tx, account, act, Note.plain(Action.SIGN_OUT, "staff", staffId));
            return account;
        });
    }

    @Override
    public boolean countAttempt(String staffId, int failures, Instant nextAllowedAt) {
        return Attempts.count(db, staffId, failures, nextAllowedAt);
    }

    @Override
    public void uncountAttempt(Credentials before) {
        Attempts.uncount(db, before);
    }

    @Override
    public void failed(String staffId, Act act) {
        withAccount(staffId, act, (tx, account) -> {
            note(tx, account, act, Note.plain(Action.SIGN_IN_FAILED, "staff", staffId));
            return account;
        });
    }

    @Override
    public List<Team> teams(String clinicId) {
        return teams.list(clinicId);
    }

    @Override
    public Team addTeam(String name, Set<String> memberIds, Act act) {
        return teams.add(name, memberIds, act);
    }

    @Override
    public void changeTeam(Team team, Act act) {
        teams.change(team, act);
    }

    @Override
    public void removeTeam(String teamId, Act act) {
        teams.remove(teamId, act);
    }

    @Override
    public Grant breakGlass(String personId, String reason, Instant until, Act act) {
        return grants.add(personId, reason, until, act);
    }

    @Override
    public Grant breakGlassForEpisode(String episodeId, String reason, Instant until, Act act) {
        return grants.addForEpisode(episodeId, reason, until, act);
    }

    @Override
    public List<Grant> grants(String clinicId, Instant since) {
        return grants.list(clinicId, since);
    }

    private interface Work<T> {
        T on(DSLContext tx, StaffAccount account);
    }

    /** Runs a transaction on an account of the clinic of the act. */
    private <T> T withAccount(String staffId, Act act, Work<T> work) {
        Function<DSLContext, T> transaction = tx -> work.on(
                tx,
                StaffRows.find(tx, staffId)
                        .filter(found -> found.clinicId().equals(act.clinicId()))
                        .orElseThrow(() -> new NotThere("account", staffId)));
        return trail.write(Chain.ofClinic(act.clinicId()), transaction);
    }

    private void note(DSLContext tx, StaffAccount account, Act act, Note note) {
        trail.append(tx, Chain.ofClinic(account.clinicId()), act, note);
    }
}
