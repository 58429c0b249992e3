package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code supervised_try}. */
public final class SupervisedTryTable {
    public static final Table<Record> SUPERVISED_TRY = Columns.table("supervised_try");
    public static final Field<String> ID = Columns.text("supervised_try", "id");
    public static final Field<String> EPISODE_ID = Columns.text("supervised_try", "episode_id");
    public static final Field<String> VISIT_ID = Columns.text("supervised_try", "visit_id");
    public static final Field<Integer> PLAN_NUMBER = Columns.whole("supervised_try", "plan_number");
    public static final Field<String> EXERCISE_ID = Columns.text("supervised_try", "exercise_id");
    public static final Field<Integer> REPETITIONS = Columns.whole("supervised_try", "repetitions");
    public static final Field<Double> WORST = Columns.number("supervised_try", "worst");
    public static final Field<Double> SETTLE_MINUTES = Columns.number("supervised_try", "settle_minutes");
    public static final Field<Double> RETEST_ONSET_DEG = Columns.number("supervised_try", "retest_onset_deg");
    public static final Field<Boolean> RETEST_WEAKER = Columns.yesNo("supervised_try", "retest_weaker");
    public static final Field<Boolean> RELEASED = Columns.yesNo("supervised_try", "released");
    public static final Field<String> REMARK = Columns.text("supervised_try", "remark");
    public static final Field<Instant> AT = Columns.instant("supervised_try", "at_us");
    public static final Field<String> STAFF_ID = Columns.text("supervised_try", "staff_id");

    private SupervisedTryTable() {}
}
