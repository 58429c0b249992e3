package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import slipway.care.record.chart.EpisodeState;
import slipway.mechanics.body.Side;

/** Table {@code episode}. */
public final class EpisodeTable {
    public static final Table<Record> EPISODE = Columns.table("episode");
    public static final Field<String> ID = Columns.text("episode", "id");
    public static final Field<String> PERSON_ID = Columns.text("episode", "person_id");
    public static final Field<String> CLINIC_ID = Columns.text("episode", "clinic_id");
    public static final Field<Side> SIDE = Columns.word("episode", "side", Side.class);
    public static final Field<String> THERAPIST_ID = Columns.text("episode", "therapist_id");
    public static final Field<EpisodeState> STATE = Columns.word("episode", "state", EpisodeState.class);
    public static final Field<Instant> OPENED_AT = Columns.instant("episode", "opened_at_us");
    public static final Field<String> OPENED_BY = Columns.text("episode", "opened_by");
    public static final Field<Instant> CLOSED_AT = Columns.instant("episode", "closed_at_us");
    public static final Field<Long> VERSION = Columns.wholeLong("episode", "version");

    private EpisodeTable() {}
}
