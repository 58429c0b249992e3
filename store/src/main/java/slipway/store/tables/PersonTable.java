package slipway.store.tables;

import java.time.Instant;
import java.time.LocalDate;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code person}. */
public final class PersonTable {
    public static final Table<Record> PERSON = Columns.table("person");
    public static final Field<String> ID = Columns.text("person", "id");
    public static final Field<String> CLINIC_ID = Columns.text("person", "clinic_id");
    public static final Field<String> NAME = Columns.text("person", "name");
    public static final Field<LocalDate> BIRTH_DATE = Columns.day("person", "birth_date");
    public static final Field<Double> AGE_YEARS = Columns.number("person", "age_years");
    public static final Field<LocalDate> AGE_TOLD_ON = Columns.day("person", "age_told_on");
    public static final Field<String> SEX = Columns.text("person", "sex");
    public static final Field<Double> STATURE_CM = Columns.number("person", "stature_cm");
    public static final Field<Double> MASS_KG = Columns.number("person", "mass_kg");
    public static final Field<String> LANGUAGE = Columns.text("person", "language");
    public static final Field<String> PHONE = Columns.text("person", "phone");
    public static final Field<String> EMAIL = Columns.text("person", "email");
    public static final Field<Boolean> INVENTED = Columns.yesNo("person", "invented");
    public static final Field<Long> VERSION = Columns.wholeLong("person", "version");
    public static final Field<Instant> CREATED_AT = Columns.instant("person", "created_at_us");
    public static final Field<String> CREATED_BY = Columns.text("person", "created_by");
    public static final Field<Instant> ERASED_AT = Columns.instant("person", "erased_at_us");

    private PersonTable() {}
}
