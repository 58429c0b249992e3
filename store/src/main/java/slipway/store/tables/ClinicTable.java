package slipway.store.tables;

import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code clinic}. */
public final class ClinicTable {
    public static final Table<Record> CLINIC = Columns.table("clinic");
    public static final Field<String> ID = Columns.text("clinic", "id");
    public static final Field<String> NAME = Columns.text("clinic", "name");
    public static final Field<String> SETTING = Columns.text("clinic", "setting");
    public static final Field<String> PHONE = Columns.text("clinic", "phone");
    public static final Field<String> EMERGENCY_NUMBER = Columns.text("clinic", "emergency_number");
    public static final Field<Boolean> DEMO = Columns.yesNo("clinic", "demo");
    public static final Field<Long> VERSION = Columns.wholeLong("clinic", "version");

    private ClinicTable() {}
}
