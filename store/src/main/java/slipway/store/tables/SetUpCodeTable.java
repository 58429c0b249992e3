package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code set_up_code}. */
public final class SetUpCodeTable {
    public static final Table<Record> SET_UP_CODE = Columns.table("set_up_code");
    public static final Field<Integer> ID = Columns.whole("set_up_code", "id");
    public static final Field<String> SHA256 = Columns.text("set_up_code", "sha256");
    public static final Field<Instant> EXPIRES_AT = Columns.instant("set_up_code", "expires_at_us");

    private SetUpCodeTable() {}
}
