package slipway.store.tables;

import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import slipway.care.record.trail.Chain;

/** Table {@code trail_payload}. */
public final class TrailPayloadTable {
    public static final Table<Record> TRAIL_PAYLOAD = Columns.table("trail_payload");
    public static final Field<Chain.Kind> CHAIN_KIND = Columns.word("trail_payload", "chain_kind", Chain.Kind.class);
    public static final Field<String> CHAIN_ID = Columns.text("trail_payload", "chain_id");
    public static final Field<Long> SEQ = Columns.wholeLong("trail_payload", "seq");
    public static final Field<String> BEFORE_TEXT = Columns.text("trail_payload", "before_text");
    public static final Field<String> AFTER_TEXT = Columns.text("trail_payload", "after_text");

    private TrailPayloadTable() {}
}
