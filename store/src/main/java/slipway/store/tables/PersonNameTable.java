package slipway.store.tables;

import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code person_name}. */
public final class PersonNameTable {
    public static final Table<Record> PERSON_NAME = Columns.table("person_name");
    public static final Field<String> CLINIC_ID = Columns.text("person_name", "clinic_id");
    public static final Field<String> SEARCH_KEY = Columns.text("person_name", "search_key");
    public static final Field<String> PERSON_ID = Columns.text("person_name", "person_id");
    public static final Field<Integer> WORD_POSITION = Columns.whole("person_name", "word_position");

    private PersonNameTable() {}
}
