package slipway.store.tables;

import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import slipway.care.record.trail.Chain;

/** Table {@code trail_head}. */
public final class TrailHeadTable {
    public static final Table<Record> TRAIL_HEAD = Columns.table("trail_head");
    public static final Field<Chain.Kind> CHAIN_KIND = Columns.word("trail_head", "chain_kind", Chain.Kind.class);
    public static final Field<String> CHAIN_ID = Columns.text("trail_head", "chain_id");
    public static final Field<Long> SEQ = Columns.wholeLong("trail_head", "seq");
    public static final Field<String> DIGEST = Columns.text("trail_head", "digest");

    private TrailHeadTable() {}
}
