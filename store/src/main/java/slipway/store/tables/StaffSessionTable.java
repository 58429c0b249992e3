package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code staff_session}. */
public final class StaffSessionTable {
    public static final Table<Record> STAFF_SESSION = Columns.table("staff_session");
    public static final Field<String> ID_SHA256 = Columns.text("staff_session", "id_sha256");
    public static final Field<byte[]> CONTENT = Columns.bytes("staff_session", "content");
    public static final Field<Instant> LAST_SEEN_AT = Columns.instant("staff_session", "last_seen_at_us");
    public static final Field<Instant> EXPIRES_AT = Columns.instant("staff_session", "expires_at_us");
    public static final Field<String> STAFF_ID = Columns.text("staff_session", "staff_id");

    private StaffSessionTable() {}
}
