package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code trail_reading}. */
public final class TrailReadingTable {
    public static final Table<Record> TRAIL_READING = Columns.table("trail_reading");
    public static final Field<String> PERSON_ID = Columns.text("trail_reading", "person_id");
    public static final Field<String> USER_ID = Columns.text("trail_reading", "user_id");
    public static final Field<Instant> NOTED_AT = Columns.instant("trail_reading", "noted_at_us");

    private TrailReadingTable() {}
}
