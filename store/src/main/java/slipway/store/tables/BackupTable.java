package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code backup}. */
public final class BackupTable {
    public static final Table<Record> BACKUP = Columns.table("backup");
    public static final Field<String> ID = Columns.text("backup", "id");
    public static final Field<Instant> AT = Columns.instant("backup", "at_us");
    public static final Field<Long> SIZE_BYTES = Columns.wholeLong("backup", "size_bytes");
    public static final Field<String> SHA256 = Columns.text("backup", "sha256");

    private BackupTable() {}
}
