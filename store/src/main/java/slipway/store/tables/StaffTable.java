package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import slipway.care.record.access.Reach;

/** Table {@code staff}. */
public final class StaffTable {
    public static final Table<Record> STAFF = Columns.table("staff");
    public static final Field<String> ID = Columns.text("staff", "id");
    public static final Field<String> CLINIC_ID = Columns.text("staff", "clinic_id");
    public static final Field<String> LOGIN = Columns.text("staff", "login");
    public static final Field<String> DISPLAY_NAME = Columns.text("staff", "display_name");
    public static final Field<String> ROLES = Columns.text("staff", "roles");
    public static final Field<Reach> REACH = Columns.word("staff", "reach", Reach.class);
    public static final Field<Boolean> ACTIVE = Columns.yesNo("staff", "active");
    public static final Field<String> PASSWORD_HASH = Columns.text("staff", "password_hash");
    public static final Field<String> TOTP_SECRET = Columns.text("staff", "totp_secret");
    public static final Field<Long> TOTP_STEP = Columns.wholeLong("staff", "totp_step");
    public static final Field<Integer> FAILURES = Columns.whole("staff", "failures");
    public static final Field<Instant> NEXT_ALLOWED_AT = Columns.instant("staff", "next_allowed_at_us");
    public static final Field<Long> VERSION = Columns.wholeLong("staff", "version");

    private StaffTable() {}
}
