package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code alert}. */
public final class AlertTable {
    public static final Table<Record> ALERT = Columns.table("alert");
    public static final Field<String> ID = Columns.text("alert", "id");
    public static final Field<String> EPISODE_ID = Columns.text("alert", "episode_id");
    public static final Field<String> CLINIC_ID = Columns.text("alert", "clinic_id");
    public static final Field<String> KIND = Columns.text("alert", "kind");
    public static final Field<String> WORDS = Columns.text("alert", "words");
    public static final Field<String> CHECK_IN_ID = Columns.text("alert", "check_in_id");
    public static final Field<String> OWNER_ID = Columns.text("alert", "owner_id");
    public static final Field<Instant> RAISED_AT = Columns.instant("alert", "raised_at_us");
    public static final Field<Integer> ALERT_LEVEL = Columns.whole("alert", "alert_level");
    public static final Field<Instant> LEVEL_AT = Columns.instant("alert", "level_at_us");
    public static final Field<String> ACKNOWLEDGED_BY = Columns.text("alert", "acknowledged_by");
    public static final Field<Instant> ACKNOWLEDGED_AT = Columns.instant("alert", "acknowledged_at_us");
    public static final Field<String> ACKNOWLEDGED_WHAT = Columns.text("alert", "acknowledged_what");

    private AlertTable() {}
}
