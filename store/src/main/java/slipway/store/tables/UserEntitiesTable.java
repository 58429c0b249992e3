package slipway.store.tables;

import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code user_entities}. */
public final class UserEntitiesTable {
    public static final Table<Record> USER_ENTITIES = Columns.table("user_entities");
    public static final Field<String> ID = Columns.text("user_entities", "id");
    public static final Field<String> NAME = Columns.text("user_entities", "name");
    public static final Field<String> DISPLAY_NAME = Columns.text("user_entities", "display_name");

    private UserEntitiesTable() {}
}
