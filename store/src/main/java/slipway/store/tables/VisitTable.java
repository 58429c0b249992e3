package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code visit}. */
public final class VisitTable {
    public static final Table<Record> VISIT = Columns.table("visit");
    public static final Field<String> ID = Columns.text("visit", "id");
    public static final Field<String> EPISODE_ID = Columns.text("visit", "episode_id");
    public static final Field<Integer> VISIT_NUMBER = Columns.whole("visit", "visit_number");
    public static final Field<String> STAFF_ID = Columns.text("visit", "staff_id");
    public static final Field<Instant> STARTED_AT = Columns.instant("visit", "started_at_us");
    public static final Field<Instant> ENDED_AT = Columns.instant("visit", "ended_at_us");
    public static final Field<Long> VERSION = Columns.wholeLong("visit", "version");

    private VisitTable() {}
}
