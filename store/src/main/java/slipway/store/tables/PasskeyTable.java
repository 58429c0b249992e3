package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code passkey}. */
public final class PasskeyTable {
    public static final Table<Record> PASSKEY = Columns.table("passkey");
    public static final Field<String> ID = Columns.text("passkey", "id");
    public static final Field<String> STAFF_ID = Columns.text("passkey", "staff_id");
    public static final Field<String> CREDENTIAL_ID = Columns.text("passkey", "credential_id");
    public static final Field<String> PUBLIC_KEY = Columns.text("passkey", "public_key");
    public static final Field<Long> SIGNATURE_COUNT = Columns.wholeLong("passkey", "signature_count");
    public static final Field<Boolean> BACKUP_ELIGIBLE = Columns.yesNo("passkey", "backup_eligible");
    public static final Field<Boolean> BACKED_UP = Columns.yesNo("passkey", "backed_up");
    public static final Field<String> LABEL = Columns.text("passkey", "label");
    public static final Field<Instant> CREATED_AT = Columns.instant("passkey", "created_at_us");
    public static final Field<Instant> LAST_USED_AT = Columns.instant("passkey", "last_used_at_us");
    public static final Field<String> LAST_CHALLENGE_SHA256 = Columns.text("passkey", "last_challenge_sha256");

    private PasskeyTable() {}
}
