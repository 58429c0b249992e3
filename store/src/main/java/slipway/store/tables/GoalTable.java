package slipway.store.tables;

import java.time.Instant;
import java.time.LocalDate;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import tools.jackson.databind.node.ObjectNode;

/** Table {@code goal}. */
public final class GoalTable {
    public static final Table<Record> GOAL = Columns.table("goal");
    public static final Field<String> ID = Columns.text("goal", "id");
    public static final Field<String> EPISODE_ID = Columns.text("goal", "episode_id");
    public static final Field<String> WORDS = Columns.text("goal", "words");
    public static final Field<String> MEASURE_ID = Columns.text("goal", "measure_id");
    public static final Field<ObjectNode> TARGET = Columns.json("goal", "target");
    public static final Field<LocalDate> DUE_ON = Columns.day("goal", "due_on");
    public static final Field<String> STATE = Columns.text("goal", "state");
    public static final Field<Long> VERSION = Columns.wholeLong("goal", "version");
    public static final Field<Instant> CREATED_AT = Columns.instant("goal", "created_at_us");
    public static final Field<Instant> CHANGED_AT = Columns.instant("goal", "changed_at_us");
    public static final Field<String> CHANGED_BY = Columns.text("goal", "changed_by");

    private GoalTable() {}
}
