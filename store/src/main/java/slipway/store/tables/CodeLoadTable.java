package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code code_load}. */
public final class CodeLoadTable {
    public static final Table<Record> CODE_LOAD = Columns.table("code_load");
    public static final Field<String> CLINIC_ID = Columns.text("code_load", "clinic_id");
    public static final Field<Long> VERSION = Columns.wholeLong("code_load", "version");
    public static final Field<Instant> LOADED_AT = Columns.instant("code_load", "loaded_at_us");
    public static final Field<String> LOADED_BY = Columns.text("code_load", "loaded_by");
    public static final Field<Integer> CODES = Columns.whole("code_load", "codes");
    public static final Field<Integer> EXCLUSIONS = Columns.whole("code_load", "exclusions");
    public static final Field<String> CODES_FILE = Columns.text("code_load", "codes_file");
    public static final Field<String> EXCLUSIONS_FILE = Columns.text("code_load", "exclusions_file");
    public static final Field<String> SHA256 = Columns.text("code_load", "sha256");

    private CodeLoadTable() {}
}
