package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code document}. */
public final class DocumentTable {
    public static final Table<Record> DOCUMENT = Columns.table("document");
    public static final Field<String> ID = Columns.text("document", "id");
    public static final Field<String> EPISODE_ID = Columns.text("document", "episode_id");
    public static final Field<String> KIND = Columns.text("document", "kind");
    public static final Field<String> MEDIA_TYPE = Columns.text("document", "media_type");
    public static final Field<Integer> SIZE_BYTES = Columns.whole("document", "size_bytes");
    public static final Field<String> SHA256 = Columns.text("document", "sha256");
    public static final Field<Integer> PLAN_NUMBER = Columns.whole("document", "plan_number");
    public static final Field<Instant> AT = Columns.instant("document", "at_us");
    public static final Field<String> MADE_BY = Columns.text("document", "made_by");

    private DocumentTable() {}
}
