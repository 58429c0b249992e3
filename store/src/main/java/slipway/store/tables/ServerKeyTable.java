package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code server_key}. */
public final class ServerKeyTable {
    public static final Table<Record> SERVER_KEY = Columns.table("server_key");
    public static final Field<String> NAME = Columns.text("server_key", "name");
    public static final Field<byte[]> SECRET = Columns.bytes("server_key", "secret");
    public static final Field<Instant> MADE_AT = Columns.instant("server_key", "made_at_us");

    private ServerKeyTable() {}
}
