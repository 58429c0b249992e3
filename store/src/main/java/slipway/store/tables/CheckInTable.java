package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import tools.jackson.databind.node.ObjectNode;

/** Table {@code check_in}. */
public final class CheckInTable {
    public static final Table<Record> CHECK_IN = Columns.table("check_in");
    public static final Field<String> EPISODE_ID = Columns.text("check_in", "episode_id");
    public static final Field<String> ID = Columns.text("check_in", "id");
    public static final Field<String> SESSION_ID = Columns.text("check_in", "session_id");
    public static final Field<String> EXERCISE_ID = Columns.text("check_in", "exercise_id");
    public static final Field<ObjectNode> BODY = Columns.json("check_in", "body");
    public static final Field<Instant> RECEIVED_AT = Columns.instant("check_in", "received_at_us");

    private CheckInTable() {}
}
