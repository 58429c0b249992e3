package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code reminder_consent}. */
public final class ReminderConsentTable {
    public static final Table<Record> REMINDER_CONSENT = Columns.table("reminder_consent");
    public static final Field<String> PERSON_ID = Columns.text("reminder_consent", "person_id");
    public static final Field<Integer> SEND_HOUR = Columns.whole("reminder_consent", "send_hour");
    public static final Field<String> ADDRESS_SHA256 = Columns.text("reminder_consent", "address_sha256");
    public static final Field<Instant> SAID_AT = Columns.instant("reminder_consent", "said_at_us");
    public static final Field<String> WRITTEN_BY = Columns.text("reminder_consent", "written_by");
    public static final Field<Instant> ENDED_AT = Columns.instant("reminder_consent", "ended_at_us");
    public static final Field<Boolean> ENDED_BY_PERSON = Columns.yesNo("reminder_consent", "ended_by_person");

    private ReminderConsentTable() {}
}
