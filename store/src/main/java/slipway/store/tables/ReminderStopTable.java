package slipway.store.tables;

import java.time.LocalDate;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code reminder_stop}. */
public final class ReminderStopTable {
    public static final Table<Record> REMINDER_STOP = Columns.table("reminder_stop");
    public static final Field<String> TOKEN_SHA256 = Columns.text("reminder_stop", "token_sha256");
    public static final Field<String> PERSON_ID = Columns.text("reminder_stop", "person_id");
    public static final Field<LocalDate> DUE_ON = Columns.day("reminder_stop", "due_on");

    private ReminderStopTable() {}
}
