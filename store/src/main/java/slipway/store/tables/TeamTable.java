package slipway.store.tables;

import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code team}. */
public final class TeamTable {
    public static final Table<Record> TEAM = Columns.table("team");
    public static final Field<String> ID = Columns.text("team", "id");
    public static final Field<String> CLINIC_ID = Columns.text("team", "clinic_id");
    public static final Field<String> NAME = Columns.text("team", "name");

    private TeamTable() {}
}
