package slipway.store.remind;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Role;
import slipway.care.record.person.Person;
import slipway.care.record.remind.Consent;
import slipway.care.record.remind.Due;
import slipway.care.record.remind.MailFault;
import slipway.care.record.remind.Reminders;
import slipway.care.record.remind.SendingReport;
import slipway.care.record.trail.Chain;
import slipway.store.access.Scope;
import slipway.store.access.Scopes;
import slipway.store.db.Db;
import slipway.store.person.PersonRows;
import slipway.store.tables.ReminderStopTable;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;

/** Reminders in the database. What a person says is in their trail; what was sent is not, its rows tell it. */
public final class ReminderStore implements Reminders {
    private static final String ENTITY = "reminders";

    private final Db db;
    private final TrailWriter trail;
    private final Scopes scopes;
    private final Days days;

    public ReminderStore(Db db, TrailWriter trail, Scopes scopes) {
        this.db = db;
        this.trail = trail;
        this.scopes = scopes;
        this.days = new Days(db);
    }

    @Override
    public Optional<Consent> consent(String personId, Act act) {
        Scope scope = scopes.of(act);
        return db.read(query -> PersonRows.find(query, personId, scope.people())
                .flatMap(person -> ConsentRows.find(query, person.id())));
    }

    @Override
    public Consent agree(String personId, int hour, Act act) {
        Consent.requireHour(hour);
        Scope scope = scopes.of(act);
        Chain chain = Chain.ofPerson(personId);
        return trail.write(chain, tx -> {
            Person person =
                    PersonRows.find(tx, personId, scope.people()).orElseThrow(() -> new NotThere("person", personId));
            String address = person.details()
                    .email()
                    .orElseThrow(() -> new IllegalStateException("no address is recorded for " + personId));
            var after = new Consent(hour, Consent.digest(address), act.at(), act.userId(), Optional.empty(), false);
            Optional<Consent> before = ConsentRows.find(tx, personId);
            ConsentRows.put(tx, personId, after);
            trail.append(tx, chain, act, note(personId, before, after));
            return after;
        });
    }

    @Override
    public void end(String personId, Act act) {
        Scope scope = scopes.of(act);
        if (db.read(query -> PersonRows.find(query, personId, scope.people())).isEmpty()) {
            throw new NotThere("person", personId);
        }
        end(personId, false, act);
    }

    private void end(String personId, boolean byPerson, Act act) {
        Chain chain = Chain.ofPerson(personId);
        trail.write(chain, tx -> {
            Optional<Consent> before = ConsentRows.find(tx, personId).filter(Consent::holds);
            before.ifPresent(held -> {
                var after = new Consent(
                        held.hour(),
                        held.addressSha256(),
                        held.saidAt(),
                        held.writtenBy(),
                        Optional.of(act.at()),
                        byPerson);
                ConsentRows.put(tx, personId, after);
                trail.append(tx, chain, act, note(personId, before, after));
            });
            return before.isPresent();
        });
    }

    private static Note note(String personId, Optional<Consent> before, Consent after) {
        return before.map(old -> Note.changed(ENTITY, personId, 0, old, after))
                .orElseGet(() -> Note.created(ENTITY, personId, 0, after));
    }

    @Override
    public boolean knowsStop(String tokenSha256) {
        return personOf(tokenSha256).isPresent();
    }

    private Optional<Person> personOf(String tokenSha256) {
        return db.read(query -> query.select(ReminderStopTable.PERSON_ID)
                .from(ReminderStopTable.REMINDER_STOP)
                .where(ReminderStopTable.TOKEN_SHA256.eq(tokenSha256))
                .fetchOptional(ReminderStopTable.PERSON_ID)
                .flatMap(id -> PersonRows.find(query, id, new Scope.Everything().people())));
    }

    @Override
    public boolean stop(String tokenSha256, Instant at) {
        Optional<Person> person = personOf(tokenSha256);
        person.ifPresent(found -> end(found.id(), true, new Act("reminder-link", Role.PATIENT, found.clinicId(), at)));
        return person.isPresent();
    }

    @Override
    public List<Due> due(LocalDate day, int hour, Instant now, int most) {
        return db.read(query -> DueQuery.of(query, day, hour, now, most));
    }

    @Override
    public boolean take(Due due, LocalDate day, String stopSha256, Instant now, Instant again) {
        return days.take(due, day, stopSha256, now, again);
    }

    @Override
    public void sent(String personId, LocalDate day, Instant now) {
        days.sent(personId, day, now);
    }

    @Override
    public void failed(String personId, LocalDate day, MailFault fault, Instant now, Optional<Instant> again) {
        days.failed(personId, day, fault, now, again);
    }

    @Override
    public void notNeeded(Due due, LocalDate day, Instant now) {
        days.notNeeded(due, day, now);
    }

    @Override
    public SendingReport report(String clinicId, LocalDate since) {
        return days.report(clinicId, since);
    }

    @Override
    public void giveUpBefore(LocalDate day, Instant now) {
        days.giveUpBefore(day, now);
    }

    @Override
    public void purge(LocalDate day) {
        days.purge(day);
    }
}
