package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code addendum}. */
public final class AddendumTable {
    public static final Table<Record> ADDENDUM = Columns.table("addendum");
    public static final Field<String> PAPER_ID = Columns.text("addendum", "paper_id");
    public static final Field<Integer> ADDENDUM_NUMBER = Columns.whole("addendum", "addendum_number");
    public static final Field<String> BODY = Columns.text("addendum", "body");
    public static final Field<String> SIGNED_BY = Columns.text("addendum", "signed_by");
    public static final Field<Instant> SIGNED_AT = Columns.instant("addendum", "signed_at_us");
    public static final Field<String> SIGNED_SHA256 = Columns.text("addendum", "signed_sha256");

    private AddendumTable() {}
}
