package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code api_token}. */
public final class ApiTokenTable {
    public static final Table<Record> API_TOKEN = Columns.table("api_token");
    public static final Field<String> ID = Columns.text("api_token", "id");
    public static final Field<String> CLINIC_ID = Columns.text("api_token", "clinic_id");
    public static final Field<String> STAFF_ID = Columns.text("api_token", "staff_id");
    public static final Field<String> LABEL = Columns.text("api_token", "label");
    public static final Field<String> SCOPES = Columns.text("api_token", "scopes");
    public static final Field<String> TOKEN_SHA256 = Columns.text("api_token", "token_sha256");
    public static final Field<Instant> CREATED_AT = Columns.instant("api_token", "created_at_us");
    public static final Field<String> CREATED_BY = Columns.text("api_token", "created_by");
    public static final Field<Instant> EXPIRES_AT = Columns.instant("api_token", "expires_at_us");
    public static final Field<Instant> REVOKED_AT = Columns.instant("api_token", "revoked_at_us");
    public static final Field<Instant> LAST_USED_AT = Columns.instant("api_token", "last_used_at_us");

    private ApiTokenTable() {}
}
