package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code shared_work}. */
public final class SharedWorkTable {
    public static final Table<Record> SHARED_WORK = Columns.table("shared_work");
    public static final Field<String> NAME = Columns.text("shared_work", "name");
    public static final Field<Instant> TURN = Columns.instant("shared_work", "turn_us");
    public static final Field<String> HOLDER = Columns.text("shared_work", "holder");
    public static final Field<Instant> HELD_UNTIL = Columns.instant("shared_work", "held_until_us");
    public static final Field<Long> TAKING = Columns.wholeLong("shared_work", "taking");
    public static final Field<Instant> SUCCEEDED_AT = Columns.instant("shared_work", "succeeded_at_us");
    public static final Field<Instant> ENDED_AT = Columns.instant("shared_work", "ended_at_us");
    public static final Field<Integer> FAILURES = Columns.whole("shared_work", "failures");
    public static final Field<String> WORDS = Columns.text("shared_work", "words");

    private SharedWorkTable() {}
}
