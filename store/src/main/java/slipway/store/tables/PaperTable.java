package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code paper}. */
public final class PaperTable {
    public static final Table<Record> PAPER = Columns.table("paper");
    public static final Field<String> ID = Columns.text("paper", "id");
    public static final Field<String> EPISODE_ID = Columns.text("paper", "episode_id");
    public static final Field<String> KIND = Columns.text("paper", "kind");
    public static final Field<String> VISIT_ID = Columns.text("paper", "visit_id");
    public static final Field<String> BODY = Columns.text("paper", "body");
    public static final Field<Long> VERSION = Columns.wholeLong("paper", "version");
    public static final Field<Instant> CHANGED_AT = Columns.instant("paper", "changed_at_us");
    public static final Field<String> CHANGED_BY = Columns.text("paper", "changed_by");
    public static final Field<String> SIGNED_BY = Columns.text("paper", "signed_by");
    public static final Field<Instant> SIGNED_AT = Columns.instant("paper", "signed_at_us");
    public static final Field<String> SIGNED_SHA256 = Columns.text("paper", "signed_sha256");

    private PaperTable() {}
}
