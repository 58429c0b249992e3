package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import tools.jackson.databind.node.ObjectNode;

/** Table {@code intake}. */
public final class IntakeTable {
    public static final Table<Record> INTAKE = Columns.table("intake");
    public static final Field<String> ID = Columns.text("intake", "id");
    public static final Field<String> EPISODE_ID = Columns.text("intake", "episode_id");
    public static final Field<String> LINK_ID = Columns.text("intake", "link_id");
    public static final Field<Boolean> WHOLE = Columns.yesNo("intake", "whole");
    public static final Field<String> LANGUAGE = Columns.text("intake", "language");
    public static final Field<ObjectNode> ANSWERS = Columns.json("intake", "answers");
    public static final Field<Instant> TOLD_AT = Columns.instant("intake", "told_at_us");

    private IntakeTable() {}
}
