package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import slipway.care.record.chart.PlanState;
import tools.jackson.databind.node.ObjectNode;

/** Table {@code plan}. */
public final class PlanTable {
    public static final Table<Record> PLAN = Columns.table("plan");
    public static final Field<String> EPISODE_ID = Columns.text("plan", "episode_id");
    public static final Field<Integer> PLAN_NUMBER = Columns.whole("plan", "plan_number");
    public static final Field<String> INPUTS = Columns.text("plan", "inputs");
    public static final Field<ObjectNode> INPUT_VERSIONS = Columns.json("plan", "input_versions");
    public static final Field<String> INPUT_DIGEST = Columns.text("plan", "input_digest");
    public static final Field<String> PROGRAM_VERSION = Columns.text("plan", "program_version");
    public static final Field<String> DATA_DIGEST = Columns.text("plan", "data_digest");
    public static final Field<ObjectNode> BODY = Columns.json("plan", "body");
    public static final Field<ObjectNode> CEILINGS = Columns.json("plan", "ceilings");
    public static final Field<ObjectNode> HOME = Columns.json("plan", "home");
    public static final Field<PlanState> STATE = Columns.word("plan", "state", PlanState.class);
    public static final Field<Instant> MADE_AT = Columns.instant("plan", "made_at_us");
    public static final Field<String> MADE_BY = Columns.text("plan", "made_by");
    public static final Field<Instant> STATE_AT = Columns.instant("plan", "state_at_us");
    public static final Field<String> STATE_BY = Columns.text("plan", "state_by");
    public static final Field<Instant> RELEASED_AT = Columns.instant("plan", "released_at_us");

    private PlanTable() {}
}
