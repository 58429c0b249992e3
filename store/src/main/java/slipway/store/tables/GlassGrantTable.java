package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code glass_grant}. */
public final class GlassGrantTable {
    public static final Table<Record> GLASS_GRANT = Columns.table("glass_grant");
    public static final Field<String> ID = Columns.text("glass_grant", "id");
    public static final Field<String> CLINIC_ID = Columns.text("glass_grant", "clinic_id");
    public static final Field<String> STAFF_ID = Columns.text("glass_grant", "staff_id");
    public static final Field<String> PERSON_ID = Columns.text("glass_grant", "person_id");
    public static final Field<String> REASON = Columns.text("glass_grant", "reason");
    public static final Field<Instant> AT = Columns.instant("glass_grant", "at_us");
    public static final Field<Instant> UNTIL = Columns.instant("glass_grant", "until_us");

    private GlassGrantTable() {}
}
