package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;

/** Table {@code trail_entry}. */
public final class TrailEntryTable {
    public static final Table<Record> TRAIL_ENTRY = Columns.table("trail_entry");
    public static final Field<Chain.Kind> CHAIN_KIND = Columns.word("trail_entry", "chain_kind", Chain.Kind.class);
    public static final Field<String> CHAIN_ID = Columns.text("trail_entry", "chain_id");
    public static final Field<Long> SEQ = Columns.wholeLong("trail_entry", "seq");
    public static final Field<Instant> AT = Columns.instant("trail_entry", "at_us");
    public static final Field<String> WHO = Columns.text("trail_entry", "who");
    public static final Field<String> ACTING_ROLE = Columns.text("trail_entry", "acting_role");
    public static final Field<Action> ACTION = Columns.word("trail_entry", "action", Action.class);
    public static final Field<String> ENTITY = Columns.text("trail_entry", "entity");
    public static final Field<String> ENTITY_ID = Columns.text("trail_entry", "entity_id");
    public static final Field<Long> VERSION = Columns.wholeLong("trail_entry", "version");
    public static final Field<String> PAYLOAD_DIGEST = Columns.text("trail_entry", "payload_digest");
    public static final Field<String> PREVIOUS_DIGEST = Columns.text("trail_entry", "previous_digest");
    public static final Field<String> DIGEST = Columns.text("trail_entry", "digest");

    private TrailEntryTable() {}
}
