package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code draft}. */
public final class DraftTable {
    public static final Table<Record> DRAFT = Columns.table("draft");
    public static final Field<String> USER_ID = Columns.text("draft", "user_id");
    public static final Field<String> EPISODE_ID = Columns.text("draft", "episode_id");
    public static final Field<String> FORM = Columns.text("draft", "form");
    public static final Field<Long> BASE_VERSION = Columns.wholeLong("draft", "base_version");
    public static final Field<String> CONTENT = Columns.text("draft", "content");
    public static final Field<Instant> AT = Columns.instant("draft", "at_us");

    private DraftTable() {}
}
