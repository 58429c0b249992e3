package slipway.store.person;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.impl.DSL;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.person.People;
import slipway.care.record.person.Person;
import slipway.care.record.person.PersonDetails;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.store.access.Scope;
import slipway.store.access.Scopes;
import slipway.store.db.Db;
import slipway.store.db.Ids;
import slipway.store.tables.EpisodeTable;
import slipway.store.tables.PersonTable;
import slipway.store.tables.TrailEntryTable;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;

/** People in the database. */
public final class PeopleStore implements People {
    private final Db db;
    private final TrailWriter trail;
    private final Ids ids;
    private final Scopes scopes;

    public PeopleStore(Db db, TrailWriter trail, Ids ids, Scopes scopes) {
        this.db = db;
        this.trail = trail;
        this.ids = ids;
        this.scopes = scopes;
    }

    @Override
    public Person add(PersonDetails details, Act act) {
        if (!scopes.of(act).mayAddIn(act.clinicId())) {
            throw new IllegalStateException("role %s of this account may add no people".formatted(act.role()));
        }
        var person = new Person(ids.next(act.at()), act.clinicId(), 1, details, act.at());
        Chain chain = Chain.ofPerson(person.id());
        return trail.write(chain, tx -> {
            tx.insertInto(PersonTable.PERSON)
                    .set(PersonTable.ID, person.id())
                    .set(PersonTable.CLINIC_ID, person.clinicId())
                    .set(PersonTable.VERSION, person.version())
                    .set(PersonTable.CREATED_AT, person.createdAt())
                    .set(PersonTable.CREATED_BY, act.userId())
                    .set(PersonRows.columns(details))
                    .execute();
            PersonRows.putNames(tx, person.clinicId(), person.id(), details.name());
            trail.append(tx, chain, act, Note.created("person", person.id(), 1, details));
            return person;
        });
    }

    @Override
    public Optional<Person> find(String personId, Act act) {
        Scope scope = scopes.of(act);
        Optional<Person> person = db.read(query -> PersonRows.find(query, personId, scope.people()));
        person.ifPresent(found -> trail.noteReading(personId, "person", personId, act));
        return person;
    }

    @Override
    public Saving<Person> change(String personId, long version, PersonDetails details, Act act) {
        Scope scope = scopes.of(act);
        if (db.read(query -> PersonRows.find(query, personId, scope.people())).isEmpty()) {
            throw new NotThere("person", personId);
        }
        Chain chain = Chain.ofPerson(personId);
        return trail.write(chain, tx -> {
            Person before = PersonRows.find(tx, personId, DSL.trueCondition())
                    .orElseThrow(() -> new NotThere("person", personId));
            if (before.version() != version) {
                return new Saving.Stale<>(before);
            }
            trail.append(tx, chain, act, PersonRows.change(tx, before, details));
            return new Saving.Saved<>(
                    PersonRows.find(tx, personId, DSL.trueCondition()).orElseThrow());
        });
    }

    @Override
    public List<String> untouchedSince(Instant before, String afterId, int limit, Act act) {
        Scope scope = scopes.of(act);
        return db.read(query -> query.select(PersonTable.ID)
                .from(PersonTable.PERSON)
                .where(
                        PersonTable.CLINIC_ID.eq(act.clinicId()),
                        PersonTable.ERASED_AT.isNull(),
                        PersonTable.CREATED_AT.lt(before),
                        PersonTable.ID.gt(afterId),
                        scope.people())
                .andNotExists(query.selectOne()
                        .from(EpisodeTable.EPISODE)
                        .where(EpisodeTable.PERSON_ID.eq(PersonTable.ID), EpisodeTable.STATE.ne(EpisodeState.CLOSED)))
                .andNotExists(query.selectOne()
                        .from(TrailEntryTable.TRAIL_ENTRY)
                        .where(
                                TrailEntryTable.CHAIN_KIND.eq(Chain.Kind.PERSON),
                                TrailEntryTable.CHAIN_ID.eq(PersonTable.ID),
                                TrailEntryTable.AT.ge(before),
                                TrailEntryTable.ACTION.ne(Action.READ)))
                .orderBy(PersonTable.ID)
                .limit(limit)
                .fetch(PersonTable.ID));
    }

    @Override
    public void erase(String personId, String reason, Act act) {
        if (reason.isBlank() || reason.length() > Erasure.MAX_REASON) {
            throw new IllegalArgumentException("an erasure needs a reason of at most %d characters, had %d"
                    .formatted(Erasure.MAX_REASON, reason.length()));
        }
        Scope scope = scopes.of(act);
        if (db.read(query -> PersonRows.find(query, personId, scope.people())).isEmpty()) {
            throw new NotThere("person", personId);
        }
        Chain chain = Chain.ofPerson(personId);
        trail.write(chain, tx -> {
            Erasure.of(tx, personId, act.at());
            trail.append(tx, chain, act, Erasure.note(personId, reason));
            return personId;
        });
    }
}
