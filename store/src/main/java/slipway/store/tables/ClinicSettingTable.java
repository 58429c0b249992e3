package slipway.store.tables;

import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code clinic_setting}. */
public final class ClinicSettingTable {
    public static final Table<Record> CLINIC_SETTING = Columns.table("clinic_setting");
    public static final Field<String> CLINIC_ID = Columns.text("clinic_setting", "clinic_id");
    public static final Field<String> SETTING_KEY = Columns.text("clinic_setting", "setting_key");
    public static final Field<String> SETTING_VALUE = Columns.text("clinic_setting", "setting_value");
    public static final Field<Long> VERSION = Columns.wholeLong("clinic_setting", "version");

    private ClinicSettingTable() {}
}
