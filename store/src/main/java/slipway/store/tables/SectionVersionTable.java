package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import tools.jackson.databind.node.ObjectNode;

/** Table {@code section_version}. */
public final class SectionVersionTable {
    public static final Table<Record> SECTION_VERSION = Columns.table("section_version");
    public static final Field<String> EPISODE_ID = Columns.text("section_version", "episode_id");
    public static final Field<String> SECTION = Columns.text("section_version", "section");
    public static final Field<Long> VERSION = Columns.wholeLong("section_version", "version");
    public static final Field<ObjectNode> CONTENT = Columns.json("section_version", "content");
    public static final Field<Instant> CHANGED_AT = Columns.instant("section_version", "changed_at_us");
    public static final Field<String> CHANGED_BY = Columns.text("section_version", "changed_by");

    private SectionVersionTable() {}
}
