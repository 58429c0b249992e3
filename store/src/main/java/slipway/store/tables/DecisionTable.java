package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import slipway.care.record.chart.Verdict;

/** Table {@code decision}. */
public final class DecisionTable {
    public static final Table<Record> DECISION = Columns.table("decision");
    public static final Field<String> ID = Columns.text("decision", "id");
    public static final Field<String> EPISODE_ID = Columns.text("decision", "episode_id");
    public static final Field<String> ABOUT = Columns.text("decision", "about");
    public static final Field<Verdict> VERDICT = Columns.word("decision", "verdict", Verdict.class);
    public static final Field<String> PROPOSED = Columns.text("decision", "proposed");
    public static final Field<String> CHOSEN = Columns.text("decision", "chosen");
    public static final Field<String> REASON = Columns.text("decision", "reason");
    public static final Field<String> MADE_BY = Columns.text("decision", "made_by");
    public static final Field<Instant> AT = Columns.instant("decision", "at_us");

    private DecisionTable() {}
}
