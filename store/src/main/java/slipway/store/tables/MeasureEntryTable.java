package slipway.store.tables;

import java.time.Instant;
import java.time.LocalDate;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import tools.jackson.databind.node.ObjectNode;

/** Table {@code measure_entry}. */
public final class MeasureEntryTable {
    public static final Table<Record> MEASURE_ENTRY = Columns.table("measure_entry");
    public static final Field<String> ID = Columns.text("measure_entry", "id");
    public static final Field<String> EPISODE_ID = Columns.text("measure_entry", "episode_id");
    public static final Field<String> MEASURE_ID = Columns.text("measure_entry", "measure_id");
    public static final Field<LocalDate> TAKEN_ON = Columns.day("measure_entry", "taken_on");
    public static final Field<ObjectNode> BODY = Columns.json("measure_entry", "body");
    public static final Field<String> REPLACES_ID = Columns.text("measure_entry", "replaces_id");
    public static final Field<Instant> AT = Columns.instant("measure_entry", "at_us");
    public static final Field<String> MADE_BY = Columns.text("measure_entry", "made_by");

    private MeasureEntryTable() {}
}
