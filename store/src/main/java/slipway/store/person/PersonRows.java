package slipway.store.person;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;
import slipway.care.record.person.Age;
import slipway.care.record.person.Person;
import slipway.care.record.person.PersonDetails;
import slipway.exercises.exercise.Language;
import slipway.store.tables.PersonNameTable;
import slipway.store.tables.PersonTable;
import slipway.store.trail.Note;

/** Rows of people. */
public final class PersonRows {
    private static final List<Field<?>> FIELDS = List.of(
            PersonTable.ID,
            PersonTable.CLINIC_ID,
            PersonTable.VERSION,
            PersonTable.CREATED_AT,
            PersonTable.NAME,
            PersonTable.BIRTH_DATE,
            PersonTable.AGE_YEARS,
            PersonTable.AGE_TOLD_ON,
            PersonTable.SEX,
            PersonTable.STATURE_CM,
            PersonTable.MASS_KG,
            PersonTable.LANGUAGE,
            PersonTable.PHONE,
            PersonTable.EMAIL,
            PersonTable.INVENTED);

    private PersonRows() {}

    /** A person who was not erased and meets a condition. */
    public static Optional<Person> find(DSLContext query, String personId, Condition condition) {
        return query.select(FIELDS)
                .from(PersonTable.PERSON)
                .where(PersonTable.ID.eq(personId), PersonTable.ERASED_AT.isNull(), condition)
                .fetchOptional(PersonRows::person);
    }

    /** Writes new details of a person within a transaction; gives what the trail has to say of it. */
    public static Note change(DSLContext tx, Person before, PersonDetails details) {
        long version = before.version() + 1;
        tx.update(PersonTable.PERSON)
                .set(PersonTable.VERSION, version)
                .set(columns(details))
                .where(PersonTable.ID.eq(before.id()))
                .execute();
        putNames(tx, before.clinicId(), before.id(), details.name());
        return Note.changed("person", before.id(), version, before.details(), details);
    }

    private static Person person(Record row) {
        return new Person(
                row.get(PersonTable.ID),
                row.get(PersonTable.CLINIC_ID),
                row.get(PersonTable.VERSION),
                new PersonDetails(
                        row.get(PersonTable.NAME),
                        age(row),
                        Optional.ofNullable(row.get(PersonTable.SEX)),
                        number(row.get(PersonTable.STATURE_CM)),
                        number(row.get(PersonTable.MASS_KG)),
                        Language.find(row.get(PersonTable.LANGUAGE)).orElseThrow(),
                        Optional.ofNullable(row.get(PersonTable.PHONE)),
                        Optional.ofNullable(row.get(PersonTable.EMAIL)),
                        row.get(PersonTable.INVENTED)),
                row.get(PersonTable.CREATED_AT));
    }

    /** The age of a row that has the three columns of it. */
    public static Optional<Age> age(Record row) {
        Optional<Age> born =
                Optional.ofNullable(row.get(PersonTable.BIRTH_DATE)).map(Age.Born::new);
        return born.isPresent()
                ? born
                : Optional.ofNullable(row.get(PersonTable.AGE_YEARS))
                        .map(years -> new Age.Told(years, row.get(PersonTable.AGE_TOLD_ON)));
    }

    private static OptionalDouble number(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** The columns of the details, with their values; null for what is not known. */
    static Map<Field<?>, @Nullable Object> columns(PersonDetails details) {
        Map<Field<?>, @Nullable Object> columns = new LinkedHashMap<>();
        Optional<Age> age = details.age();
        columns.put(PersonTable.NAME, details.name());
        columns.put(PersonTable.BIRTH_DATE, age.map(PersonRows::birthDate).orElse(null));
        columns.put(PersonTable.AGE_YEARS, told(age).map(Age.Told::years).orElse(null));
        columns.put(PersonTable.AGE_TOLD_ON, told(age).map(Age.Told::on).orElse(null));
        columns.put(PersonTable.SEX, details.sex().orElse(null));
        columns.put(PersonTable.STATURE_CM, boxed(details.statureCm()));
        columns.put(PersonTable.MASS_KG, boxed(details.massKg()));
        columns.put(PersonTable.LANGUAGE, details.language().code());
        columns.put(PersonTable.PHONE, details.phone().orElse(null));
        columns.put(PersonTable.EMAIL, details.email().orElse(null));
        columns.put(PersonTable.INVENTED, details.invented());
        return columns;
    }

    private static @Nullable LocalDate birthDate(Age age) {
        return age instanceof Age.Born born ? born.on() : null;
    }

    private static Optional<Age.Told> told(Optional<Age> age) {
        return age.filter(Age.Told.class::isInstance).map(Age.Told.class::cast);
    }

    private static @Nullable Double boxed(OptionalDouble value) {
        return value.isPresent() ? (Double) value.getAsDouble() : null;
    }

    /** Writes what a name is searched by. */
    static void putNames(DSLContext tx, String clinicId, String personId, String name) {
        removeNames(tx, personId);
        int position = 0;
        for (String beginning : FoldedName.beginnings(name)) {
            tx.insertInto(PersonNameTable.PERSON_NAME)
                    .set(PersonNameTable.CLINIC_ID, clinicId)
                    .set(PersonNameTable.SEARCH_KEY, beginning)
                    .set(PersonNameTable.PERSON_ID, personId)
                    .set(PersonNameTable.WORD_POSITION, position++)
                    .execute();
        }
    }

    static void removeNames(DSLContext tx, String personId) {
        tx.deleteFrom(PersonNameTable.PERSON_NAME)
                .where(PersonNameTable.PERSON_ID.eq(personId))
                .execute();
    }
}
