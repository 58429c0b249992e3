package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import slipway.care.record.chart.ResultKind;
import tools.jackson.databind.node.ObjectNode;

/** Table {@code computed_result}. */
public final class ComputedResultTable {
    public static final Table<Record> COMPUTED_RESULT = Columns.table("computed_result");
    public static final Field<String> ID = Columns.text("computed_result", "id");
    public static final Field<String> EPISODE_ID = Columns.text("computed_result", "episode_id");
    public static final Field<ResultKind> KIND = Columns.word("computed_result", "kind", ResultKind.class);
    public static final Field<ObjectNode> INPUT_VERSIONS = Columns.json("computed_result", "input_versions");
    public static final Field<String> INPUT_DIGEST = Columns.text("computed_result", "input_digest");
    public static final Field<String> PROGRAM_VERSION = Columns.text("computed_result", "program_version");
    public static final Field<String> DATA_DIGEST = Columns.text("computed_result", "data_digest");
    public static final Field<ObjectNode> BODY = Columns.json("computed_result", "body");
    public static final Field<Instant> AT = Columns.instant("computed_result", "at_us");
    public static final Field<String> MADE_BY = Columns.text("computed_result", "made_by");

    private ComputedResultTable() {}
}
