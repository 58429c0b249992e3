package slipway.store.tables;

import java.time.Instant;
import java.time.LocalDate;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import slipway.care.record.remind.MailDay;
import slipway.care.record.remind.MailFault;

/** Table {@code reminder_day}. */
public final class ReminderDayTable {
    public static final Table<Record> REMINDER_DAY = Columns.table("reminder_day");
    public static final Field<String> PERSON_ID = Columns.text("reminder_day", "person_id");
    public static final Field<LocalDate> DUE_ON = Columns.day("reminder_day", "due_on");
    public static final Field<MailDay> STATE = Columns.word("reminder_day", "state", MailDay.class);
    public static final Field<Integer> ATTEMPTS = Columns.whole("reminder_day", "attempts");
    public static final Field<Instant> NEXT_TRY = Columns.instant("reminder_day", "next_try_us");
    public static final Field<MailFault> FAULT = Columns.word("reminder_day", "fault", MailFault.class);
    public static final Field<Instant> FAULT_AT = Columns.instant("reminder_day", "fault_at_us");
    public static final Field<Instant> CHANGED_AT = Columns.instant("reminder_day", "changed_at_us");

    private ReminderDayTable() {}
}
