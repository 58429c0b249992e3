package slipway.store.tables;

import java.time.Instant;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/** Table {@code api_request}. */
public final class ApiRequestTable {
    public static final Table<Record> API_REQUEST = Columns.table("api_request");
    public static final Field<String> TOKEN_ID = Columns.text("api_request", "token_id");
    public static final Field<String> REQUEST_KEY = Columns.text("api_request", "request_key");
    public static final Field<String> REQUEST_SHA256 = Columns.text("api_request", "request_sha256");
    public static final Field<Instant> AT = Columns.instant("api_request", "at_us");
    public static final Field<String> MADE = Columns.text("api_request", "made");

    private ApiRequestTable() {}
}
