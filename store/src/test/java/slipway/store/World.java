package slipway.store;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.chart.Chart;
import slipway.care.record.person.Age;
import slipway.care.record.person.Person;
import slipway.care.record.person.PersonDetails;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Side;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A small clinic of invented people on a fresh database. */
final class World implements AutoCloseable {
    static final Instant NOON = Instant.parse("2026-03-02T12:00:00.123456Z");
    static final String CLINIC = "harbour";
    static final Act PROGRAM = new Act("import", Role.PROGRAM, CLINIC, NOON);

    final Databases.Fresh database;
    final Store store;
    final Records records;

    World(Databases kind) {
        database = kind.fresh();
        store = Store.open(database.settings());
        records = store.records();
        records.clinics().add("Harbour Street", "therapy", "", "112", true, PROGRAM);
    }

    /** The act of an account in this clinic at noon. */
    static Act act(StaffAccount account, Role role) {
        return new Act(account.id(), role, account.clinicId(), NOON);
    }

    StaffAccount therapist(String login, Reach reach) {
        return account(login, Role.THERAPIST, reach);
    }

    StaffAccount account(String login, Role role, Reach reach) {
        return records.staff().add(login, "Invented " + login, Set.of(role), reach, "{none}", PROGRAM);
    }

    Person person(String name, Act act) {
        return records.people().add(details(name), act);
    }

    Chart chart(Person person, Act act) {
        return records.charts().begin(person.id(), Side.LEFT, act.userId(), Map.of(), act);
    }

    static PersonDetails details(String name) {
        return new PersonDetails(
                name,
                Optional.of(new Age.Told(48, LocalDate.of(2026, 3, 2))),
                Optional.of("female"),
                OptionalDouble.of(171.5),
                OptionalDouble.empty(),
                Language.EN,
                Optional.empty(),
                Optional.of("invented@example.org"),
                true);
    }

    static ObjectNode json(String text) {
        return (ObjectNode) JsonMapper.shared().readTree(text);
    }

    @Override
    public void close() {
        store.close();
        database.close();
    }
}
